namespace GlowMix.Optics.Pour;

/// <summary>Resin and layers of a pour, from the board upwards.</summary>
/// <param name="Resin">One resin for all layers.</param>
/// <param name="Layers">From the board upwards, at least one.</param>
/// <param name="PackageHeightMm">Height of the LED packages over the board; the LEDs' light starts there.</param>
public sealed record PourStack(ResinOptics Resin, IReadOnlyList<PourLayer> Layers, double PackageHeightMm)
{
    /// <summary>All layers together, mm.</summary>
    public double DepthMm
    {
        get
        {
            double depthMm = 0;
            foreach (var layer in Layers)
            {
                depthMm += layer.DepthMm;
            }
            return depthMm;
        }
    }

    /// <summary>The same with a factor on the absorption of every pigment's grains, 0 or more.</summary>
    internal PourStack WithPigmentScaled(double factor) =>
        factor == 1
            ? this
            : this with
            {
                Layers =
                [
                    .. Layers.Select(l =>
                        l.HasPigment ? l with { Grains = l.Grains!.WithAbsorptionScaled(factor) } : l
                    ),
                ],
            };

    /// <summary>What of it lies over the packages; 0 or less where they stay in air.</summary>
    public double DepthOverPackagesMm => DepthMm - PackageHeightMm;
}
