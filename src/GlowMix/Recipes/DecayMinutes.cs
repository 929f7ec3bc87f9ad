using System.Collections.Immutable;
using System.Globalization;

namespace GlowMix.Recipes;

/// <summary>The minutes after the last light at which the decay is told.</summary>
public static class DecayMinutes
{
    /// <summary>In rising order.</summary>
    public static ImmutableArray<double> All { get; } = [0.5, 1, 2, 5, 10, 20, 30, 60, 90, 120, 240, 480];

    /// <summary>All, for messages.</summary>
    public static string Listed { get; } =
        string.Join(", ", ImmutableArray.CreateRange(All, m => m.ToString(CultureInfo.InvariantCulture)));
}
