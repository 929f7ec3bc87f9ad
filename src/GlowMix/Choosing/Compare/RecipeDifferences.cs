using System.Collections.Immutable;
using System.Globalization;
using GlowMix.Casting;
using GlowMix.Documents;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Compare;

/// <summary>What two recipes say differently, in the order of a tidy recipe; how it is written (order, comments, quotes) is no difference.</summary>
internal static class RecipeDifferences
{
    private const string GramsKey = "loading_g_per_100g_resin";
    private const string PercentKey = "loading_percent";

    private static readonly string[] yardsticks = ["targets.", "charge.", "darkness."];

    /// <summary>The differences.</summary>
    /// <param name="before">A recipe without errors.</param>
    /// <param name="after">Another.</param>
    public static ImmutableArray<RecipeDifference> Of(RecipeDocument before, RecipeDocument after)
    {
        var (first, second) = (ValuesOf(before), ValuesOf(after));
        var differences = ImmutableArray.CreateBuilder<RecipeDifference>();
        differences.AddRange(Whole(before, after));
        // In canonical order; what stands in both keeps the first's.
        foreach (string path in first.Keys.Concat(second.Keys.Where(p => !first.ContainsKey(p))))
        {
            string? a = first.GetValueOrDefault(path);
            string? b = second.GetValueOrDefault(path);
            if (
                !IsSame(a, b)
                && !differences.Any(d => path.StartsWith(d.KeyPath + ".", StringComparison.Ordinal))
            )
            {
                differences.Add(new(path, a, b, IsYardstick(path)));
            }
        }
        differences.AddRange(Targets(before.Recipe!, after.Recipe!));
        return Ascending.By(differences.ToImmutable(), d => PlaceOf(d.KeyPath));
    }

    /// <summary>A loading in one form, whichever the recipe chose.</summary>
    private static Dictionary<string, string> ValuesOf(RecipeDocument recipe)
    {
        var values = new Dictionary<string, string>();
        foreach (var written in recipe.Written())
        {
            if (
                written.Path.StartsWith("targets.", StringComparison.Ordinal)
                || written.Key.Name is "name" or "format"
            )
            {
                continue;
            }
            bool isGrams = written.Key.Name == GramsKey && NumberText.TryRead(written.Value, out double _);
            values[
                isGrams ? written.Path.Replace(GramsKey, PercentKey, StringComparison.Ordinal) : written.Path
            ] = isGrams ? PercentOfGrams(written.Value) : written.Value;
        }
        return values;
    }

    private static string PercentOfGrams(string grams)
    {
        NumberText.TryRead(grams, out double g);
        return NumberText.Write(Math.Round(PigmentLoading.FromGPer100GResin(g).PercentByMass, 6));
    }

    // Layers and charge steps that only one of them has are told as a whole.
    private static IEnumerable<RecipeDifference> Whole(RecipeDocument before, RecipeDocument after)
    {
        var (a, b) = (before.Recipe!, after.Recipe!);
        foreach (var gone in a.Layers.Where(l => b.Layers.All(o => o.Name != l.Name)))
        {
            yield return new($"layers.{gone.Name}", InWords(gone), null, false);
        }
        foreach (var added in b.Layers.Where(l => a.Layers.All(o => o.Name != l.Name)))
        {
            yield return new($"layers.{added.Name}", null, InWords(added), false);
        }
        if (OrderOf(a, b) != OrderOf(b, a))
        {
            yield return new("layers", OrderOf(a, b), OrderOf(b, a), false);
        }
        for (int i = b.Charge.Steps.Length; i < a.Charge.Steps.Length; i++)
        {
            yield return new(StepPath(i), InWords(a.Charge.Steps[i]), null, true);
        }
        for (int i = a.Charge.Steps.Length; i < b.Charge.Steps.Length; i++)
        {
            yield return new(StepPath(i), null, InWords(b.Charge.Steps[i]), true);
        }
    }

    private static string StepPath(int index) =>
        string.Create(CultureInfo.InvariantCulture, $"charge.steps.{index + 1}");

    // The layers that both have, from the board up.
    private static string OrderOf(Recipe recipe, Recipe other) =>
        string.Join(
            ", ",
            recipe.Layers.Select(l => l.Name).Where(name => other.Layers.Any(o => o.Name == name))
        );

    private static string InWords(RecipeLayer layer) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{layer.DepthMm} mm {(layer.PigmentName is { } pigment ? $"with {layer.LoadingPercent:0.##} % {pigment}" : "clear")}"
        );

    private static string InWords(RecipeChargeStep step)
    {
        string light =
            step.IsDark ? "dark"
            : step is { OwnLeds: true, LampName: { } with } ? $"own LEDs with {with}"
            : step.OwnLeds ? "own LEDs"
            : step.LampName!;
        string strength =
            step.IlluminanceLx is { } lx ? string.Create(CultureInfo.InvariantCulture, $" at {lx} lx")
            : step.IrradianceWPerM2 is { } w ? string.Create(CultureInfo.InvariantCulture, $" at {w} W/m²")
            : "";
        return string.Create(CultureInfo.InvariantCulture, $"{light}{strength}, {step.Minutes} min");
    }

    // Targets are known by what they are about, not by their place.
    private static IEnumerable<RecipeDifference> Targets(Recipe before, Recipe after)
    {
        string NameOf(RecipeTarget target) =>
            target.AtMinutes is { } minutes
                ? string.Create(CultureInfo.InvariantCulture, $"targets.{target.Figure}[{minutes}]")
                : $"targets.{target.Figure}";

        foreach (
            string name in before
                .Targets.Concat(after.Targets)
                .Select(NameOf)
                .Distinct(StringComparer.Ordinal)
        )
        {
            string? a = BoundsOf(before.Targets.Where(t => NameOf(t) == name));
            string? b = BoundsOf(after.Targets.Where(t => NameOf(t) == name));
            if (a != b)
            {
                yield return new(name, a, b, true);
            }
        }
    }

    private static string? BoundsOf(IEnumerable<RecipeTarget> targets)
    {
        string[] bounds =
        [
            .. targets.Select(t =>
                (t.AtLeast, t.AtMost) switch
                {
                    (double least, double most) => string.Create(
                        CultureInfo.InvariantCulture,
                        $"{least} to {most}"
                    ),
                    (double least, null) => string.Create(CultureInfo.InvariantCulture, $"at least {least}"),
                    (_, double most) => string.Create(CultureInfo.InvariantCulture, $"at most {most}"),
                    _ => "",
                }
            ),
        ];
        return bounds.Length == 0 ? null : string.Join("; ", bounds);
    }

    private static bool IsSame(string? a, string? b) =>
        a == b
        || (
            a is not null
            && b is not null
            && NumberText.TryRead(a, out double x)
            && NumberText.TryRead(b, out double y)
            && x == y
        );

    private static bool IsYardstick(string path) =>
        Array.Exists(yardsticks, y => path.StartsWith(y, StringComparison.Ordinal))
        || path.Contains("_tolerance_", StringComparison.Ordinal);

    private static int PlaceOf(string path)
    {
        var section = SectionOf(path);
        for (int i = 0; i < RecipeKeys.All.Length; i++)
        {
            if (SectionOf(RecipeKeys.All[i].Path).SequenceEqual(section))
            {
                return i;
            }
        }
        return RecipeKeys.All.Length;
    }

    private static ReadOnlySpan<char> SectionOf(string path)
    {
        int end = path.IndexOf('.', StringComparison.Ordinal);
        return end < 0 ? path : path.AsSpan(0, end);
    }
}
