using GlowMix.Casting;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>One pass of the model over a piece.</summary>
internal sealed class Run
{
    private Run(PieceLight light, Variation variation, PieceGlow? glow)
    {
        Light = light;
        Variation = variation;
        Glow = glow;
        (Figures, RaMeaningful) = FiguresOf(light, glow);
    }

    public PieceLight Light { get; }

    public Variation Variation { get; }

    /// <summary>Null without pigment.</summary>
    public PieceGlow? Glow { get; }

    /// <summary>Figures that every run has: no split by cause, no casting.</summary>
    public FigureValues Figures { get; }

    /// <summary>Whether the lit Ra is within its method's limit.</summary>
    public bool RaMeaningful { get; }

    public static Run Of(PieceLight light, Variation variation, PieceGlow? glow) =>
        new(light, variation, glow);

    /// <summary>Of runs that bound a piece's doubt the likely one.</summary>
    public static Run LikelyOf(IEnumerable<Run> runs) => runs.First(r => r.Variation == Variation.Likely);

    /// <summary>What every run tells of a piece; the glow null without pigment.</summary>
    public static (FigureValues Figures, bool RaMeaningful) FiguresOf(PieceLight light, PieceGlow? glow)
    {
        var figures = new FigureValues.Builder();
        bool raMeaningful = LitFigures.Set(figures, light);
        if (glow is not null)
        {
            GlowFigures.Set(figures, glow, light.Piece.LimitMcdPerM2);
        }
        return (figures.Build(), raMeaningful);
    }

    /// <summary>How many runs bound a piece's doubt.</summary>
    public static int CountFor(Piece piece) =>
        piece.HasPigment ? Variation.AbsorptionFactorsOf(piece).Count * Variation.Smoothings.Count : 1;

    /// <summary>With the split by cause and the casting, which only the likely run needs.</summary>
    public FigureValues FiguresInFull(CastingPlan plan)
    {
        var figures = FigureValues.Builder.From(Figures);
        ShiftByCause.Set(figures, Light);
        CastingFigures.Set(figures, plan);
        return figures.Build();
    }

    public LitSpectra SpectraOf()
    {
        double count = Light.Piece.Count ?? 1;
        return new(
            count * Light.BareWPerNm,
            count * Light.LitWPerNm,
            count * Light.PigmentWPerNm,
            Glow is null ? null : PeakOne(Glow.EmittedWPerNmMm2(GlowFigures.ColourMinutes))
        );
    }

    private static Spectrum? PeakOne(Spectrum light)
    {
        double peak = 0;
        foreach (double sample in light.Samples)
        {
            peak = Math.Max(peak, sample);
        }
        return peak > 0 ? 1 / peak * light : null;
    }
}
