using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>A white LED package: a blue die under a phosphor with a short (green) and a long (red) band.</summary>
public sealed record Led : Material
{
    /// <summary>Light of the die that comes through unconverted.</summary>
    public required LedBand Die { get; init; }

    /// <summary>The short band of the phosphor, green to yellow.</summary>
    public required LedBand Green { get; init; }

    /// <summary>The long band of the phosphor, orange to red.</summary>
    public required LedBand Red { get; init; }

    /// <summary>What becomes of light sent back onto the package.</summary>
    public required Sourced<ReturnMatrix> ReturnMatrix { get; init; }

    /// <summary>Luminous flux of one bare package in air at <see cref="AtMa"/>, lm.</summary>
    public required Sourced<double> FluxLm { get; init; }

    /// <summary>Rated current, mA.</summary>
    public required Sourced<double> AtMa { get; init; }

    /// <summary>Greatest steady current, mA.</summary>
    public required Sourced<double> MaxMa { get; init; }

    /// <summary>Flux over flux at the rated current, at currents in mA; null: in proportion to the current, assumed.</summary>
    public Sourced<PointTable>? RelativeFlux { get; init; }

    /// <summary>Radius of the emitting window, mm.</summary>
    public required Sourced<double> WindowRadiusMm { get; init; }

    /// <summary>Height of the package over the board, mm.</summary>
    public required Sourced<double> PackageHeightMm { get; init; }

    /// <summary>Longer side, mm.</summary>
    public required Sourced<double> PackageLengthMm { get; init; }

    /// <summary>Shorter side, mm.</summary>
    public required Sourced<double> PackageWidthMm { get; init; }

    /// <summary>Refractive index of what fills the package.</summary>
    public required Sourced<double> FillingIndex { get; init; }

    /// <summary>Why it is only a stand-in for the real package; null for one of a file.</summary>
    public string? StandInNote { get; init; }

    /// <summary>Die, green, red, in the order of the return matrix.</summary>
    public ImmutableArray<LedBand> Bands => [Die, Green, Red];

    /// <summary>Bare spectrum of one watt, 1/nm; its integral over nm is 1.</summary>
    public Spectrum BareShapePerNm =>
        (Die.Share.Value * Die.ShapePerNm)
        + (Green.Share.Value * Green.ShapePerNm)
        + (Red.Share.Value * Red.ShapePerNm);

    /// <summary>Lumens of a watt of the bare package's light.</summary>
    public double LuminousEfficacyLmPerW => Photometry.PhotopicLm(BareShapePerNm);

    /// <summary>Watts of light of the bare package at its rated current.</summary>
    public double WattsAtRated => FluxLm.Value / LuminousEfficacyLmPerW;

    /// <summary>Watts of each band of the bare package at its rated current: die, green, red.</summary>
    public ImmutableArray<double> BandWattsAtRated
    {
        get
        {
            double watts = WattsAtRated;
            return [watts * Die.Share.Value, watts * Green.Share.Value, watts * Red.Share.Value];
        }
    }

    /// <summary>Flux at a current over that at the rated one; in proportion to the current where no table is given.</summary>
    /// <param name="driveMa">Current through the package, mA, 0 to <see cref="MaxMa"/>.</param>
    public double FluxRatioAtMa(double driveMa) =>
        RelativeFlux?.Value.Linear(driveMa) ?? (driveMa / AtMa.Value);
}
