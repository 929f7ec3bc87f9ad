using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>What to know before trusting the figures: a line each, in full where asked for.</summary>
internal sealed class DoubtRows(Prediction prediction, Sheet sheet)
{
    private const int MostWarnings = 5;
    private const int MostAssumptions = 3;

    // Their reminder stands in the rows above already: beside Ra, and behind the depth.
    private static readonly string[] toldAbove = ["ra-beyond-method", "packages-in-air"];

    /// <summary>Prints them.</summary>
    /// <param name="full">All of them, in whole sentences.</param>
    public void Print(bool full)
    {
        if (full)
        {
            InFull();
            return;
        }
        Warnings();
        Assumptions();
    }

    private void Warnings()
    {
        var warnings = new List<Warning>();
        foreach (var warning in prediction.Warnings)
        {
            if (!toldAbove.Contains(warning.Code))
            {
                warnings.Add(warning);
            }
        }
        int shown = warnings.Count > MostWarnings ? MostWarnings - 1 : warnings.Count;
        for (int i = 0; i < shown; i++)
        {
            sheet.Row(i == 0 ? "Warnings" : "", warnings[i].Brief);
        }
        if (warnings.Count > shown)
        {
            sheet.Row("", $"and {warnings.Count - shown} more with --full");
        }
    }

    private void Assumptions()
    {
        int shown = Math.Min(prediction.Assumptions.Count, MostAssumptions);
        string names = "";
        for (int i = 0; i < shown; i++)
        {
            var (what, owner) = Parts(prediction.Assumptions[i].What);
            // 'grain index, trap capacity of green-aluminate': what neighbours share is said once.
            bool ownerFollows = i + 1 < shown && Parts(prediction.Assumptions[i + 1].What).Owner == owner;
            names += $"{(i > 0 ? ", " : "")}{what}{(ownerFollows ? "" : owner)}";
        }
        int more = prediction.Assumptions.Count - shown;
        if (shown > 0)
        {
            sheet.Row("Calibrate", $"first {names}{(more > 0 ? $"; {more} more with --full" : "")}");
        }
    }

    private static (string What, string Owner) Parts(string assumption)
    {
        int of = assumption.LastIndexOf(" of ", StringComparison.Ordinal);
        return of < 0 ? (assumption, "") : (assumption[..of], assumption[of..]);
    }

    private void InFull()
    {
        for (int i = 0; i < prediction.Warnings.Count; i++)
        {
            sheet.Row(i == 0 ? "Warnings" : "", $"- {prediction.Warnings[i].Text}");
        }
        for (int i = 0; i < prediction.Assumptions.Count; i++)
        {
            var assumption = prediction.Assumptions[i];
            sheet.Row(i == 0 ? "Calibrate" : "", $"{i + 1}. {assumption.What}: {assumption.Text}");
        }
    }
}
