namespace GlowMix.Readings.Fit;

/// <summary>
/// Strengths at which pours are solved; between them readings are interpolated in the logarithms, by a cubic over a pigment's
/// strength and a parabola over the resin's, which does little.
/// </summary>
internal static class FitLattice
{
    private const double StrengthStep = 0.2;
    private const double ResinStep = 0.25;

    // Nearer to a node than this is the node itself: nothing need be solved for the others.
    private const double AtNode = 1e-12;

    /// <summary>Factor on a pigment's absorption after some steps.</summary>
    public static double StrengthAt(int step) => Math.Exp(StrengthStep * step);

    /// <summary>Factor on the resin's absorption after some steps.</summary>
    public static double ResinFactorAt(int step) => Math.Exp(ResinStep * step);

    /// <summary>The nodes around a draft, with their weights.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="pigments">Pigments in the pour.</param>
    public static IReadOnlyList<(FitNode Node, double Weight)> Around(
        FitDraft draft,
        IReadOnlyList<string> pigments
    )
    {
        var resin = Line(Math.Log(draft.ResinFactor) / ResinStep, nodes: 3);
        var lines = pigments
            .Select(name =>
                (
                    name,
                    line: Line(
                        Math.Log(draft.Pigments.First(p => p.Name == name).Strength) / StrengthStep,
                        nodes: 4
                    )
                )
            )
            .ToArray();
        IEnumerable<((string, int)[] Steps, double Weight)> products = [([], 1.0)];
        foreach (var (name, line) in lines)
        {
            products =
            [
                .. products.SelectMany(p =>
                    line.Select(l =>
                        ((ValueTuple<string, int>[])[.. p.Steps, (name, l.Step)], p.Weight * l.Weight)
                    )
                ),
            ];
        }
        return
        [
            .. products.SelectMany(p =>
                resin.Select(r => (new FitNode(r.Step, p.Steps), p.Weight * r.Weight))
            ),
        ];
    }

    // Lagrange's polynomial through the nearest nodes.
    private static (int Step, double Weight)[] Line(double at, int nodes)
    {
        double nearest = Math.Round(at);
        if (Math.Abs(at - nearest) < AtNode)
        {
            return [((int)nearest, 1)];
        }
        int first = nodes % 2 == 0 ? (int)Math.Floor(at) - (nodes / 2) + 1 : (int)nearest - (nodes / 2);
        var line = new (int, double)[nodes];
        for (int i = 0; i < nodes; i++)
        {
            double weight = 1;
            for (int j = 0; j < nodes; j++)
            {
                if (j != i)
                {
                    weight *= (at - first - j) / (i - j);
                }
            }
            line[i] = (first + i, weight);
        }
        return line;
    }
}
