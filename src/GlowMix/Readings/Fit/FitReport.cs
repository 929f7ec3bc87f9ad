using System.Collections.Immutable;
using GlowMix.LitState;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Predictions;
using MathNet.Numerics.Distributions;

namespace GlowMix.Readings.Fit;

/// <summary>Puts a fit's end into words and numbers: errors, misfits, and what becomes of the materials.</summary>
internal sealed class FitReport
{
    // Further off than noise makes it once in a hundred times.
    private const double LackOfFitShare = 0.99;

    private const double NearTheEnd = 1e-3;

    // Far beyond what any phosphor or board makes of it: another recipe, other files, or the wrong way round. Assumed.
    private const double MostOffPercent = 25;

    private readonly FitReadings readings;
    private readonly Led led;
    private readonly FitProblem problem;
    private readonly double[] values;
    private readonly ImmutableArray<int> free;
    private readonly ImmutableArray<HeldParameter> held;
    private readonly Predictor predictor;
    private readonly FitDraft draft;
    private readonly FitSpread spread;
    private readonly double freedom;
    private readonly double read;

    public FitReport(
        FitReadings readings,
        Led led,
        FitProblem problem,
        double[] values,
        ImmutableArray<int> free,
        ImmutableArray<HeldParameter> held,
        Predictor predictor
    )
    {
        (this.readings, this.led, this.problem, this.values) = (readings, led, problem, values);
        (this.free, this.held, this.predictor) = (free, held, predictor);
        draft = problem.DraftOf(values);
        read = problem.Count;
        freedom = read - free.Length;
        spread = new(problem, values, free);
    }

    /// <summary>Why the end of the fit is no calibration; null if it is one.</summary>
    public string? Refusal()
    {
        foreach (var block in problem.Blocks)
        {
            double off = MisfitOf(block).RmsPercent;
            if (off > MostOffPercent)
            {
                return FitTexts.NotOfThisRecipe(block.Name, block.State, off);
            }
        }
        var fitted = draft.Applied(readings.Piece, led);
        var first = FirstPass.Of(PieceLight.BandsOf(fitted), fitted.Resin.RefractiveIndex.Value);
        return first.Any(s => s.Samples.ContainsAnyExceptInRange(0, double.PositiveInfinity))
            ? FitTexts.MoreThanTheBareHolds
            : null;
    }

    public FitResult Result(int iterations, IReadOnlyList<string> warnings)
    {
        int[] told = [.. Enumerable.Range(0, free.Length).Where(i => !problem.Parameters[free[i]].IsAside)];
        var numbers = told.Select(i => new FittedNumber(
                problem.Parameters[free[i]].Key,
                problem.Parameters[free[i]].Words,
                values[free[i]],
                spread.ErrorOf(i),
                problem.Parameters[free[i]].Start
            ))
            .ToImmutableArray();
        return new()
        {
            Numbers = numbers,
            Held =
            [
                .. held.OrderBy(h => h.Index)
                    .Select(h =>
                    {
                        var parameter = problem.Parameters[h.Index];
                        return new HeldNumber(
                            parameter.Key,
                            parameter.Words,
                            parameter.Start,
                            [.. h.Partners.Select(p => problem.Parameters[p].Words)]
                        );
                    }),
            ],
            Shares = Shares(),
            Correlations =
            [
                .. told.Select(i => told.Select(j => spread.CorrelationOf(i, j)).ToImmutableArray()),
            ],
            CorrelationsTold = spread.CorrelationsOf(Drawn()),
            Misfits = [.. problem.Blocks.Select(MisfitOf)],
            ErrorsWidenedBy = spread.Widened,
            Iterations = iterations,
            Warnings = [.. warnings, .. AtTheirEnds()],
            Led = LedTold(),
            Resin = NumberOf(CalibratedKeys.ResinAbsorption) is { StandardError: not null } factor
                ? new()
                {
                    Material = readings.Piece.Resin.Name,
                    MaterialSha256 = Sha256.Of(readings.Piece.Resin),
                    AbsorptionFactor = factor,
                }
                : null,
            Pigments =
            [
                .. draft
                    .Pigments.Select(new PigmentTold(predictor, readings.Glows, NumberOf).Of)
                    .OfType<CalibratedPigment>(),
            ],
        };
    }

    private CalibratedNumber? NumberOf(string key)
    {
        for (int i = 0; i < problem.Parameters.Length; i++)
        {
            if (problem.Parameters[i].Key == key)
            {
                int place = free.IndexOf(i);
                return new(values[i], place >= 0 ? spread.ErrorOf(place) : null);
            }
        }
        return null;
    }

