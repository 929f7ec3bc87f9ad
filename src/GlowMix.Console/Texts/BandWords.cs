using System.Globalization;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Where a prediction's low and high come from.</summary>
internal static class BandWords
{
    /// <summary>'10 to 90 % of 512 draws within all tolerances and doubts'.</summary>
    public static string Of(Prediction prediction) =>
        prediction.DrawCount > 0
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"10 to 90 % of {prediction.DrawCount} draws within all tolerances and doubts"
            )
            : "least and greatest of a few runs, pigment strength and sheet only";
}
