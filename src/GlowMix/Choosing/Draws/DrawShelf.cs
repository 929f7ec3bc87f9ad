using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// Interpolated grains and sheets, each worked out once: draws of several pieces that share a pigment share what it took. Not for
/// several threads; what it hands out is.
/// </summary>
/// <param name="optics">Who has the optics of materials as they stand.</param>
/// <param name="sheets">Who solves the samples of pigments' sheets.</param>
internal sealed class DrawShelf(OpticsShelf optics, PigmentSheets sheets)
{
    private readonly List<Entry> spans = [];
    private readonly Dictionary<Pigment, SheetGrid> sheetGrids = new(ReferenceEqualityComparer.Instance);

    private sealed record Entry(
        Pigment Pigment,
        Resin Resin,
        double MedianUm,
        double Gsd,
        double Factor,
        GrainSpan Grains
    );

    /// <summary>Grains of a pigment in a resin.</summary>
    /// <param name="pigment">As it stands.</param>
    /// <param name="resin">As it stands.</param>
    /// <param name="medianUm">Median diameter as it stands.</param>
    /// <param name="gsd">Its spread.</param>
    /// <param name="factor">Doubt of the median as a factor; 1 where it is not drawn.</param>
    public GrainSpan GrainsOf(Pigment pigment, Resin resin, double medianUm, double gsd, double factor)
    {
        foreach (var known in spans)
        {
            if (
                ReferenceEquals(known.Pigment, pigment)
                && ReferenceEquals(known.Resin, resin)
                && (known.MedianUm, known.Gsd, known.Factor) == (medianUm, gsd, factor)
            )
            {
                return known.Grains;
            }
        }
        var grains = new GrainSpan(pigment, resin, medianUm, gsd, factor, optics);
        spans.Add(new(pigment, resin, medianUm, gsd, factor, grains));
        return grains;
    }

    /// <summary>The sample behind a pigment's sheet.</summary>
    public SheetGrid SheetOf(Pigment pigment)
    {
        if (!sheetGrids.TryGetValue(pigment, out var grid))
        {
            var sample = sheets.SampleOf(pigment).Sample!;
            var grains = GrainsOf(
                pigment,
                sample.Resin,
                pigment.GrainMedianUm.Value,
                pigment.GrainGsd.Value,
                1
            );
            sheetGrids[pigment] = grid = new(sample, sheets, grains.Own);
        }
        return grid;
    }

    /// <summary>The ladder that a decay reading told of a pigment.</summary>
    public MeasuredLadder MeasuredOf(Pigment pigment) =>
        new LadderShelf(sheets).MeasuredOf(sheets.SampleOf(pigment).Sample!);
}
