using System.Collections.Concurrent;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Materials;
using static System.FormattableString;

namespace GlowMix.Tests.Predictions;

/// <summary>A recipe of the tests, all invented, and its prediction. Change a part with <c>with</c>.</summary>
internal sealed record TestRecipe
{
    /// <summary>Area of one emitting window of the shipped LEDs, mm².</summary>
    private const double WindowMm2 = Math.PI * 1.15 * 1.15;

    private static readonly InMemoryMaterials Own = new(
        Flat("warm-white-2700"),
        Flat("warm-white-3000"),
        Flat("neutral-white-4000"),
        // A cool LED that turns as much blue as a warm one: it has not that much red to begin with.
        (
            "materials/leds/contradictory.yaml",
            Shipped("leds/cool-white-6500")
                .Replace("into_green: 0.12", "into_green: 0.25", StringComparison.Ordinal)
                .Replace("into_red: 0.06", "into_red: 0.23", StringComparison.Ordinal)
                .Replace("into_green: 0.78", "into_green: 0.60", StringComparison.Ordinal)
                .Replace("into_red: 0.12", "into_red: 0.30", StringComparison.Ordinal)
        ),
        (
            "materials/leds/no-die.yaml",
            Shipped("leds/warm-white-3000")
                .Replace("0.086351", "0", StringComparison.Ordinal)
                .Replace("0.372463", "0.458814", StringComparison.Ordinal)
        ),
        ("materials/pigments/green-twin.yaml", Shipped("pigments/green-aluminate")),
        Thicker(1),
        Thicker(3),
        Thicker(10),
        Thicker(30),
        Thicker(300)
    );

    private static readonly ConcurrentDictionary<(string, bool), Lazy<Prediction>> Known = new();

    /// <summary>One for all tests: grains and ladders are worked out once.</summary>
    public static Predictor Predictor { get; } = Fresh();

    public string Resin { get; init; } = "epoxy-clear-slow";

    /// <summary>'flat-…' are the shipped LEDs with packages of no height.</summary>
    public string Led { get; init; } = "warm-white-3000";

    public string Board { get; init; } = "white-mask";

    /// <summary>Share of the board that windows cover.</summary>
    public double WindowShare { get; init; } = 0.05;

    /// <summary>Whether the recipe tells number and size.</summary>
    public bool HasSize { get; init; } = true;

    /// <summary>Lines under 'layers'.</summary>
    public string Layers { get; init; } = Glow(2.5, 20);

    /// <summary>Lines under 'steps'; empty for what a recipe without a charge is taken as.</summary>
    public string Steps { get; init; } = "";

    public string Start { get; init; } = "empty";

    public double DarknessC { get; init; } = 20;

    public double LimitMcdM2 { get; init; } = 0.3;

    /// <summary>False predicts grains as evenly spread.</summary>
    public bool IsSettled { get; init; } = true;

    /// <summary>Viewer's side while the resin gels.</summary>
    public string Face { get; init; } = "up";

    public string Text =>
        Invariant(
            $"""
            format: 1
            resin: {Resin}
            led:
              material: {Led}
            {(HasSize ? "  count: 100\n" : "")}board:
              material: {Board}
            {(
                HasSize
                    ? Invariant(
                        $"pour:\n  length_mm: 100\n  width_mm: {WindowMm2 / WindowShare:0.######}\n  face: {Face}\n"
                    )
                    : ""
            )}layers:
            {Layers}{(Steps.Length == 0 ? "" : $"charge:\n  start: {Start}\n  steps:\n{Steps}")}darkness:
              temperature_c: {DarknessC}
              limit_mcd_m2: {LimitMcdM2}

            """
        );

    public RecipeDocument Document => RecipeDocument.Read(Text, "a.yaml");

    public FigureValues Figures => Predicted.Figures;

    public Prediction Predicted =>
        Known.GetOrAdd((Text, IsSettled), _ => new(() => PredictedBy(Predictor))).Value;

    /// <summary>Luminance, mcd/m².</summary>
    public double At(double minutes) => Figures["afterglow.luminance_mcd_m2", minutes]!.Value;

    public Prediction PredictedBy(Predictor predictor)
    {
        var outcome = predictor.Predict(Document, IsSettled);
        Assert.DoesNotContain(outcome.Problems, p => p.Severity == Severity.Error);
        return outcome.Prediction!;
    }

    public static Predictor Fresh() => new(new Shelf(Own), Own);

    /// <summary>Name of a slow epoxy 1, 3, 10, 30 or 300 times as thick as the shipped one.</summary>
    public static string ThickerEpoxy(double times) => Invariant($"epoxy-{times}-times");

    public static string Glow(double depthMm, double loadingPercent, string pigment = "green-aluminate") =>
        Invariant(
            $"  - depth_mm: {depthMm}\n    pigment: {pigment}\n    loading_percent: {loadingPercent}\n"
        );

    public static string Clear(double depthMm) => Invariant($"  - depth_mm: {depthMm}\n");

    public static string Lamp(string name, double lx, double minutes, double temperatureC = 20) =>
        Invariant(
            $"    - light: {name}\n      illuminance_lx: {lx}\n      minutes: {minutes}\n      temperature_c: {temperatureC}\n"
        );

    public static string OwnLeds(double minutes, string with = "") =>
        Invariant($"    - light: own-leds\n{with}      minutes: {minutes}\n      temperature_c: 20\n");

    public static string Dark(double minutes, double temperatureC = 20) =>
        Invariant($"    - light: dark\n      minutes: {minutes}\n      temperature_c: {temperatureC}\n");

    private static (string, string) Flat(string name) =>
        (
            $"materials/leds/flat-{name}.yaml",
            Shipped($"leds/{name}")
                .Replace(
                    "package_height_mm:\n  value: 0.7",
                    "package_height_mm:\n  value: 0",
                    StringComparison.Ordinal
                )
        );

    private static (string, string) Thicker(double times) =>
        (
            $"materials/resins/{ThickerEpoxy(times)}.yaml",
            Shipped("resins/epoxy-clear-slow")
                .Replace("mpa_s: 600", Invariant($"mpa_s: {600 * times}"), StringComparison.Ordinal)
        );

    private static string Shipped(string name) => InMemoryMaterials.Shipped($"data/{name}.yaml");
}
