using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>A clear casting resin of two parts.</summary>
public sealed record Resin : Material
{
    /// <summary>Of the cured resin. A doubt with ends tells those of the index at 587.6 nm.</summary>
    public required Sourced<Spectrum> RefractiveIndex { get; init; }

    /// <summary>Absorption coefficient (base e) of the cured resin, 1/mm.</summary>
    public required Sourced<Spectrum> AbsorptionPerMm { get; init; }

    /// <summary>Density of the mix, g/cm³; shrinkage is ignored.</summary>
    public required Sourced<double> DensityMixGPerCm3 { get; init; }

    /// <summary>Density of part A, g/cm³.</summary>
    public required Sourced<double> DensityPartAGPerCm3 { get; init; }

    /// <summary>Density of part B, g/cm³.</summary>
    public required Sourced<double> DensityPartBGPerCm3 { get; init; }

    /// <summary>Parts of A to B.</summary>
    public required Sourced<MixRatio> MixRatio { get; init; }

    /// <summary>Viscosity of the fresh mix, at least one, ascending temperature.</summary>
    public required ImmutableArray<Sourced<Viscosity>> Viscosities { get; init; }

    /// <summary>Pot life, at least one, ascending mass.</summary>
    public required ImmutableArray<Sourced<PotLife>> PotLives { get; init; }

    /// <summary>Minutes from mixing until it no longer flows, at the mass and temperature of the first pot life.</summary>
    public required Sourced<double> GelTimeMin { get; init; }

    /// <summary>Deepest pour in one go, mm; null if not told.</summary>
    public Sourced<double>? MaxPourDepthMm { get; init; }

    /// <summary>Hours until it can be touched; null if not told.</summary>
    public Sourced<double>? CureToTouchH { get; init; }

    /// <summary>Hours until it is fully cured; null if not told.</summary>
    public Sourced<double>? CureFullH { get; init; }

    /// <summary>Mass of part A over the mass of both parts.</summary>
    public double MassShareOfPartA =>
        MixRatio.Value.MassShareOfA(DensityPartAGPerCm3.Value, DensityPartBGPerCm3.Value);
}
