using GlowMix.Optics;
using GlowMix.Spectra;

namespace GlowMix.LitState;

/// <summary>
/// What a package sends out before anything comes back: its bare output with the return from its own flat face, which resin
/// of the same index takes away, counted out.
/// </summary>
public static class FirstPass
{
    /// <summary>s = (I − M R)(I − R)⁻¹ b, watts per band; a bare face over this s gives the bare output again.</summary>
    /// <param name="led">The package.</param>
    /// <param name="resinIndex">Refractive index of the resin.</param>
    /// <returns>Three powers, W. A negative one says that the return matrix and the bare spectrum contradict each other.</returns>
    public static double[] OfBands(LedBands led, Spectrum resinIndex)
    {
        ArgumentNullException.ThrowIfNull(led);
        ArgumentNullException.ThrowIfNull(resinIndex);
        Span<double> inside = stackalloc double[LedBands.Count];
        Span<double> reflected = stackalloc double[LedBands.Count];
        for (int j = 0; j < LedBands.Count; j++)
        {
            reflected[j] = FaceReflectance(led.Shapes[j], resinIndex);
            inside[j] = led.BareW[j] / (1 - reflected[j]);
        }
        var first = new double[LedBands.Count];
        for (int i = 0; i < LedBands.Count; i++)
        {
            first[i] = inside[i];
            for (int j = 0; j < LedBands.Count; j++)
            {
                first[i] -= led.Returned[i, j] * reflected[j] * inside[j];
            }
        }
        return first;
    }

    /// <summary>Diffuse reflectance of the face from inside, the mean over a band.</summary>
    private static double FaceReflectance(Spectrum shape, Spectrum resinIndex)
    {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            if (shape[i] > 0)
            {
                sum += shape[i] * Fresnel.DiffuseFromInside(resinIndex[i]);
                weight += shape[i];
            }
        }
        return sum / weight;
    }
}
