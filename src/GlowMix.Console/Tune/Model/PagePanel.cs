using GlowMix.Casting;
using GlowMix.Console.Texts;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>The panels that are pages of text: marking guidance, batch, origins.</summary>
internal sealed class PagePanel(TuneModel model, IPages pages)
{
    private const string Patience = "Working it out …";

    private IReadOnlyList<PageBlock> markings = [];
    private string askedFor = "";
    private string markedFor = "";

    /// <summary>Pieces from one mix.</summary>
    public int PieceCount { get; private set; } = 1;

    /// <summary>One piece more or fewer.</summary>
    public void ChangeCount(int by) => PieceCount = Math.Clamp(PieceCount + by, 1, BatchSheet.MostPieces);

    /// <summary>The open panel's page; what takes long is asked for.</summary>
    public IReadOnlyList<PageBlock> Page =>
        model.Bench.Piece is not { } piece
            ? [new PageBlock.Paragraph("This recipe has errors.")]
            : model.Panel switch
            {
                Panel.Batch => BatchPage.Of(BatchSheet.Of(piece, PieceCount)),
                Panel.Sources => SourcesPage.Of(piece, model.Shown),
                Panel.Markings => Markings(model.Bench.Document),
                _ => [],
            };

    private IReadOnlyList<PageBlock> Markings(RecipeDocument document)
    {
        if (askedFor != document.Text)
        {
            askedFor = document.Text;
            pages.AskMarkings(document, page => (markings, markedFor) = (page, document.Text));
        }
        // The caution stands there from the first moment on.
        return markedFor == document.Text
            ? markings
            : [new PageBlock.Paragraph(MarkingWords.Notice), new PageBlock.Paragraph(Patience)];
    }
}
