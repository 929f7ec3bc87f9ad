using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>From photons that traps emit to luminance.</summary>
internal static class GlowWeights
{
    private const double Mm2PerM2 = 1e6;
    private const double McdPerCd = 1000;

    /// <summary>
    /// What one photon emitted per second and mm³ of pigment in each cell adds to the luminance at the normal of the face, taken
    /// as Lambertian, mcd/m².
    /// </summary>
    /// <param name="glow">The way out.</param>
    /// <param name="pour">The pour.</param>
    /// <param name="lmPerW">Photopic or scotopic.</param>
    public static double[] McdPerM2(GlowEscape glow, PourOptics pour, Spectrum lmPerW)
    {
        var weights = glow.PerPhoton(lmPerW);
        for (int c = 0; c < weights.Length; c++)
        {
            var layer = pour.Stack.Layers[pour.Cells[c].Layer];
            weights[c] *=
                layer.VolumeFraction * pour.Cells[c].WidthMm * layer.Yield * Mm2PerM2 / Math.PI * McdPerCd;
        }
        return weights;
    }
}
