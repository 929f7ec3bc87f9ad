namespace GlowMix.Console.Tests;

/// <summary>A short recipe that can be spoilt in one place.</summary>
internal static class BadRecipes
{
    public const string Good = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2
            pigment: green-aluminate
            loading_percent: 20

        """;

    public static string With(string written, string instead) =>
        Good.Contains(written, StringComparison.Ordinal)
            ? Good.Replace(written, instead, StringComparison.Ordinal)
            : throw new ArgumentException($"'{written}' does not stand in the recipe.", nameof(written));
}
