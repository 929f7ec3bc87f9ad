using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Console.Texts;

/// <summary>
/// A light's hue in one word, by the wavelength that lies in its direction from the equal-energy white in CIE 1976 u′, v′.
/// Where one word ends and the next begins is our own choice, no source.
/// </summary>
internal static class HueWord
{
    private const string White = "white";
    private const string Purple = "purple";
    private const double WhiteWithin = 0.02;

    // Each word up to its wavelength, nm; behind the last begin the purples, which no wavelength has.
    private static readonly (int UpToNm, string Word)[] words =
    [
        (450, "violet"),
        (485, "blue"),
        (500, "blue-green"),
        (560, "green"),
        (575, "yellow-green"),
        (590, "yellow"),
        (610, "orange"),
        (700, "red"),
    ];

    private static readonly Chromaticity equalEnergy = Chromaticity.FromXy(1.0 / 3, 1.0 / 3);

    /// <summary>The word for a chromaticity.</summary>
    public static string Of(double x, double y)
    {
        var point = Chromaticity.FromXy(x, y);
        if (double.Hypot(point.UPrime - equalEnergy.UPrime, point.VPrime - equalEnergy.VPrime) < WhiteWithin)
        {
            return White;
        }
        double start = Angle(OfNm(400));
        double turn = Turn(start, Angle(point));
        foreach (var (upToNm, word) in words)
        {
            if (turn <= Turn(start, Angle(OfNm(upToNm))))
            {
                return word;
            }
        }
        return Purple;
    }

    // The spectrum runs from violet over green to red against the way angles are counted.
    private static double Turn(double from, double angle)
    {
        double turn = from - angle;
        return turn < 0 ? turn + Math.Tau : turn;
    }

    private static double Angle(Chromaticity point) =>
        Math.Atan2(point.VPrime - equalEnergy.VPrime, point.UPrime - equalEnergy.UPrime);

    private static Chromaticity OfNm(int wavelengthNm) =>
        ColourPoint.Of(Spectrum.FromNm(nm => nm == wavelengthNm ? 1 : 0)).Chromaticity
        ?? throw new InvalidOperationException($"{wavelengthNm} nm has no colour.");
}
