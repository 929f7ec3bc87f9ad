namespace GlowMix.Colour;

/// <summary>The nearest a screen comes to a colour, as bright as it can.</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
/// <param name="IsInGamut">
/// False for a colour more saturated than the screen's primaries, shown by the nearest that it has on the way to its white.
/// </param>
/// <remarks>
/// IEC 61966-2-1:1999 (sRGB). A screen's own white is D65: a warm white lamp is shown orange, as it looks beside the
/// screen, and not as it looks to an eye that has settled in its light.
/// </remarks>
public readonly record struct ScreenColour(byte Red, byte Green, byte Blue, bool IsInGamut)
{
    /// <summary>Of a chromaticity, with its strongest channel at full.</summary>
    public static ScreenColour Of(Chromaticity chromaticity)
    {
        if (chromaticity.Y <= 0)
        {
            return new(0, 0, 0, IsInGamut: false);
        }
        // XYZ at Y = 1.
        double x = chromaticity.X / chromaticity.Y;
        double z = (1 - chromaticity.X - chromaticity.Y) / chromaticity.Y;
        double red = (3.2406 * x) - 1.5372 - (0.4986 * z);
        double green = (-0.9689 * x) + 1.8758 + (0.0415 * z);
        double blue = (0.0557 * x) - 0.2040 + (1.0570 * z);
        // Towards white (1, 1, 1 at the same Y) until no channel is negative.
        double least = Math.Min(red, Math.Min(green, blue));
        bool inGamut = least >= -RoundingOfMatrix;
        if (least < 0)
        {
            double share = 1 / (1 - least);
            (red, green, blue) = (Mixed(red), Mixed(green), Mixed(blue));

            double Mixed(double channel) => 1 + (share * (channel - 1));
        }
        double most = Math.Max(red, Math.Max(green, blue));
        return new(Encoded(red / most), Encoded(green / most), Encoded(blue / most), inGamut);
    }

    /// <summary>The same colour with a share of the light, 0 to 1.</summary>
    public ScreenColour Dimmed(double share) =>
        this with
        {
            Red = Encoded(share * Linear(Red)),
            Green = Encoded(share * Linear(Green)),
            Blue = Encoded(share * Linear(Blue)),
        };

    // The standard prints its matrix and its primaries to four decimals: the primaries themselves come out at −0.001.
    private const double RoundingOfMatrix = 0.005;

    private static double Linear(byte encoded)
    {
        double value = encoded / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    private static byte Encoded(double linear)
    {
        double value = linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(255 * Math.Clamp(value, 0, 1));
    }
}
