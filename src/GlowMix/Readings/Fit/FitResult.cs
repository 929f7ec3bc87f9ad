using System.Collections.Immutable;
using GlowMix.Materials.Calibrations;

namespace GlowMix.Readings.Fit;

/// <summary>What readings told of a piece's materials. Immutable.</summary>
public sealed record FitResult
{
    /// <summary>Numbers told.</summary>
    public required ImmutableArray<FittedNumber> Numbers { get; init; }

    /// <summary>Numbers not told.</summary>
    public required ImmutableArray<HeldNumber> Held { get; init; }

    /// <summary>Shares of the bare LED's bands; empty where the bare reading is no colour.</summary>
    public ImmutableArray<FittedNumber> Shares { get; init; } = [];

    /// <summary>Correlations of <see cref="Numbers"/>, row by row.</summary>
    public required ImmutableArray<ImmutableArray<double>> Correlations { get; init; }

    /// <summary>Correlations of what a calibration keeps: of the return matrix its conversion.</summary>
    public ImmutableArray<CalibratedCorrelation> CorrelationsTold { get; init; } = [];

    /// <summary>One a reading.</summary>
    public required ImmutableArray<ReadingMisfit> Misfits { get; init; }

    /// <summary>Factor on all standard errors, because the model does not follow the readings as their noise would have it; 1 or more.</summary>
    public required double ErrorsWidenedBy { get; init; }

    /// <summary>Steps taken.</summary>
    public required int Iterations { get; init; }

    /// <summary>What is out of the ordinary, a sentence each.</summary>
    public required ImmutableArray<string> Warnings { get; init; }

    /// <summary>What they told of the LED; null if nothing.</summary>
    public CalibratedLed? Led { get; init; }

    /// <summary>What they told of the resin; null if nothing.</summary>
    public CalibratedResin? Resin { get; init; }

    /// <summary>What they told of pigments.</summary>
    public ImmutableArray<CalibratedPigment> Pigments { get; init; } = [];

    /// <summary>A number by its key; null if it was not told.</summary>
    public FittedNumber? this[string key] => Numbers.Concat(Shares).FirstOrDefault(n => n.Key == key);

    /// <summary>The result to be kept.</summary>
    /// <param name="name">Name of its file.</param>
    /// <param name="recipeName">The recipe.</param>
    /// <param name="date">The day, year-month-day.</param>
    /// <param name="readings">The readings with their hashes.</param>
    public Calibration ToCalibration(
        string name,
        string recipeName,
        string date,
        ImmutableArray<CalibratedReading> readings
    ) =>
        new()
        {
            Name = name,
            Date = date,
            RecipeName = recipeName,
            Readings = readings,
            Led = Led,
            Resin = Resin,
            Pigments = Pigments,
            Correlations = CorrelationsTold,
            Held = [.. Held.Select(FitTexts.HeldBecause)],
            Misfit = [.. Misfits.Where(m => m.IsLackOfFit).Select(FitTexts.LackOfFit)],
        };
}
