namespace GlowMix.Materials.Calibrations;

/// <summary>What readings told of a resin.</summary>
public sealed record CalibratedResin : CalibratedMaterial
{
    /// <summary>Absorption over that of its file, the same at every wavelength.</summary>
    public required CalibratedNumber AbsorptionFactor { get; init; }
}
