namespace GlowMix.Materials.Calibrations;

/// <summary>What readings told of a pigment.</summary>
public sealed record CalibratedPigment : CalibratedMaterial
{
    /// <summary>Absorption of its grains over that of its file, the same at every wavelength; null where it was not told.</summary>
    public CalibratedNumber? AbsorptionFactor { get; init; }

    /// <summary>Photons emitted per photon absorbed, for grains of the file's own size; null where it was not told.</summary>
    public CalibratedNumber? PhotoluminescenceYield { get; init; }

    /// <summary>Its trap ladder; null where it was not told.</summary>
    public MeasuredTraps? Traps { get; init; }

    /// <summary>All traps over those behind its sheet; null without a ladder.</summary>
    public CalibratedNumber? TrapLevel { get; init; }

    /// <summary>
    /// How the ladder leans, against the one behind the sheet: decades by which the slowest rung is fuller than the middle one,
    /// and the middle one than the fastest; null without a ladder.
    /// </summary>
    public CalibratedNumber? TrapTilt { get; init; }

    /// <summary>Trapping efficiency over that behind the sheet; null without a ladder.</summary>
    public CalibratedNumber? TrappingFactor { get; init; }
}
