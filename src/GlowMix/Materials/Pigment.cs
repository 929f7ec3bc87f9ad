using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>An afterglow pigment: grains that absorb blue and ultraviolet light, store part of it and emit.</summary>
public sealed record Pigment : Material
{
    /// <summary>Density of the solid grain, g/cm³.</summary>
    public required Sourced<double> DensityGPerCm3 { get; init; }

    /// <summary>Of the grain; a doubt with ends tells those of the index at 587.6 nm.</summary>
    public required Sourced<Spectrum> RefractiveIndex { get; init; }

    /// <summary>Absorption coefficient (base e) of the solid grain, 1/mm: excitation follows from it.</summary>
    public required Sourced<Spectrum> AbsorptionPerMm { get; init; }

    /// <summary>Wavelength where the emitted energy peaks, nm.</summary>
    public required Sourced<double> EmissionPeakNm { get; init; }

    /// <summary>Full width at half maximum of the emission, nm; Gaussian in wavelength.</summary>
    public required Sourced<double> EmissionFwhmNm { get; init; }

    /// <summary>Emitted energy, 1/nm; its integral over nm is 1.</summary>
    public Spectrum EmissionPerNm => GaussianBand.PerNm(EmissionPeakNm.Value, EmissionFwhmNm.Value);

    /// <summary>Photons emitted per photon absorbed, traps in balance, for grains of the file's own size; 0 to 1.</summary>
    public required Sourced<double> PhotoluminescenceYield { get; init; }

    /// <summary>Median diameter by mass, µm.</summary>
    public required Sourced<double> GrainMedianUm { get; init; }

    /// <summary>Geometric standard deviation of the diameter.</summary>
    public required Sourced<double> GrainGsd { get; init; }

    /// <summary>Share of the yield that grains of a diameter in µm keep; straight lines over the logarithm.</summary>
    public required Sourced<PointTable> FineGrainTable { get; init; }

    /// <summary>Traps in a gram.</summary>
    public required Sourced<double> TrapCapacityPerG { get; init; }

    /// <summary>Frequency factor s of thermal release, 1/s.</summary>
    public required Sourced<double> TrapFrequencyFactorPerS { get; init; }

    /// <summary>Activation energy of capture, eV.</summary>
    public required Sourced<double> TrapCaptureActivationEv { get; init; }

    /// <summary>p in N ∝ τ^−p, the weights that a fit is smoothed towards.</summary>
    public required Sourced<double> TrapWeightExponent { get; init; }

    /// <summary>Traps that an absorbed photon empties over those it fills, O/B.</summary>
    public required Sourced<double> TrapEmptyingByLight { get; init; }

    /// <summary>The decay its sheet tells.</summary>
    public required DecaySheet Sheet { get; init; }

    /// <summary>The ladder of a decay reading; null where the one behind the sheet stands.</summary>
    public MeasuredTraps? Traps { get; init; }

    /// <summary>The pigment before it was calibrated; null for one that was not.</summary>
    public Pigment? AsOnTheShelf { get; init; }

    /// <summary>Traps in a mm³ of solid grain.</summary>
    public double TrapCapacityPerMm3 => TrapCapacityPerG.Value * DensityGPerCm3.Value / 1000;

    /// <summary>Share of the full yield that grains of this diameter keep, 0 to 1.</summary>
    /// <param name="diameterUm">Median diameter, µm, above 0.</param>
    public double FineGrainEfficiency(double diameterUm) => FineGrainTable.Value.LinearOverLog(diameterUm);

    /// <summary>
    /// Yield of grains ground or sieved to another size: the file's yield belongs to the file's size, so the efficiencies of
    /// both sizes divide; at most 1.
    /// </summary>
    /// <param name="diameterUm">Median diameter, µm, above 0.</param>
    public double YieldAt(double diameterUm) =>
        Math.Min(
            1,
            PhotoluminescenceYield.Value
                * FineGrainEfficiency(diameterUm)
                / FineGrainEfficiency(GrainMedianUm.Value)
        );
}
