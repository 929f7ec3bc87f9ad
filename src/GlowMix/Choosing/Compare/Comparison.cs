using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Compare;

/// <summary>Two recipes side by side.</summary>
public sealed record Comparison
{
    /// <summary>The key of what is left to the interaction of several changes.</summary>
    public const string Together = "together";

    /// <summary>The first.</summary>
    public required Prediction Before { get; init; }

    /// <summary>The second.</summary>
    public required Prediction After { get; init; }

    /// <summary>What the recipes and their own files say differently, yardsticks too, in the order of a tidy recipe.</summary>
    public required ImmutableArray<RecipeDifference> Differences { get; init; }

    /// <summary>The second's targets, judged for both.</summary>
    public required ImmutableArray<TargetChange> Targets { get; init; }

    /// <summary>Every figure that one of them has, in catalogue order.</summary>
    public required ImmutableArray<FigureChange> Figures { get; init; }

    /// <summary>Several changes each alone, then what is left to their interaction; empty for one change or none.</summary>
    public required ImmutableArray<CauseOfChange> Causes { get; init; }

    /// <summary>The draws behind the bands; 0 where they are those of the bounding runs.</summary>
    public required int DrawCount { get; init; }

    /// <summary>Figures whose causes are told.</summary>
    public static ImmutableArray<Figure> CauseFigures { get; } =
    [
        .. new[]
        {
            "lit.cct_k",
            "lit.duv",
            "lit.flux_kept_percent",
            "afterglow.luminance_mcd_m2[10]",
            "afterglow.luminance_mcd_m2[60]",
        }.Select(name => FigureCatalogue.Find(name)!),
    ];

    /// <summary>Whether a figure's change is told by a ratio: pigment's strength is in doubt by a factor.</summary>
    public static bool IsByRatio(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return figure.Name.StartsWith("afterglow.", StringComparison.Ordinal)
            && figure.Unit is "mcd/m²" or "min";
    }
}
