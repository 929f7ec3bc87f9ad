using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>The sheet_… entries of a new pigment: its decay, the sample and the charge it was measured with.</summary>
internal sealed class SheetEntries(
    StartAnswers answers,
    Pigment nearest,
    (double LoadingPercent, double DepthMm) sample
)
{
    private const string Fuller =
        "assumed; enough for the traps of such grains to hold what the sheet promises";

    private readonly IReadOnlyList<(double At, double Value)> told = PigmentStart.PointsOf(answers);

    /// <summary>Writes the entry of a key if anything was told for it.</summary>
    public bool WriteTold(StartText text, string key)
    {
        switch (key)
        {
            case "sheet_loading_percent" when answers.Number("sheet-loading-percent") is { } percent:
                text.Entry(key, percent, LabelFields.Label);
                return true;
            case "sheet_loading_percent" when sample.LoadingPercent != nearest.Sheet.LoadingPercent.Value:
                text.Entry(key, sample.LoadingPercent, Fuller);
                return true;
            case "sheet_depth_mm" when answers.Has("sheet-depth-mm"):
                text.Entry(key, sample.DepthMm, LabelFields.Label);
                return true;
            case "sheet_depth_mm" when sample.DepthMm != nearest.Sheet.DepthMm.Value:
                text.Entry(key, sample.DepthMm, Fuller);
                return true;
            case "sheet_lamp" when answers.Text("charge-lamp") is { } lamp:
                text.Entry(key, lamp, LabelFields.Label);
                return true;
            case "sheet_illuminance_lx" when answers.Number("charge-lx") is { } lux:
                text.Entry(key, lux, LabelFields.Label);
                return true;
            case "sheet_minutes" when answers.Number("charge-minutes") is { } minutes:
                text.Entry(key, minutes, LabelFields.Label);
                return true;
            case "sheet_points" when told.Count > 0:
                WritePoints(text, key);
                return true;
            default:
                return false;
        }
    }

    private void WritePoints(StartText text, string key)
    {
        // Luminance without its charge says little; usual charges differ by a factor of two and more.
        bool hasCharge = answers.Has("charge-lx") && answers.Has("charge-minutes");
        string charge = hasCharge
            ? ""
            : $"; the charge is not told in full and is taken as that of {nearest.Name}, which is assumed";
        if (told.Count > 1)
        {
            text.Table(
                key,
                "mcd_m2_at_minutes",
                told,
                LabelFields.Label + charge,
                hasCharge ? null : "factor: 2"
            );
            return;
        }
        var (at, value) = told[0];
        double ratio = value / SheetAt(at);
        var points = nearest
            .Sheet.Points.Value.Where(p => p.Minutes != at)
            .Select(p => (p.Minutes, Rounded(p.LuminanceMcdM2 * ratio)))
            .Append((at, value))
            .OrderBy(p => p.Item1);
        text.Table(
            key,
            "mcd_m2_at_minutes",
            points,
            $"assumed; {NumberText.Write(value)} at {NumberText.Write(at)} min is the label's, the others stand to it as in {nearest.Name}{charge}",
            hasCharge ? "factor: 1.5" : "factor: 2"
        );
    }

    // A decay is nearly straight where both axes are logarithmic, also a little beyond its ends.
    private double SheetAt(double minutes)
    {
        var points = nearest.Sheet.Points.Value;
        int upper = 1;
        while (upper < points.Length - 1 && points[upper].Minutes < minutes)
        {
            upper++;
        }
        var (a, b) = (points[upper - 1], points[upper]);
        double slope = Math.Log(b.LuminanceMcdM2 / a.LuminanceMcdM2) / Math.Log(b.Minutes / a.Minutes);
        return a.LuminanceMcdM2 * Math.Pow(minutes / a.Minutes, slope);
    }

    private static double Rounded(double value) =>
        Math.Round(value, Math.Max(0, 2 - (int)Math.Floor(Math.Log10(value))));
}
