using System.Collections.Immutable;
using GlowMix.Optics.Grains;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>The numbers of classed grains in one row, so that tables can be added up and multiplied.</summary>
/// <remarks>
/// Class by class and wavelength by wavelength: absorption, scattering, and scattering times what each moment is short of 1. Light
/// sees no more than these products (scattering itself falls out with the forward peak: Wiscombe 1977, delta-M), and they go
/// smoothly to nothing where grain and resin match, which neither factor does.
/// </remarks>
internal static class GrainNumbers
{
    /// <summary>Numbers of a table at one wavelength.</summary>
    public static int PerWavelength(int highestMoment) => 2 + highestMoment;

    public static double[] Of(ClassedGrains grains)
    {
        int width = PerWavelength(grains.Classes[0].HighestMoment);
        var row = new double[grains.Classes.Length * WavelengthGrid.Count * width];
        int at = 0;
        foreach (var table in grains.Classes)
        {
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                row[at++] = table.AbsorptionPerMm[i];
                row[at++] = table.ScatteringPerMm[i];
                foreach (double moment in table.Moments(i).Span[1..])
                {
                    row[at++] = table.ScatteringPerMm[i] * (1 - moment);
                }
            }
        }
        return row;
    }

    public static ClassedGrains ToGrains(ReadOnlySpan<double> row, int classes, int highestMoment)
    {
        var tables = ImmutableArray.CreateBuilder<GrainTable>(classes);
        int at = 0;
        for (int c = 0; c < classes; c++)
        {
            var averages = new GrainAverage[WavelengthGrid.Count];
            for (int i = 0; i < averages.Length; i++)
            {
                double absorption = Math.Max(0, row[at]);
                double scattering = Math.Max(0, row[at + 1]);
                at += 2;
                var products = row[at..(at + highestMoment)];
                at += highestMoment;
                foreach (double product in products)
                {
                    scattering = Math.Max(scattering, product);
                }
                var moments = new double[highestMoment + 1];
                moments[0] = 1;
                for (int l = 1; l <= highestMoment; l++)
                {
                    moments[l] = scattering > 0 ? 1 - (Math.Max(0, products[l - 1]) / scattering) : 1;
                }
                averages[i] = new(absorption, scattering, moments);
            }
            tables.Add(GrainTable.Of(averages));
        }
        return new(tables.MoveToImmutable());
    }
}
