using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The piece lit, or dark: its headline, the cut through the pour, its curve, its figures.</summary>
internal static class SidePicture
{
    private const int LeastCutRows = 4;
    private const int LeastCurveRows = 7;
    private const int LitLabelColumns = 16;
    private const int DarkLabelColumns = 11;

    /// <summary>Paints it.</summary>
    public static void Paint(Leaf leaf, TuneModel model, Palette palette, bool dark)
    {
        var text = dark ? palette.Dark : palette.Lit;
        leaf.Fill(leaf.Whole, text);
        var area = leaf.Whole.Narrower(1);
        string side = dark ? "DARK" : "LIT";
        if (model.Shown is not { } now)
        {
            leaf.Put(area.X, 0, model.Bench.Piece is null ? side : $"{side}  …", text.Bold);
            return;
        }
        bool hasBands = model.Now is { HasBands: true };
        string headline = dark
            ? DarkAnswers.Headline(now, model.Now is { Completeness: 2 })
            : LitAnswers.Headline(now);
        leaf.Put(area.X, 0, model.IsFresh ? $"{side}  {headline}" : $"{side}  …", text.Bold, area.Columns);

        double? minutes = model.Bench.Document.Recipe?.Balance.GlowAtMinutes;
        Answer[] answers =
        [
            .. dark
                ? DarkAnswers.Of(now, model.Start, hasBands, minutes, model.Now is { IsRough: true })
                : LitAnswers.Of(now, model.Start),
        ];
        int left = area.Rows - 1 - answers.Length - 1;
        int cutRows = Math.Max(LeastCutRows, Math.Min(left - LeastCurveRows, left * 4 / 10));
        if (now.Cut is { } cut)
        {
            new CutPicture(cut, palette, dark, leaf.Ascii).Paint(leaf, area.From(2, cutRows));
        }
        var curve = area.From(2 + cutRows, left - cutRows);
        if (dark)
        {
            DarkCurves.Paint(leaf, curve, now, model.Start, hasBands, palette);
        }
        else
        {
            LitCurves.Paint(leaf, curve, now, model.Start, palette);
        }
        for (int i = 0; i < answers.Length; i++)
        {
            Line(leaf, area, area.Rows - answers.Length + i, answers[i], dark, palette, model.IsFresh);
        }
    }

    private static void Line(
        Leaf leaf,
        Area area,
        int row,
        Answer answer,
        bool dark,
        Palette palette,
        bool isFresh
    )
    {
        int labelColumns = dark ? DarkLabelColumns : LitLabelColumns;
        var faint = dark ? palette.DarkFaint : palette.LitFaint;
        var text =
            !isFresh ? faint
            : dark ? palette.Dark
            : palette.Lit;
        int y = area.Y + row;
        int x = leaf.Put(area.X, y, answer.Label, faint);
        x = Math.Max(x + 1, area.X + labelColumns);
        x = leaf.Put(x, y, answer.Text, text.Bold);
        if (
            isFresh
            && answer.Change.Length > 0
            && x + 1 + Leaf.WidthOf(answer.Change) <= area.X + area.Columns
        )
        {
            leaf.PutRight(area.X + area.Columns, y, answer.Change, faint);
        }
    }
}
