using GlowMix.Colour;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>
/// The looks of one moment: the lit side on paper of the computed white, the dark side on black in the computed glow, the numbers
/// between in the terminal's own colours. Without colour the same looks are told apart by emphasis alone.
/// </summary>
internal sealed class Palette
{
    private static readonly Rgb dayInk = new(26, 22, 18);
    private static readonly Rgb noGlow = new(150, 150, 150);
    private static readonly Rgb paleWhite = new(255, 255, 255);
    private static readonly Rgb dieBlue = new(64, 104, 255);

    private readonly Rgb lit;
    private readonly Rgb glow;

    /// <param name="prediction">What is shown; null before anything is known.</param>
    /// <param name="hasColour">False where the user wants none.</param>
    public Palette(Prediction? prediction, bool hasColour)
    {
        HasColour = hasColour;
        // Half way to white: an eye settles in the light it is in, and dark letters are to be read on it.
        lit = Stepped(ColourOf(prediction, "lit")?.Towards(paleWhite, 0.5) ?? new(238, 238, 238));
        glow = ColourOf(prediction, "afterglow") ?? noGlow;
    }

    /// <summary>Whether colours are used at all.</summary>
    public bool HasColour { get; }

    /// <summary>Text on the lit side.</summary>
    public Look Lit => Coloured(dayInk, lit);

    /// <summary>Text on the lit side that stands back.</summary>
    public Look LitFaint => HasColour ? Coloured(dayInk.Towards(lit, 0.45), lit) : Look.Plain.Faint;

    /// <summary>The pigment's own light on the lit side.</summary>
    public Look LitPigment => Coloured(new(0, 96, 48), lit);

    /// <summary>Text on the dark side.</summary>
    public Look Dark => Coloured(glow.Towards(paleWhite, 0.35), Rgb.Black);

    /// <summary>Text on the dark side that stands back.</summary>
    public Look DarkFaint =>
        HasColour
            ? Coloured(glow.Towards(noGlow, 0.6).Towards(Rgb.Black, 0.35), Rgb.Black)
            : Look.Plain.Faint;

    /// <summary>Edges of a band on the dark side.</summary>
    public Look DarkBand => HasColour ? Coloured(glow.Towards(Rgb.Black, 0.5), Rgb.Black) : Look.Plain.Faint;

    /// <summary>The knob that is held.</summary>
    public static Look Held => Look.Plain.Reverse;

    /// <summary>Resin in the light of the LEDs.</summary>
    /// <param name="blue">How much blue reaches it, 0 to 1.</param>
    public Look LitResin(double blue) =>
        Coloured(dayInk, lit.Towards(paleWhite, 0.25).Towards(dieBlue, 0.85 * blue));

    /// <summary>Resin in the dark.</summary>
    /// <param name="filled">Traps filled, 0 to 1; null where there are none.</param>
    public Look DarkResin(double? filled) =>
        filled is double f
            // The eye sees steps of brightness, not of light: a share shown by its root keeps a tenth visible.
            ? Coloured(
                f > 0.3 ? Rgb.Black : glow.Towards(paleWhite, 0.35),
                Rgb.Black.Towards(glow, 0.85 * Math.Sqrt(f))
            )
            : Coloured(noGlow, new(26, 26, 28));

    /// <summary>A point of the map, as bright as it glows.</summary>
    /// <param name="ofBrightest">Its glow, of the brightest point's; null where it is not known.</param>
    public Look MapPoint(double? ofBrightest) =>
        ofBrightest is double share
            ? Coloured(
                share > 0.25 ? Rgb.Black : glow.Towards(paleWhite, 0.35),
                Rgb.Black.Towards(glow, 0.9 * Math.Sqrt(share))
            )
            : Coloured(noGlow, new(26, 26, 28));

    /// <summary>Board under the lit piece, or the dark one.</summary>
    public Look Board(bool dark) =>
        dark ? Coloured(new(90, 90, 90), Rgb.Black) : Coloured(new(120, 112, 100), lit);

    /// <summary>An LED package.</summary>
    public Look Package(bool dark) =>
        dark ? Coloured(new(96, 92, 72), new(96, 92, 72)) : Coloured(paleWhite, paleWhite);

    private Look Coloured(Rgb ink, Rgb paper) => HasColour ? new(ink, paper) : Look.Plain;

    // In steps no eye tells apart: else every fine turn would send the whole side anew.
    private static Rgb Stepped(Rgb colour) =>
        new((byte)(colour.Red | 3), (byte)(colour.Green | 3), (byte)(colour.Blue | 3));

    private static Rgb? ColourOf(Prediction? prediction, string part)
    {
        if (
            prediction?.Figures[$"{part}.x"] is not double x
            || prediction.Figures[$"{part}.y"] is not double y
        )
        {
            return null;
        }
        var screen = ScreenColour.Of(Chromaticity.FromXy(x, y));
        return new(screen.Red, screen.Green, screen.Blue);
    }
}
