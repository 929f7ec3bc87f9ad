using System.Globalization;

namespace GlowMix.Console.Texts;

/// <summary>Where low and high come from.</summary>
internal static class BandWords
{
    /// <summary>'10 to 90 % of 512 draws within all tolerances and doubts'.</summary>
    /// <param name="drawCount">Draws behind the band; 0 for the bounding runs.</param>
    public static string Of(int drawCount) =>
        drawCount > 0
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"10 to 90 % of {drawCount} draws within all tolerances and doubts"
            )
            : "least and greatest of a few runs, pigment strength and sheet only";
}
