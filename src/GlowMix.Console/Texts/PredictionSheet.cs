using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Prints a prediction: three sentences, then the figures a maker decides by, on about a page.</summary>
internal sealed class PredictionSheet(Prediction prediction, Sheet sheet)
{
    /// <summary>Prints it.</summary>
    /// <param name="full">With the split by cause, warnings and assumptions in full sentences, and every figure.</param>
    public void Print(bool full)
    {
        sheet.Heading(
            prediction.Title.Length == 0 || prediction.Title == prediction.Recipe
                ? prediction.Recipe
                : $"{prediction.Title} ({prediction.Recipe})"
        );
        foreach (string sentence in PredictionSentences.Of(prediction))
        {
            sheet.Paragraph(sentence);
        }
        sheet.Blank();
        new LitRows(prediction, sheet).Print(full);
        if (prediction.Decay is not null)
        {
            new GlowRows(prediction, sheet).Print(full);
        }
        new PourRows(prediction, sheet).Print();
        // A step that can be seen is told in one line; one that cannot, and the places themselves, are for --full.
        Rows("Along", full ? AlongRows.Of(prediction) : AlongRows.SeenOf(prediction));
        if (full && prediction.Along.Count > 0)
        {
            sheet.Row("", AlongRows.Source);
        }
        Rows("Targets", TargetRows.Of(prediction));
        if (prediction.Bands.Count > 0)
        {
            sheet.Row("Bands", BandWords.Of(prediction.DrawCount));
        }
        new DoubtRows(prediction, sheet).Print(full);
        if (full)
        {
            sheet.Blank();
            new FigureTable(prediction, sheet).Print();
            sheet.Blank();
        }
        sheet.Row("Caution", full ? Cautions.InFull : Cautions.OneLine);
    }

    private void Rows(string label, IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            sheet.Row(label, text);
            label = "";
        }
    }
}