    private ImmutableArray<FittedNumber> Shares()
    {
        if (readings is not { IsCorrected: true, Bare: { } bare })
        {
            return [];
        }
        double[] shareErrors = BareLed.ShareErrors(bare, readings.Piece.Led);
        string[] names = ["die", "green", "red"];
        string[] words = ["blue of the bare LED", "green of the bare LED", "red of the bare LED"];
        return
        [
            .. led.Bands.Select(
                (band, i) =>
                    new FittedNumber(
                        $"led.{names[i]}_share",
                        words[i],
                        band.Share.Value,
                        shareErrors[i],
                        readings.Piece.Led.Bands[i].Share.Value
                    )
            ),
        ];
    }

    private ReadingMisfit MisfitOf(FitBlock block)
    {
        double[] residuals = block.Residuals(draft);
        double squares = 0;
        double ofRead = 0;
        double ofNoise = 0;
        for (int i = 0; i < residuals.Length; i++)
        {
            squares += Math.Pow(residuals[i] / block.Deviations[i], 2);
            ofRead += residuals[i] * residuals[i] / residuals.Length;
            ofNoise += block.Deviations[i] * block.Deviations[i] / residuals.Length;
        }
        // The numbers turned are spent on all readings alike.
        double own = block.Freedom * Math.Max(0, freedom) / read;
        return new(
            block.Name,
            block.State,
            block is GlowBlock,
            [.. residuals.Select((r, i) => (block.At[i], 100 * (Math.Exp(r) - 1)))],
            100 * Math.Sqrt(ofRead),
            100 * Math.Sqrt(ofNoise),
            own > 0 ? Math.Sqrt(squares / own) : 0,
            own > 0 && ChiSquared.CDF(own, squares) > LackOfFitShare
        );
    }

    private IEnumerable<string> AtTheirEnds()
    {
        foreach (int index in free.Except(problem.Aside))
        {
            var parameter = problem.Parameters[index];
            double least = parameter.Scaled(parameter.Least);
            double most = parameter.Scaled(parameter.Most);
            double at = (parameter.Scaled(values[index]) - least) / (most - least);
            if (at is < NearTheEnd or > 1 - NearTheEnd)
            {
                yield return FitTexts.AtItsEnd(parameter.Words, at < 0.5 ? parameter.Least : parameter.Most);
            }
        }
    }

    private bool IsMatrixTold => free.Any(i => IsOfMatrix(problem.Parameters[i].Key));

    private static bool IsOfMatrix(string key) => key.StartsWith("led.", StringComparison.Ordinal);

    private CalibratedLed? LedTold()
    {
        var shares = Shares();
        if (!IsMatrixTold && shares.IsEmpty)
        {
            return null;
        }
        double[] entries = EntriesAt(values);
        double[] entryErrors = IsMatrixTold
            ? [.. entries.Select((_, i) => spread.ErrorOf(at => EntriesAt(at)[i]))]
            : [];
        return new()
        {
            Material = readings.Piece.Led.Name,
            MaterialSha256 = Sha256.Of(readings.Piece.Led),
            BareSpectrum = shares.IsEmpty ? null : BareLed.SpectrumOf(readings.Bare!),
            Shares = [.. shares.Select(s => new CalibratedNumber(s.Value, s.StandardError))],
            ReturnEntries = IsMatrixTold
                ?
                [
                    .. entries.Select(
                        (e, i) => new CalibratedNumber(e, entryErrors[i] > 0 ? entryErrors[i] : null)
                    ),
                ]
                : [],
            Conversion = IsMatrixTold ? new(ConversionAt(values), spread.ErrorOf(ConversionAt)) : null,
        };
    }

    private double[] EntriesAt(double[] at)
    {
        var m = problem.DraftOf(at).Matrix();
        return [m[0, 0], m[1, 0], m[2, 0], m[1, 1], m[2, 1], m[2, 2]];
    }

    private double ConversionAt(double[] at)
    {
        double[] entries = EntriesAt(at);
        return entries[1] + entries[2] + entries[4];
    }

    // Numbers whose errors draws take up, by the keys under which draws know them.
    private IEnumerable<(string Key, Func<double[], double> NumberOf)> Drawn()
    {
        if (IsMatrixTold)
        {
            yield return (CalibratedKeys.Conversion, ConversionAt);
        }
        foreach (int index in free.Except(problem.Aside))
        {
            string key = problem.Parameters[index].Key;
            if (!IsOfMatrix(key))
            {
                yield return (key, at => at[index]);
            }
        }
    }
}
