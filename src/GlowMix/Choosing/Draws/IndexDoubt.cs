using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>An index in doubt as a whole: its dispersion is kept, the value at the helium line d moves.</summary>
internal static class IndexDoubt
{
    /// <summary>Index at 587.6 nm, where a doubt tells its ends.</summary>
    public static double AtLineD(Spectrum index)
    {
        double place = ((Dispersion.LineDUm * 1000) - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;
        int below = (int)place;
        return double.Lerp(index[below], index[below + 1], place - below);
    }

    /// <summary>The same index, so much higher at every wavelength.</summary>
    public static Spectrum Shifted(Spectrum index, double by) =>
        by == 0 ? index : Spectrum.FromIndex(i => index[i] + by);
}
