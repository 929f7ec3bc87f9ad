using System.CommandLine;
using GlowMix.Casting;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix batch FILE --pieces N`: what to weigh, mix and pour, on one page.</summary>
internal sealed class BatchCommand : FileCommand
{
    private readonly Option<string> pieces = new("--pieces")
    {
        HelpName = "N",
        Description = "how many pieces from one mix of each layer; 1 if not given",
    };
    private readonly Option<bool> tiles = new("--test-tiles")
    {
        Description =
            "instead of pieces three small tiles of half, planned and 1.5 × the loading, to read first",
    };
    private readonly Option<bool> markdown = new("--markdown") { Description = "the page as Markdown" };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the masses for programs, nothing else",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };

    public BatchCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "batch",
            "A page for the bench: what to weigh, mix and pour, with room for the real masses.",
            "a recipe file (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add([pieces, tiles, markdown, json, ascii]);
        Command.Validators.Add(result =>
        {
            if (result.GetValue(json) && result.GetValue(markdown))
            {
                result.AddError("--json and --markdown are two forms of the same sheet; leave one out");
            }
            if (result.GetValue(tiles) && result.GetValue(pieces) is not null)
            {
                result.AddError("--test-tiles are always three; leave out --pieces");
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        if (PieceCount(parsed, out int code) is not int count || RecipeOf(parsed, out code) is not { } text)
        {
            return code;
        }
        var reading = Runner
            .PredictorFor(FolderMaterials.BesideFile(text.Name, Surroundings))
            .Check(RecipeDocument.Read(text));
        code = Problems.Tell(reading.Problems, Surroundings);
        if (reading.Piece is not { } piece)
        {
            return code;
        }
        if (!parsed.GetValue(tiles))
        {
            var batch = BatchSheet.Of(piece, count);
            Print(parsed, BatchPage.Of(batch), () => BatchJson.Of(batch));
            return code;
        }
        if (!piece.HasPigment)
        {
            return Math.Max(code, Problems.Tell([NothingToVary(piece)], Surroundings));
        }
        var planned = TestTiles.Of(piece);
        Print(parsed, TilesPage.Of(planned), () => TilesJson.Of(planned));
        return code;
    }

    private void Print(ParseResult parsed, IReadOnlyList<PageBlock> page, Func<string> asJson)
    {
        bool plain = parsed.GetValue(ascii);
        if (parsed.GetValue(json))
        {
            Surroundings.Out.Write(asJson());
        }
        else if (parsed.GetValue(markdown))
        {
            Surroundings.Out.Write(PageMarkdown.Of(page, Surroundings.Style(plain).Ascii));
        }
        else
        {
            new PageText(Surroundings.Sheet(plain)).Print(page);
        }
    }

    private int? PieceCount(ParseResult parsed, out int code)
    {
        code = ExitCode.Done;
        if (parsed.GetValue(pieces) is not { } word)
        {
            return 1;
        }
        if (NumberWord.Read(pieces.Name, [word], out double[] numbers) is { } problem)
        {
            code = Misunderstood(problem);
            return null;
        }
        var allowed = NumberRange.Between(1, BatchSheet.MostPieces);
        if (!allowed.Contains(numbers[0]) || !double.IsInteger(numbers[0]))
        {
            Surroundings.Complain(
                $"{pieces.Name} is {Digits.Plain(numbers[0])}; allowed: a whole number, {allowed}"
            );
            code = ExitCode.Content;
            return null;
        }
        return (int)numbers[0];
    }

    private static Problem NothingToVary(Piece piece) =>
        piece.Recipe.ProblemAt(
            "layers",
            "test tiles differ by their loading; needed: a layer with a pigment and a loading above 0"
        );
}
