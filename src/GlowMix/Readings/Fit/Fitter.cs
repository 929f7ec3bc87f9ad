using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Readings.Fit;

/// <summary>
/// Fits what the materials' files only assume to a maker's own readings: Levenberg–Marquardt on everything read at once, in units of
/// its noise. Keep one and ask it again. Safe to use from several threads; the same readings give the same answer.
/// </summary>
public sealed class Fitter
{
    private const int MostRounds = 4;

    private readonly Predictor predictor;
    private readonly FitPours pours;

    /// <param name="predictor">Who predicts the pieces that were read.</param>
    public Fitter(Predictor predictor)
    {
        ArgumentNullException.ThrowIfNull(predictor);
        this.predictor = predictor;
        pours = new(predictor.Optics);
    }

    /// <summary>Fits a piece's materials to readings.</summary>
    /// <param name="readings">What was read, of pieces that the predictor let pass.</param>
    /// <returns>The result, or why there is none.</returns>
    public (FitResult? Result, string? Refusal) Fit(FitReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var led = readings.Piece.Led;
        var warnings = new List<string>();
        if (readings is { IsCorrected: true, Bare: { } bare })
        {
            var (bands, problem) = LedFromSpectrum.BandsOf(BareLed.SpectrumOf(bare), led, BareLed.Note);
            if (bands is not { } split)
            {
                return (null, problem);
            }
            if (BareLed.IsOfAnother(bare, led))
            {
                warnings.Add(FitTexts.AnotherLed(led, BareLed.SpectrumOf(bare)));
            }
            led = led with { Die = split[0], Green = split[1], Red = split[2] };
        }
        var problemToSolve = ProblemOf(readings, led, warnings);
        if (problemToSolve.Blocks.IsEmpty)
        {
            return (null, FitTexts.NothingToFit);
        }
        var (values, free, held, iterations) = Solve(problemToSolve);
        var result = new FitReport(readings, led, problemToSolve, values, free, held, predictor);
        if (result.Refusal() is { } refusal)
        {
            return (null, refusal);
        }
        return (result.Result(iterations, warnings), null);
    }

    private FitProblem ProblemOf(FitReadings readings, Led led, List<string> warnings)
    {
        var pigments = FitParameters.PigmentsOf(readings);
        double[] minutes = [.. readings.Glows.SelectMany(g => g.Points).Select(p => p.Minutes)];
        double middleMinutes = minutes.Length > 0 ? Math.Sqrt(minutes.Min() * minutes.Max()) : 1;
        var (lit, group) = LitOf(readings, led, warnings);
        ImmutableArray<FitBlock> blocks =
        [
            .. lit,
            .. readings.Glows.Select(glow =>
                GlowBlock.Of(
                    glow,
                    new FitState(glow.Piece, led, pours, predictor.SheetLadderOf),
                    middleMinutes
                )
            ),
        ];
        return new(FitParameters.Of(readings, led), group, blocks, () => new FitDraft(led, pigments));
    }

    private (ImmutableArray<LitBlock> Blocks, LitGroup? Group) LitOf(
        FitReadings readings,
        Led led,
        List<string> warnings
    )
    {
        if (readings.Bare is not { } bare || readings.Lit.IsEmpty)
        {
            return ([], null);
        }
        double[] deviations = LitBlock.DeviationsOf(bare);
        var blocks = ImmutableArray.CreateBuilder<LitBlock>();
        foreach (var reading in readings.Lit)
        {
            var state = new FitState(reading.Piece, led, pours, predictor.SheetLadderOf);
            if (LitBlock.Of(reading, bare, deviations, state) is { } block)
            {
                blocks.Add(block);
            }
            else
            {
                warnings.Add(FitTexts.NoCommonLight(reading.Name));
            }
        }
        var all = blocks.ToImmutable();
        return (all, all.IsEmpty ? null : new(all, deviations, readings.ComparablePercent / 100));
    }

    // What readings can tell depends a little on where the fit stands: looked at again where it ends.
    private static (
        double[] Values,
        ImmutableArray<int> Free,
        ImmutableArray<HeldParameter> Held,
        int Iterations
    ) Solve(FitProblem problem)
    {
        double[] start = [.. problem.Parameters.Select(p => p.Start)];
        int[] all = [.. Enumerable.Range(0, start.Length)];
        var choice = ParameterChoice.Of(problem.Slopes(start, all), null, problem.Aside);
        double[] values = start;
        int iterations = 0;
        for (int round = 0; round < MostRounds; round++)
        {
            var (found, steps) = LevenbergMarquardt.Of(problem, values, choice.Free);
            (values, iterations) = (found, iterations + steps);
            // Where the model does not follow the readings, they tell less than their noise alone would leave.
            var slopes = problem.Slopes(values, all) / problem.WidenedBy(values, choice.Free.Length);
            var again = ParameterChoice.Of(slopes, null, problem.Aside);
            if (again.Free.SequenceEqual(choice.Free))
            {
                return (values, choice.Free, again.Held, iterations);
            }
            // Only ever fewer, so that the rounds end.
            choice = choice.With(ParameterChoice.Of(slopes, choice.Free, problem.Aside));
            values = [.. values.Select((v, i) => choice.Free.Contains(i) ? v : start[i])];
        }
        return (values, choice.Free, choice.Held, iterations);
    }
}
