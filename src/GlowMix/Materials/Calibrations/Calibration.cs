using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace GlowMix.Materials.Calibrations;

/// <summary>
/// What a maker's own readings told of the materials of a piece: in place of what their files say, without touching the files.
/// Immutable. Safe to use from several threads.
/// </summary>
public sealed class Calibration
{
    private readonly ConditionalWeakTable<Material, Material> calibrated = [];

    /// <summary>The file's name as the recipe has it.</summary>
    public required string Name { get; init; }

    /// <summary>The day it was fitted, year-month-day.</summary>
    public required string Date { get; init; }

    /// <summary>The recipe it was fitted for.</summary>
    public required string RecipeName { get; init; }

    /// <summary>The readings it rests on.</summary>
    public required ImmutableArray<CalibratedReading> Readings { get; init; }

    /// <summary>What they told of the LED; null if nothing.</summary>
    public CalibratedLed? Led { get; init; }

    /// <summary>What they told of the resin; null if nothing.</summary>
    public CalibratedResin? Resin { get; init; }

    /// <summary>What they told of pigments.</summary>
    public ImmutableArray<CalibratedPigment> Pigments { get; init; } = [];

    /// <summary>How the errors of what they told go together, each two once.</summary>
    public ImmutableArray<CalibratedCorrelation> Correlations { get; init; } = [];

    /// <summary>What the readings could not tell, a sentence each.</summary>
    public ImmutableArray<string> Held { get; init; } = [];

    /// <summary>Where the model does not follow the readings, a sentence each.</summary>
    public ImmutableArray<string> Misfit { get; init; } = [];

    /// <summary>In a few words: 'a.calibration.yaml of 2026-03-31, 5 readings'.</summary>
    public string InWords => CalibrationTexts.InWords(this);

    /// <summary>All materials that it tells of.</summary>
    public IEnumerable<CalibratedMaterial> Materials =>
        [
            .. Led is null ? [] : (CalibratedMaterial[])[Led],
            .. Resin is null ? [] : (CalibratedMaterial[])[Resin],
            .. Pigments,
        ];

    /// <summary>The LED as read; the same one, every time it is asked. Itself if the calibration does not name it.</summary>
    public Led Of(Led led) =>
        Led is { } own && own.Material == led.Name
            ? (Led)calibrated.GetValue(led, l => CalibratedCopies.Of((Led)l, own, Name))
            : led;

    /// <summary>The resin as read; itself if the calibration does not name it.</summary>
    public Resin Of(Resin resin) =>
        Resin is { } own && own.Material == resin.Name
            ? (Resin)calibrated.GetValue(resin, r => CalibratedCopies.Of((Resin)r, own, Name))
            : resin;

    /// <summary>The pigment as read; itself if the calibration does not name it.</summary>
    public Pigment Of(Pigment pigment) =>
        Pigments.FirstOrDefault(p => p.Material == pigment.Name) is { } own
            ? (Pigment)calibrated.GetValue(pigment, p => CalibratedCopies.Of((Pigment)p, own, Name))
            : pigment;
}
