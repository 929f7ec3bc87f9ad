using GlowMix.Colour;

namespace GlowMix.Console.Reports;

/// <summary>A screen's colour as pages write it.</summary>
internal static class ScreenColourText
{
    /// <summary>'#ffa833'.</summary>
    public static string Hex(this ScreenColour colour) =>
        $"#{colour.Red:x2}{colour.Green:x2}{colour.Blue:x2}";
}
