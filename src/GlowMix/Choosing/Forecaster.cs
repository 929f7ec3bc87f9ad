using System.Globalization;
using GlowMix.Choosing.Draws;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>
/// From a recipe to its prediction with the doubt in it and its targets judged. Keep one and ask it again. Safe to use from
/// several threads; the same recipe gives the same answer, on any number of cores.
/// </summary>
public sealed class Forecaster
{
    /// <summary>Draws that a band takes unless told otherwise.</summary>
    public const int UsualDraws = 512;

    /// <summary>Points of each set that <see cref="Causes"/> takes unless told otherwise.</summary>
    public const int UsualRows = 128;

    private static readonly string[] WhiteAndGlow =
    [
        "lit.cct_k",
        "lit.duv",
        "afterglow.luminance_mcd_m2[10]",
        "afterglow.minutes_to_0_3_mcd_m2",
    ];

    // Fewer than this and ten percent of them are three or less.
    internal const int FewestDraws = 32;

    private readonly Predictor predictor;

    /// <param name="predictor">Who predicts.</param>
    public Forecaster(Predictor predictor)
    {
        ArgumentNullException.ThrowIfNull(predictor);
        this.predictor = predictor;
    }

    /// <summary>
    /// The likely figures alone, without bands, and the targets judged by them; the quickest way. Of figures that need further runs or
    /// the casting (shift by cause, along the piece) only those that a target asks for.
    /// </summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    public PredictionOutcome Likely(RecipeDocument document)
    {
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return new(null, problems);
        }
        var targets = piece.Recipe.Targets;
        Figure[] wanted = [.. targets.Select(t => FigureCatalogue.Find(t.Figure, t.AtMinutes)!)];
        var prediction = predictor.Foretell(piece, bounded: false, wanted).Prediction;
        return new(
            prediction with
            {
                Targets = TargetJudge.Of(targets, prediction, _ => null, _ => null),
            },
            problems
        );
    }

    /// <summary>A prediction whose bands are those of the few runs that bound its doubt; the quick way.</summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    public PredictionOutcome Bounded(RecipeDocument document)
    {
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return new(null, problems);
        }
        return new(Bounded(piece), problems);
    }

    /// <summary>A prediction whose bands hold the middle 80 % of draws within all tolerances and doubts.</summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    /// <param name="likely">Told the likely figures, before anything is drawn; may be null.</param>
    /// <param name="done">Told how many draws are done, from any thread; may be null.</param>
    /// <param name="draws">How many, 1 or more.</param>
    /// <param name="cores">How many cores to use, null for all; the answer is the same.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public PredictionOutcome Drawn(
        RecipeDocument document,
        Action<Prediction>? likely = null,
        Action<int>? done = null,
        int draws = UsualDraws,
        int? cores = null,
        CancellationToken stop = default
    ) => DrawnWithTable(document, likely, done, draws, cores, charges: null, stop).Outcome;

    /// <summary>
    /// As <see cref="Drawn"/>, and the draws themselves, with the glow after other charges where some are asked for; these are null
    /// where the recipe has errors.
    /// </summary>
    internal (PredictionOutcome Outcome, DrawTable? Table) DrawnWithTable(
        RecipeDocument document,
        Action<Prediction>? likely,
        Action<int>? done,
        int draws,
        int? cores,
        IReadOnlyList<Func<Piece, Piece>>? charges,
        CancellationToken stop
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return (new(null, problems), null);
        }
        var prediction = predictor.Foretell(piece, bounded: false).Prediction;
        likely?.Invoke(prediction);
        stop.ThrowIfCancellationRequested();
        var table = DrawTable.Of(
            new DrawBench(piece, new DrawShelf(predictor.Optics, predictor.Sheets))
            {
                Charges = charges ?? [],
            },
            draws,
            cores,
            done,
            stop
        );
        var banded =
            table.Count < FewestDraws && table.RefusedCount > 0
                ? Bounded(piece)
                : Banded(piece, prediction, table);
        return (new(banded, problems), table);
    }

    /// <summary>What makes a recipe's figures doubtful, and so what to measure first.</summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    /// <param name="done">Told how many runs of how many are done, from any thread; may be null.</param>
    /// <param name="rows">Points of each of the two sets that are mixed; a power of two, 16 or more.</param>
    /// <param name="cores">How many cores to use, null for all; the answer is the same.</param>
    /// <param name="stop">Ends the study.</param>
    /// <remarks>Of white, glow and the targets.</remarks>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public CauseOutcome Causes(
        RecipeDocument document,
        Action<int, int>? done = null,
        int rows = UsualRows,
        int? cores = null,
        CancellationToken stop = default
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 16);
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return new(null, problems);
        }
        var targets = piece.Recipe.Targets.Select(t => FigureCatalogue.Find(t.Figure, t.AtMinutes)!);
        Figure[] figures =
        [
            .. WhiteAndGlow
                .Select(name => FigureCatalogue.Find(name)!)
                .Where(f => piece.HasPigment || !IsOfGlow(f))
                .Concat(targets.Where(DrawTable.Holds))
                .Distinct(),
        ];
        return new(
            CauseStudy.Of(
                new DrawBench(piece, predictor.Optics, predictor.Sheets),
                figures,
                rows,
                cores,
                done,
                stop
            ),
            problems
        );
    }

    private Prediction Bounded(Piece piece)
    {
        var (prediction, runs) = predictor.Foretell(piece, bounded: true);
        return prediction with
        {
            Targets = TargetJudge.Of(
                piece.Recipe.Targets,
                prediction,
                _ => null,
                figure => ReadingOf(figure, runs)
            ),
        };
    }

    /// <summary>A prediction with the bands of its draws.</summary>
    internal static Prediction Banded(Piece piece, Prediction likely, DrawTable table)
    {
        var bands = new List<KeyValuePair<Figure, Band>>();
        foreach (var figure in FigureCatalogue.All)
        {
            if (
                table.BandOf(figure, likely.Figures[figure]) is { } band
                && (IsBanded(figure) || band.Low < band.High)
            )
            {
                bands.Add(new(figure, band));
            }
        }
        var banded = likely with
        {
            Bands = bands,
            Decay = table.DecayOf(likely.Decay),
            DrawCount = table.Count,
            Warnings = table.RefusedCount > 0 ? [.. likely.Warnings, LeftOut(table)] : likely.Warnings,
        };
        return banded with
        {
            Targets = TargetJudge.Of(
                piece.Recipe.Targets,
                banded,
                figure => bands.Exists(b => b.Key.Index == figure.Index) ? table.Of(figure) : null,
                figure => table.HeaviestCauseOf(figure)?.Reading
            ),
        };
    }

    private static bool IsBanded(Figure figure) =>
        figure.Name.StartsWith("lit.", StringComparison.Ordinal) || IsOfGlow(figure);

    private static bool IsOfGlow(Figure figure) =>
        figure.Name.StartsWith("afterglow.", StringComparison.Ordinal);

    private static Warning LeftOut(DrawTable table) =>
        new(
            "draws-left-out",
            "afterglow.luminance_mcd_m2[10]",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{table.RefusedCount} of {table.Count + table.RefusedCount} draws contradict a pigment's own sheet: so weak, or with so few traps, it could not have glowed as told; they are left out"
            )
        );

    /// <summary>Of the two numbers that the bounding runs turn, the one that moves a figure more.</summary>
    private static string? ReadingOf(Figure figure, IReadOnlyList<Run> runs)
    {
        double byAbsorption = Range(
            runs.Where(r => r.Variation.LadderSmoothing == Variation.Likely.LadderSmoothing)
        );
        double byLadder = Range(
            runs.Where(r => r.Variation.PigmentAbsorptionFactor == Variation.Likely.PigmentAbsorptionFactor)
        );
        return byAbsorption == 0 && byLadder == 0 ? null
            : byAbsorption >= byLadder ? TargetTexts.PigmentReading
            : TargetTexts.DecayReading;

        double Range(IEnumerable<Run> some)
        {
            double[] values = [.. some.Select(r => r.Figures[figure]).OfType<double>()];
            return values.Length == 0 ? 0 : values.Max() - values.Min();
        }
    }
}
