using GlowMix.Casting;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>
/// Grain tables of the shelf's pigments that were worked out beforehand and travel along, in data/derived. Each is found by a hash
/// of every number it follows from: other materials, or another grain, find nothing and are worked out.
/// </summary>
internal static class DerivedGrains
{
    /// <summary>Name of the file that would hold these grains, without folder and ending.</summary>
    public static string KeyOf(
        Pigment pigment,
        Resin resin,
        double medianUm,
        double gsd,
        int highestMoment
    ) =>
        new InputHash()
            .Add(pigment.RefractiveIndex.Value)
            .Add(pigment.AbsorptionPerMm.Value)
            .Add(resin.RefractiveIndex.Value)
            .Add(medianUm)
            .Add(gsd)
            .Add(GrainClasses.Count)
            .Add(GrainTable.DefaultSizeCount)
            .Add(highestMoment)
            .ToString();

    /// <summary>The grains, to twelve digits as they would be worked out; null if they do not travel along.</summary>
    public static ClassedGrains? Find(
        Pigment pigment,
        Resin resin,
        double medianUm,
        double gsd,
        int highestMoment
    ) =>
        ShippedTable.Find($"derived/grains/{KeyOf(pigment, resin, medianUm, gsd, highestMoment)}")
            is { } table
            ? AllClassesOf(table, highestMoment)
            : null;

    private static ClassedGrains AllClassesOf(ShippedTable table, int highestMoment)
    {
        var classes = new GrainTable[GrainClasses.Count];
        for (int i = 0; i < classes.Length; i++)
        {
            classes[i] = Of(table, i * WavelengthGrid.Count, highestMoment);
        }
        return new([.. classes]);
    }

    private static GrainTable Of(ShippedTable table, int firstRow, int highestMoment)
    {
        var averages = new GrainAverage[WavelengthGrid.Count];
        for (int i = 0; i < averages.Length; i++)
        {
            var moments = new double[highestMoment + 1];
            moments[0] = 1;
            averages[i] = new(
                table["absorption_per_mm"][firstRow + i],
                table["scattering_per_mm"][firstRow + i],
                moments
            );
        }
        for (int l = 1; l <= highestMoment; l++)
        {
            var column = table[$"moment_{l}"][firstRow..];
            for (int i = 0; i < averages.Length; i++)
            {
                averages[i].Moments[l] = column[i];
            }
        }
        return GrainTable.Of(averages);
    }
}
