using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Words that every marking guidance is told in.</summary>
internal static class MarkingWords
{
    /// <summary>The first and the last lines.</summary>
    public const string Notice =
        "An estimate is no test, and a cast piece is no listed product: only a cured sample measured by an accredited "
        + "laboratory, and the authority having jurisdiction, decide. Local codes and licensed practice come first. "
        + "Never let this piece be the only marking of an escape route.";

    /// <summary>What the band holds and what it does not.</summary>
    public static string BandOf(MarkingGuidance guidance) =>
        guidance.DrawCount > 0
            ? $"low to high: {BandWords.Of(guidance.DrawCount)}. What the meter is off by is not in it"
            : "low to high: pigment half to twice as strong, and its traps fitted loosely or stiffly to its sheet. What the pour, "
                + "the lamp and the meter are off by is not in it";

    /// <summary>'too close'.</summary>
    public static string Of(MarkingState state) =>
        state switch
        {
            MarkingState.Above => "above",
            MarkingState.Below => "below",
            MarkingState.TooClose => "too close",
            _ => "not judged",
        };

    /// <summary>'class table'.</summary>
    public static string Clause(Criterion criterion) => criterion.Clause ?? "clause not known";

    /// <summary>'20 min by 200 lx of fl7'; what is not known is said so.</summary>
    public static string Charge(CriterionCharge charge)
    {
        if (charge.Lamp.Value is null && charge.IlluminanceLx.Value is null && charge.Minutes.Value is null)
        {
            return "charge not known";
        }
        string minutes = charge.Minutes.Value is double min ? $"{Digits.Plain(min)} min" : "a time not known";
        string lux = charge.IlluminanceLx.Value is double lx ? $"{Digits.Plain(lx)} lx" : "a light not known";
        return $"{minutes} by {lux} of {charge.Lamp.Value ?? "a lamp not known"}";
    }

    /// <summary>'plan on 16 h above 2 mcd/m²; likely 30 h; at best 71 h'.</summary>
    public static string MinutesAbove(Band minutes, double limitMcdPerM2)
    {
        string limit = $"above {Digits.Plain(limitMcdPerM2)} mcd/m²";
        return minutes.High is not > 0
            ? $"never {limit}"
            : $"plan on {Time(minutes.Low)} {limit}; likely {Time(minutes.Likely)}; at best {Time(minutes.High)}";

        static string Time(double? time) => time is > 0 ? Duration.Of(time) : "none";
    }

    /// <summary>Where document, charge and limits were told, each source once.</summary>
    public static IEnumerable<string> Sources(Criterion criterion)
    {
        var told = new (string What, string Text)[]
        {
            ("document", criterion.Document.Source),
            ("lamp", criterion.Charge.Lamp.Source),
            ("lux", criterion.Charge.IlluminanceLx.Source),
            ("time", criterion.Charge.Minutes.Source),
            ("limits", criterion.Limits.Source),
        };
        return told.GroupBy(t => t.Text).Select(g => $"{string.Join(", ", g.Select(t => t.What))}: {g.Key}");
    }

    /// <summary>What to do first where the numbers were not read in the document itself; null where they were.</summary>
    public static string? ReadFirst(CriterionComparison compared) =>
        compared.Criterion.Limits.Mark == SourceMark.FromMemory
            ? "limits from memory: read the code text first"
        : compared.IsFromMemory ? "partly from memory: read the code text first"
        : null;
}
