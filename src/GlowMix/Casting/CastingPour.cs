using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>The channel and the packages that stand in it. Immutable; what is null is not known.</summary>
public sealed record CastingPour
{
    /// <summary>Length inside, mm.</summary>
    public double? LengthMm
    {
        get;
        init => field = value is double mm ? Demand.Positive(mm, nameof(LengthMm), "mm") : null;
    }

    /// <summary>Width inside, mm.</summary>
    public double? WidthMm
    {
        get;
        init => field = value is double mm ? Demand.Positive(mm, nameof(WidthMm), "mm") : null;
    }

    /// <summary>Number of packages on the board.</summary>
    public int? PackageCount
    {
        get;
        init =>
            field = value is null or >= 0
                ? value
                : throw new ArgumentOutOfRangeException(
                    nameof(PackageCount),
                    value,
                    "PackageCount must be 0 or more."
                );
    }

    /// <summary>Length of a package, mm.</summary>
    public double PackageLengthMm
    {
        get;
        init => field = Demand.NotNegative(value, nameof(PackageLengthMm), "mm");
    }

    /// <summary>Width of a package, mm.</summary>
    public double PackageWidthMm
    {
        get;
        init => field = Demand.NotNegative(value, nameof(PackageWidthMm), "mm");
    }

    /// <summary>Height of a package over the board, mm.</summary>
    public double PackageHeightMm
    {
        get;
        init => field = Demand.NotNegative(value, nameof(PackageHeightMm), "mm");
    }

    /// <summary>Volume that a layer takes, ml: the channel less the part of the packages within it; null where a size is not known.</summary>
    /// <param name="fromMm">Lower face over the board, mm.</param>
    /// <param name="depthMm">Depth of the layer, mm.</param>
    /// <exception cref="ArgumentException">The packages take the whole channel.</exception>
    public double? LayerVolumeMl(double fromMm, double depthMm)
    {
        if (LengthMm is not double lengthMm || WidthMm is not double widthMm || PackageCount is not int count)
        {
            return null;
        }
        double packagesMm2 = count * PackageLengthMm * PackageWidthMm;
        if (packagesMm2 >= lengthMm * widthMm)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"{count} packages of {PackageLengthMm:0.##} × {PackageWidthMm:0.##} mm do not fit into {lengthMm:0.##} × {widthMm:0.##} mm."
                )
            );
        }
        double withinMm = Math.Clamp(PackageHeightMm - fromMm, 0, depthMm);
        return ((lengthMm * widthMm * depthMm) - (packagesMm2 * withinMm)) / 1000;
    }
}
