using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Casting;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions.Kept;
using GlowMix.Recipes;

namespace GlowMix.Predictions;

/// <summary>
/// From a recipe to its figures. Keep one and ask it again: grains, ladders and materials are worked out once. Safe to use from
/// several threads; the same recipe gives the same figures, whatever was asked before.
/// </summary>
public sealed class Predictor
{
    private readonly IMaterialSource? files;
    private readonly OpticsShelf optics = new();
    private readonly PigmentSheets sheets;
    private readonly LadderShelf ladders;
    private readonly PredictionChecks checks;

    /// <param name="shelf">Where materials are looked up.</param>
    /// <param name="files">Where paths in a recipe lead; null if nowhere.</param>
    public Predictor(Shelf shelf, IMaterialSource? files = null)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        Shelf = shelf;
        this.files = files;
        sheets = new(shelf, optics);
        ladders = new(sheets);
        checks = new(optics, sheets, ladders);
    }

    /// <summary>Where materials are looked up.</summary>
    public Shelf Shelf { get; }

    /// <summary>What is kept of materials' optics.</summary>
    internal OpticsShelf Optics => optics;

    /// <summary>Who solves the samples of pigments' sheets.</summary>
    internal PigmentSheets Sheets => sheets;

    /// <summary>Predicts a recipe.</summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    /// <param name="isSettled">False takes grains as staying where they were poured, to see what settling does.</param>
    public PredictionOutcome Predict(RecipeDocument document, bool isSettled = true)
    {
        var (piece, problems) = Check(document);
        return new(
            piece is null ? null : Foretell(piece with { IsSettled = isSettled }, bounded: true).Prediction,
            problems
        );
    }

    /// <summary>All problems of a recipe and of the materials it names, without predicting it.</summary>
    /// <returns>The piece if it can be predicted.</returns>
    public PieceReading Check(RecipeDocument document) => Checked(PieceAssembly.Of(document, Shelf, files));

    /// <summary>The same of a recipe that somebody has changed.</summary>
    internal PieceReading CheckChanged(Recipe recipe) => Checked(PieceAssembly.Of(recipe, [], Shelf, files));

    private PieceReading Checked(PieceReading reading)
    {
        if (reading.Piece is not { } piece)
        {
            return reading;
        }
        var found = checks.Of(piece);
        bool failed = found.Any(p => p.Severity == Severity.Error);
        return new(failed ? null : piece, [.. reading.Problems, .. found]);
    }

    /// <summary>What a recipe's prediction is worked out from: the recipe itself, its materials, its other files.</summary>
    /// <returns>Empty for a recipe with errors.</returns>
    public IReadOnlyList<PredictionInput> InputsOf(RecipeDocument document) =>
        Check(document).Piece is { } piece ? PredictionInputs.Of(document, piece, Shelf, files) : [];

    /// <summary>The ladder behind a pigment's sheet, for those who show where numbers come from.</summary>
    /// <returns>Null, with the problems, if the sheet's sample cannot be put together.</returns>
    public (LadderFitResult? Fit, ImmutableArray<Problem> Problems) LadderOf(Pigment pigment)
    {
        var (sample, problems) = sheets.SampleOf(pigment);
        return (sample is null ? null : ladders.FitOf(sample, Variation.Likely), problems);
    }

    /// <summary>
    /// The ladder behind the sheet of a pigment that <see cref="Check"/> let pass; of one that is calibrated already, that of its
    /// file.
    /// </summary>
    internal TrapLadder SheetLadderOf(Pigment pigment) =>
        LadderOf(pigment.AsOnTheShelf ?? pigment).Fit!.Ladder!;

    /// <summary>A pigment's sheet with what its sample would absorb and send out, were its grains and yield others.</summary>
    /// <param name="pigment">A pigment that <see cref="Check"/> let pass.</param>
    /// <param name="absorptionFactor">On its absorption.</param>
    /// <param name="photoluminescenceYield">Its yield.</param>
    internal SolvedSheet SheetOf(Pigment pigment, double absorptionFactor, double photoluminescenceYield) =>
        sheets.Solve(
            sheets
                .SampleOf(
                    pigment with
                    {
                        PhotoluminescenceYield = pigment.PhotoluminescenceYield.Select(_ =>
                            photoluminescenceYield
                        ),
                    }
                )
                .Sample!,
            absorptionFactor
        );

    /// <summary>The prediction of a checked piece, and the runs behind it.</summary>
    /// <param name="piece">A piece that <see cref="Check"/> let pass.</param>
    /// <param name="bounded">With the runs that bound the doubt; else the likely one alone, and no band.</param>
    /// <param name="only">Of the figures that not every run has those that are wanted; null for all, and the piece along its length.</param>
    internal (Prediction Prediction, IReadOnlyList<Run> Runs) Foretell(
        Piece piece,
        bool bounded,
        IReadOnlyCollection<Figure>? only = null
    )
    {
        var runs = bounded ? RunsOf(piece) : [LikelyRun(piece)];
        var likely = Run.LikelyOf(runs);
        var plan = PieceCasting.PlanOf(piece);
        var (along, largestStep) = only is null ? AlongPour.Of(likely, LikelyRun) : ([], null);
        var figures = only is not null
            ? FiguresFor(likely, only)
            : FigureValues
                .Builder.From(likely.FiguresInFull(plan))
                .Set("along_largest_step_u_prime_v_prime", largestStep)
                .Build();
        var bands =
            bounded && piece.HasPigment ? Bounds.Of([.. runs.Select(r => r.Figures)], likely.Figures) : [];
        bool boundsMissing = bounded && runs.Length < Run.CountFor(piece);
        var prediction = new Prediction
        {
            Recipe = piece.Recipe.File,
            Title = piece.Recipe.Title ?? "",
            Figures = figures,
            Bands = bands,
            Warnings = PredictionWarnings.Of(piece, plan, likely, boundsMissing),
            TakenAs = piece.TakenAs,
            CalibratedBy = piece.Calibration?.InWords,
            Assumptions = CalibrateFirst.Of(piece),
            Spectra = likely.SpectraOf(),
            Decay = Bounds.DecayOf(runs, likely),
            Cut = PieceCut.Of(likely),
            LimitMcdPerM2 = piece.LimitMcdPerM2,
            DepthOverBoardMm = piece.DepthMm,
            DepthOverPackagesMm = Math.Max(0, piece.DepthOverPackagesMm),
            HasCount = piece.Count is not null,
            ChargedBy = ChargeWords.Of(piece),
            LimitedBy = GlowLimit.InWords(piece, likely.Glow),
            RaMeaningful = likely.RaMeaningful,
            Loadings =
            [
                .. piece
                    .Layers.Where(l => l.Pigment is not null)
                    .Select(l => new LayerLoading(
                        l.Name,
                        l.Pigment!.Name,
                        l.DepthMm,
                        l.LoadingPercent,
                        PigmentLoading.FromPercentByMass(l.LoadingPercent).GPer100GResin,
                        100 * l.VolumeFraction
                    )),
            ],
            Along = along,
        };
        return (prediction, runs);
    }

    /// <summary>The likely run of a checked piece.</summary>
    internal Run LikelyRun(Piece piece) => LikelyRun(piece, PourOptics.Of(StackOf(piece)));

    /// <summary>The likely run of a checked piece whose pour is solved already.</summary>
    internal Run LikelyRun(Piece piece, PourOptics pour) =>
        RunOf(PieceLight.Of(piece, pour), Variation.Likely, SamplesOf(piece))!;

    /// <summary>A piece's layers as light meets them.</summary>
    internal PourStack StackOf(Piece piece) => PieceLight.StackOf(piece, optics);

    /// <summary>Works out what a likely run needs of materials, and keeps it: grains and ladders.</summary>
    internal void Prepare(Piece piece)
    {
        _ = StackOf(piece);
        foreach (var sample in SamplesOf(piece).Values)
        {
            _ = ladders.FitOf(sample, Variation.Likely);
        }
    }

    /// <summary>The figures of a run, with those that every run has and of the others those that are wanted.</summary>
    internal FigureValues FiguresFor(Run run, IEnumerable<Figure> wanted)
    {
        bool Wants(string beginning) =>
            wanted.Any(f => f.Name.StartsWith(beginning, StringComparison.Ordinal));

        var figures = FigureValues.Builder.From(run.Figures);
        if (Wants("lit.shift_by_cause_"))
        {
            ShiftByCause.Set(figures, run.Light);
        }
        if (Wants("casting."))
        {
            CastingFigures.Set(figures, PieceCasting.PlanOf(run.Light.Piece));
        }
        if (Wants("along_"))
        {
            figures.Set(
                "along_largest_step_u_prime_v_prime",
                AlongPour.Of(run, LikelyRun).LargestStepUPrimeVPrime
            );
        }
        return figures.Build();
    }

    /// <summary>The likely run and, with pigment, those that bound its doubt.</summary>
    internal Run[] RunsOf(Piece piece) => RunsOf([piece])[0];

    /// <summary>The same of pieces that are charged differently and are alike otherwise: their pour is solved once.</summary>
    internal Run[][] RunsOf(IReadOnlyList<Piece> pieces)
    {
        var first = pieces[0];
        if (!first.HasPigment)
        {
            return [.. pieces.Select(p => new[] { LikelyRun(p) })];
        }
        var samples = SamplesOf(first);
        var stack = StackOf(first);
        var factors = Variation.AbsorptionFactorsOf(first);
        var smoothings = Variation.Smoothings;
        Run?[][] runs = [.. pieces.Select(_ => new Run?[factors.Count * smoothings.Count])];
        // One by itself: threads that meet the same code for the first time get into each other's way.
        RunWith(0);
        Parallel.For(1, factors.Count, RunWith);
        return [.. runs.Select(of => of.OfType<Run>().ToArray())];

        void RunWith(int f)
        {
            var pour = PourOptics.Of(stack.WithPigmentScaled(factors[f]));
            for (int p = 0; p < pieces.Count; p++)
            {
                var light = PieceLight.Of(pieces[p], pour);
                for (int s = 0; s < smoothings.Count; s++)
                {
                    runs[p][(f * smoothings.Count) + s] = RunOf(
                        light,
                        new(factors[f], smoothings[s]),
                        samples
                    );
                }
            }
        }
    }

    /// <summary>One run over a solved piece; null if the sheet of one of its pigments cannot be held by traps.</summary>
    private Run? RunOf(PieceLight light, Variation variation, Dictionary<Pigment, SheetSample> samples)
    {
        if (!light.Piece.HasPigment)
        {
            return Run.Of(light, variation, null);
        }
        return samples.Values.All(sample => ladders.FitOf(sample, variation).Ladder is not null)
            ? Run.Of(
                light,
                variation,
                PieceGlow.Of(light, pigment => ladders.FitOf(samples[pigment], variation).Ladder!)
            )
            : null;
    }

    private Dictionary<Pigment, SheetSample> SamplesOf(Piece piece)
    {
        // By reference: comparing all numbers of two pigments would take longer than what is looked up.
        var samples = new Dictionary<Pigment, SheetSample>(ReferenceEqualityComparer.Instance);
        foreach (var layer in piece.Layers)
        {
            if (layer.HasPigment)
            {
                samples[layer.Pigment!] = sheets.SampleOf(layer.Pigment!).Sample!;
            }
        }
        return samples;
    }
}
