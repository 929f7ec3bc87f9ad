using System.Globalization;

namespace GlowMix.Predictions;

/// <summary>Words of problems that only a prediction finds.</summary>
internal static class PredictionTexts
{
    public static string NoSuchFigure(string name, string? nearest) =>
        $"no figure is called '{name}'" + (nearest is null ? "" : $"; did you mean '{nearest}'?");

    public static string LedContradicts(string led, string resin) =>
        $"the return matrix of {led} turns more light into longer bands than its bare spectrum holds, under {resin}; "
        + "lower the entries below its diagonal";

    public static string SheetRefused(string pigment, string reason) =>
        $"the sheet of {pigment} cannot be met. {reason}";

    public static string ResinTooDense(string resin) =>
        $"{resin} has a refractive index above 2; grains are computed in resins up to 2";

    public static string GrainsTooLarge(double medianUm, double gsd, int sizes) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"grains of {medianUm:0.#} µm (spread {gsd:0.##}) are too large to compute, {sizes} sizes reach beyond the series; take a smaller median or spread"
        );
}
