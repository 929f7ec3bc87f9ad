using System.CommandLine;
using GlowMix.Choosing;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix markings FILE`: the predicted glow beside published criteria, and local codes first.</summary>
internal sealed class MarkingsCommand
{
    private const string Name = "markings";
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
    private readonly Option<bool> quick = new("--quick")
    {
        Description = "bands from a few bounding runs instead of 512 draws: at once, and cruder",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };
    private readonly Argument<string[]> files;
    private readonly Surroundings surroundings;
    private readonly IRecipeRunner runner;

    private MarkingsCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        (this.surroundings, this.runner) = (surroundings, runner);
        Command = new(
            Name,
            "The predicted glow beside published criteria for markings, each under its own charge. An estimate is no test."
        );
        files = FileArguments.Create(Command, args, "a recipe file (YAML)");
        Command.Add(files);
        foreach (Option option in (ReadOnlySpan<Option>)[criterion, all, json, quick, ascii])
        {
            Command.Add(option);
        }
        Command.Validators.Add(result =>
        {
            if (result.GetValue(all) && result.GetValue(criterion) is { Length: > 0 })
            {
                result.AddError("--all shows every criterion; leave out --criterion");
            }
        });
        Command.SetAction(Run);
    }

    private Command Command { get; }

    /// <summary>The command with its options.</summary>
    public static Command Create(
        IReadOnlyList<string> args,
        Surroundings surroundings,
        IRecipeRunner runner
    ) => new MarkingsCommand(args, surroundings, runner).Command;

    private int Run(ParseResult parsed)
    {
        if (OneRecipe.Read(parsed.GetValue(files) ?? [], Name, surroundings, out int code) is not { } text)
        {
            return code;
        }
        var predictor = runner.PredictorFor(FolderMaterials.BesideFile(text.Name, surroundings));
        var reading = predictor.Check(RecipeDocument.Read(text));
        code = Problems.Tell(reading.Problems, surroundings);
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
            surroundings.Stop
        );
        code = Math.Max(code, Problems.Tell(guidance.Problems, surroundings));
        Print(guidance, parsed, isTable, shelf);
        return code;
    }

    private void Print(MarkingGuidance guidance, ParseResult parsed, bool isTable, Shelf shelf)
    {
        if (parsed.GetValue(json))
        {
            surroundings.Out.Write(MarkingJson.Of(guidance));
            return;
        }
        new PageText(surroundings.Sheet(parsed.GetValue(ascii))).Print(
            isTable
                ? MarkingPage.AsTable(guidance)
                : MarkingPage.InFull(guidance, shelf.Names(MaterialKind.Criterion))
        );
    }

    // Paths on the command line start from the current folder, as all of them do; names from beside the recipe.
    private Loaded<Criterion> Find(string name, Shelf shelf) =>
        name.EndsWith(PathEnding, StringComparison.Ordinal)
            ? new Shelf(new FolderMaterials("", surroundings)).Criterion(name)
            : shelf.Criterion(name);

    private List<Criterion> Taken(IEnumerable<Loaded<Criterion>> loaded, ref int code)
    {
        var taken = new List<Criterion>();
        foreach (var each in loaded)
        {
            if (each.NotFound is { } reason)
            {
                surroundings.Complain($"{criterion.Name}: {reason}");
                code = Math.Max(code, ExitCode.Content);
            }
            code = Math.Max(code, Problems.Tell(each.Problems, surroundings));
            if (each.Material is { } material)
            {
                taken.Add(material);
            }
        }
        return taken;
    }
}
