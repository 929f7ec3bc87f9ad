using System.CommandLine;
using GlowMix.Choosing;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix markings FILE`: the predicted glow beside published criteria, and local codes first.</summary>
internal sealed class MarkingsCommand : FileCommand
{
    private const string PathEnding = ".yaml";

    private readonly Option<string[]> criterion = new("--criterion")
    {
        HelpName = "NAME…",
        Description =
            "criteria of the shelf, of materials/criteria beside the recipe, or paths of files; else those that the recipe names",
        AllowMultipleArgumentsPerToken = true,
    };
    private readonly Option<bool> all = new("--all")
    {
        Description = "every criterion of the shelf and of materials/criteria, as a table",
    };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the comparison for programs, nothing else",
    };
    private readonly Option<bool> quick = QuickSwitch.Create();
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };

    public MarkingsCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "markings",
            "The predicted glow beside published criteria for markings, each under its own charge. An estimate is no test.",
            "a recipe file (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add([criterion, all, json, quick, ascii]);
        Command.Validators.Add(result =>
        {
            if (result.GetValue(all) && result.GetValue(criterion) is { Length: > 0 })
            {
                result.AddError("--all shows every criterion; leave out --criterion");
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        if (RecipeOf(parsed, out int code) is not { } text)
        {
            return code;
        }
        var predictor = Runner.PredictorFor(FolderMaterials.BesideFile(text.Name, Surroundings));
        var reading = predictor.Check(RecipeDocument.Read(text));
        code = Problems.Tell(reading.Problems, Surroundings);
        if (reading.Piece is not { } piece)
        {
            return code;
        }
        var shelf = predictor.Shelf;
        bool isTable = parsed.GetValue(all);
        var names = parsed.GetValue(criterion) ?? [];
        var criteria =
            isTable ? Taken(shelf.Names(MaterialKind.Criterion).Select(shelf.Criterion), ref code)
            : names.Length > 0 ? Taken(names.Distinct().Select(name => Find(name, shelf)), ref code)
            : Taken(piece.Recipe.CriteriaNames.Select(shelf.Criterion), ref code);
        if (names.Length > 0 && criteria.Count == 0)
        {
            return code;
        }
        var guidance = MarkingGuide.Of(
            piece,
            predictor,
            criteria,
            parsed.GetValue(quick) ? 0 : Forecaster.UsualDraws,
            Surroundings.Stop
        );
        code = Math.Max(code, Problems.Tell(guidance.Problems, Surroundings));
        Print(guidance, parsed, isTable, shelf);
        return code;
    }

    private void Print(MarkingGuidance guidance, ParseResult parsed, bool isTable, Shelf shelf)
    {
        if (parsed.GetValue(json))
        {
            Surroundings.Out.Write(MarkingJson.Of(guidance));
            return;
        }
        new PageText(Surroundings.Sheet(parsed.GetValue(ascii))).Print(
            isTable
                ? MarkingPage.AsTable(guidance)
                : MarkingPage.InFull(guidance, shelf.Names(MaterialKind.Criterion))
        );
    }

    // Paths on the command line start from the current folder, as all of them do; names from beside the recipe.
    private Loaded<Criterion> Find(string name, Shelf shelf) =>
        name.EndsWith(PathEnding, StringComparison.Ordinal)
            ? new Shelf(new FolderMaterials("", Surroundings)).Criterion(name)
            : shelf.Criterion(name);

    private List<Criterion> Taken(IEnumerable<Loaded<Criterion>> loaded, ref int code)
    {
        var taken = new List<Criterion>();
        foreach (var each in loaded)
        {
            if (each.NotFound is { } reason)
            {
                Surroundings.Complain($"{criterion.Name}: {reason}");
                code = Math.Max(code, ExitCode.Content);
            }
            code = Math.Max(code, Problems.Tell(each.Problems, Surroundings));
            if (each.Material is { } material)
            {
                taken.Add(material);
            }
        }
        return taken;
    }
}
