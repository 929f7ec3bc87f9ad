using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing.Search;

/// <summary>What a search goes by: how white, how bright in the dark, and the recipe's targets.</summary>
internal sealed class BalanceGoal
{
    private const double UsualMinutes = 60;
    private const string Luminance = "afterglow.luminance_mcd_m2";

    private readonly Chromaticity? white;
    private readonly ImmutableArray<(RecipeTarget Target, Figure Figure)> targets;

    /// <param name="recipe">A recipe whose targets name figures that exist.</param>
    public BalanceGoal(Recipe recipe)
    {
        WhiteCctK = recipe.Balance.WhiteCctK;
        GlowAtMinutes = recipe.Balance.GlowAtMinutes ?? UsualMinutes;
        white = WhiteCctK is double k ? PlanckianLocus.AtK(k) : null;
        targets = [.. recipe.Targets.Select(t => (t, FigureCatalogue.Find(t.Figure, t.AtMinutes)!))];
    }

    /// <summary>Colour temperature of the white aimed at, K; null for that of the bare board.</summary>
    public double? WhiteCctK { get; }

    /// <summary>When the glow is judged, min.</summary>
    public double GlowAtMinutes { get; }

    /// <summary>The figures that the targets need.</summary>
    public IEnumerable<Figure> TargetFigures => targets.Select(t => t.Figure);

    /// <summary>How many targets.</summary>
    public int TargetCount => targets.Length;

    /// <summary>What a search keeps of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="raMeaningful">Whether colour rendering is within its method's limit.</param>
    public DesignResult Judge(Design design, FigureValues figures, bool raMeaningful)
    {
        double?[] values =
        [
            .. targets.Select(t => IsRendering(t.Figure) && !raMeaningful ? null : figures[t.Figure]),
        ];
        return new(
            design,
            OffWhite(figures),
            figures[Luminance, GlowAtMinutes] ?? 0,
            [.. values],
            [.. targets.Select((t, i) => Shortfall(t.Target, values[i]))]
        );
    }

    /// <summary>Colour rendering of the potted piece, which a strong tint makes meaningless.</summary>
    public static bool IsRendering(Figure figure) => figure.Name is "lit.ra" or "lit.r9";

    private double OffWhite(FigureValues figures) =>
        white is not { } aim ? figures["lit.shift_u_prime_v_prime"] ?? double.PositiveInfinity
        : figures["lit.u_prime"] is double u && figures["lit.v_prime"] is double v
            ? ColourDifference.UPrimeVPrime(Chromaticity.FromUPrimeVPrime(u, v), aim)
        : double.PositiveInfinity;

    private static double Shortfall(RecipeTarget target, double? value) =>
        value is not double v
            ? double.PositiveInfinity
            : Math.Max(
                0,
                Math.Max(
                    (target.AtLeast ?? double.NegativeInfinity) - v,
                    v - (target.AtMost ?? double.PositiveInfinity)
                )
            );
}
