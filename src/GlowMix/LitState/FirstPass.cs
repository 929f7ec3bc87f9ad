using GlowMix.Optics;
using GlowMix.Spectra;

namespace GlowMix.LitState;

/// <summary>
/// What a package sends out before anything comes back: its bare output with the return from its own flat face, which resin
/// of the same index takes away, counted out.
/// </summary>
public static class FirstPass
{
    /// <summary>
    /// s = (I − M R)(I − R)⁻¹ b, wavelength by wavelength, so that a bare face over this s gives the bare spectrum again; light
    /// that the package converted starts in the shape of the band it joins.
    /// </summary>
    /// <param name="led">The package.</param>
    /// <param name="resinIndex">Refractive index of the resin.</param>
    /// <returns>
    /// Three spectra, W/nm. A negative sample says that the return matrix and the bare spectrum contradict each other.
    /// </returns>
    public static Spectrum[] Of(LedBands led, Spectrum resinIndex)
    {
        ArgumentNullException.ThrowIfNull(led);
        ArgumentNullException.ThrowIfNull(resinIndex);
        var sentBack = resinIndex.Select(Fresnel.DiffuseFromInside);
        var first = new Spectrum[LedBands.Count];
        var returnedW = new double[LedBands.Count];
        for (int j = 0; j < LedBands.Count; j++)
        {
            var inside = led.BareW[j] * led.Shapes[j] * sentBack.Select(r => 1 / (1 - r));
            returnedW[j] = inside.IntegralOverNm(sentBack);
            double fed = 0;
            for (int shorter = 0; shorter < j; shorter++)
            {
                fed += led.Returned[j, shorter] * returnedW[shorter];
            }
            double unchanged = led.Returned[j, j];
            first[j] = (inside * sentBack.Select(r => 1 - (unchanged * r))) - (fed * led.Shapes[j]);
        }
        return first;
    }
}
