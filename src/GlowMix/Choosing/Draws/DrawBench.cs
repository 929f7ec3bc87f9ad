using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>Predicts one piece again and again with its doubtful numbers drawn. Safe to use from several threads.</summary>
internal sealed class DrawBench
{
    private readonly Piece piece;
    private readonly StreamShelf streams;
    private readonly GrainSpan?[] grains;
    private readonly CorrelatedShares together;
    private readonly Dictionary<Pigment, SheetGrid> sheetGrids = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Pigment, MeasuredLadder> measured = new(ReferenceEqualityComparer.Instance);

    /// <summary>A piece drawn by itself.</summary>
    /// <param name="piece">A piece that the model can predict.</param>
    /// <param name="optics">Who has the optics of its materials as they stand.</param>
    /// <param name="sheets">Who solves the samples of its pigments' sheets.</param>
    public DrawBench(Piece piece, OpticsShelf optics, PigmentSheets sheets)
        : this(piece, new DrawShelf(optics, sheets)) { }

    /// <summary>A piece drawn beside others.</summary>
    /// <param name="piece">A piece that the model can predict.</param>
    /// <param name="shelf">Who interpolates its grains and its pigments' sheets.</param>
    public DrawBench(Piece piece, DrawShelf shelf)
    {
        this.piece = piece;
        streams = new(few: piece.HasPigment);
        Numbers = Doubts.Of(piece);
        together = new(Numbers, piece.Calibration?.Correlations ?? []);
        grains =
        [
            .. piece.Layers.Select(
                (l, i) =>
                    l.HasPigment
                        ? shelf.GrainsOf(
                            l.Pigment!,
                            piece.Resin,
                            l.GrainMedianUm,
                            l.GrainGsd,
                            piece.Recipe.Layers[i].GrainToleranceFactor ?? 1
                        )
                        : null
            ),
        ];
        foreach (var pigment in piece.Layers.Where(l => l.HasPigment).Select(l => l.Pigment!))
        {
            if (pigment.Traps is not null)
            {
                // A decay reading told the ladder, and the sheet no longer does.
                measured[pigment] = shelf.MeasuredOf(pigment);
            }
            else
            {
                sheetGrids[pigment] = shelf.SheetOf(pigment);
            }
        }
    }

    /// <summary>What is drawn.</summary>
    public ImmutableArray<DoubtfulNumber> Numbers { get; }

    /// <summary>
    /// Other charges whose glow each draw tells too, where the piece has pigment; each turns the piece into the same layers after
    /// that charge.
    /// </summary>
    public IReadOnlyList<Func<Piece, Piece>> Charges { get; init; } = [];

    /// <summary>Works out beforehand what draws share, so that they do not wait for each other.</summary>
    /// <param name="points">All of them, each with a share for every number.</param>
    public void Prepare(IEnumerable<double[]> points)
    {
        foreach (double[] point in points)
        {
            var draft = DraftOf(point);
            var resin = draft.ResinOf().RefractiveIndex.Value;
            for (int i = 0; i < grains.Length; i++)
            {
                if (grains[i] is { } ofLayer)
                {
                    var pigment = draft.Pigments.First(p =>
                        ReferenceEquals(p.Pigment, piece.Layers[i].Pigment)
                    );
                    ofLayer.Prepare(pigment.Drawn().RefractiveIndex.Value, resin, draft.GrainFactors[i]);
                }
            }
        }
    }

    /// <summary>The figures of one draw; null if its pigment could not have given its own sheet.</summary>
    /// <param name="point">A share above 0 and below 1 for every number.</param>
    public Draw? Run(double[] point)
    {
        var drawn = DrawnOf(point);
        if (LaddersOf(drawn) is not { } ladders)
        {
            return null;
        }
        var light = PieceLight.Of(drawn.Piece, drawn.Optics);
        var glow = piece.HasPigment ? PieceGlow.Of(light, p => ladders[p]) : null;
        var (figures, raMeaningful) = Predictions.Run.FiguresOf(light, glow);
        return new(
            figures,
            raMeaningful,
            glow is null ? null : Bounds.LuminancesOf(glow),
            glow is null ? [] : GlowsAfter(Charges, drawn, light.Pour, ladders)
        );
    }

    /// <summary>The glow of one draw after several charges; null if its pigment could not have given its own sheet.</summary>
    /// <param name="point">A share above 0 and below 1 for every number.</param>
    /// <param name="charges">What each makes of the piece: the same layers after another charge.</param>
    public IReadOnlyList<GlowCurve>? GlowsOf(double[] point, IReadOnlyList<Func<Piece, Piece>> charges)
    {
        var drawn = DrawnOf(point);
        if (LaddersOf(drawn) is not { } ladders)
        {
            return null;
        }
        var pour = PourOptics.Of(PieceLight.StackOf(drawn.Piece, drawn.Optics));
        return GlowsAfter(charges, drawn, pour, ladders);
    }

    private static GlowCurve[] GlowsAfter(
        IReadOnlyList<Func<Piece, Piece>> charges,
        DrawnPiece drawn,
        PourOptics pour,
        IReadOnlyDictionary<Pigment, TrapLadder> ladders
    ) =>
        [
            .. charges.Select(charged =>
                PieceGlow.Of(PieceLight.Of(charged(drawn.Piece), pour), p => ladders[p]).Photopic
            ),
        ];

    /// <summary>The piece of one draw.</summary>
    internal DrawnPiece DrawnOf(double[] point) => DraftOf(point).Drawn(grains, streams);

    /// <summary>The ladders of a drawn piece's pigments; null if one of them could not have given its sheet.</summary>
    internal IReadOnlyDictionary<Pigment, TrapLadder>? LaddersOf(DrawnPiece drawn)
    {
        var ladders = new Dictionary<Pigment, TrapLadder>(ReferenceEqualityComparer.Instance);
        foreach (var (draft, pigment) in drawn.Pigments)
        {
            if (measured.TryGetValue(draft.Pigment, out var told))
            {
                ladders[pigment] = told.At(
                    draft.CapacityPerG,
                    draft.LadderSmoothing,
                    draft.Lean,
                    draft.TrappingFactor
                );
            }
            else if (sheetGrids.TryGetValue(draft.Pigment, out var sheet))
            {
                var fit = LadderFit.To(
                    sheet.At(
                        draft.AbsorptionFactor,
                        draft.IndexShift,
                        draft.Yield,
                        pigment.TrapCapacityPerMm3
                    ),
                    LadderShelf.ConstantsOf(pigment),
                    draft.LadderSmoothing,
                    draft.WeightExponent
                );
                if (fit.Ladder is not { } ladder)
                {
                    return null;
                }
                ladders[pigment] = ladder;
            }
        }
        return ladders;
    }

    private PieceDraft DraftOf(double[] point)
    {
        var draft = new PieceDraft(piece);
        double[] shares = together.At(point);
        for (int i = 0; i < Numbers.Length; i++)
        {
            Numbers[i].Put(draft, Numbers[i].Spread.At(shares[i]));
        }
        return draft;
    }
}
