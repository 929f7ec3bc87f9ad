using System.CommandLine;
using GlowMix.Console.Plots;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix materials [KIND] [NAME]`: what is on the shelf, and where its numbers come from.</summary>
internal sealed class MaterialsCommand
{
    private readonly Surroundings surroundings;
    private readonly Shelf shelf;

    private readonly IRecipeRunner runner;
    private readonly FolderMaterials files;

    private MaterialsCommand(Surroundings surroundings, IRecipeRunner runner)
    {
        (this.surroundings, this.runner) = (surroundings, runner);
        files = new("", surroundings);
        shelf = new(files);
    }

    /// <summary>The command.</summary>
    public static Command Create(Surroundings surroundings, IRecipeRunner runner)
    {
        var command = new Command(
            "materials",
            "What is on the shelf; of one material every number and its source."
        );
        var kind = new Argument<string?>("KIND")
        {
            Description = "led, resin, pigment, board, lamp or criterion",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var name = new Argument<string?>("NAME")
        {
            Description = "a material of this kind; KIND may then be left out",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var ascii = new Option<bool>("--ascii") { Description = "letters of ASCII only, plots too" };
        command.Add(kind);
        command.Add(name);
        command.Add(ascii);
        command.Validators.Add(result =>
        {
            foreach (string? word in (ReadOnlySpan<string?>)[result.GetValue(kind), result.GetValue(name)])
            {
                if (word?.StartsWith('-') == true)
                {
                    result.AddError(FileArguments.UnknownOption(word, command));
                }
            }
        });
        command.SetAction(parsed =>
            new MaterialsCommand(surroundings, runner).Run(
                parsed.GetValue(kind),
                parsed.GetValue(name),
                surroundings.Sheet(parsed.GetValue(ascii))
            )
        );
        return command;
    }

    private int Run(string? kindWord, string? name, Sheet sheet)
    {
        if (kindWord is null)
        {
            foreach (var each in KindWords.All)
            {
                List(each, sheet);
                sheet.Blank();
            }
            sheet.Paragraph(
                "Your own go beside the recipe: materials/KIND/NAME.yaml. One of them in full: glowmix materials NAME"
            );
            return ExitCode.Done;
        }
        var kind = KindWords.Find(kindWord);
        if (kind is null && name is null)
        {
            // A name alone.
            (kind, name) = (KindOf(kindWord), kindWord);
        }
        if (kind is not { } found)
        {
            return Unknown(kindWord, hasName: name is not null && name != kindWord);
        }
        if (name is null)
        {
            List(found, sheet);
            return ExitCode.Done;
        }
        return Show(found, name, sheet);
    }

    private void List(MaterialKind kind, Sheet sheet)
    {
        sheet.Heading(kind.Folder());
        var names = shelf.Names(kind);
        int columns = 0;
        foreach (string name in names)
        {
            columns = Math.Max(columns, name.Length);
        }
        foreach (string name in names)
        {
            var material = shelf.Any(kind, name).Material;
            string title = material?.Title ?? "cannot be used; see 'glowmix check'";
            string own = material?.Origin is { IsShipped: false } ? " (yours)" : "";
            sheet.Paragraph($"{name.PadRight(columns)}  {title}{own}", indent: 2, hanging: columns + 2);
        }
    }

    private int Show(MaterialKind kind, string name, Sheet sheet)
    {
        var loaded = shelf.Any(kind, name);
        if (loaded.NotFound is { } notFound)
        {
            surroundings.Complain(notFound);
            return ExitCode.Content;
        }
        int code = Problems.Tell(loaded.Problems, surroundings);
        if (loaded.Material is not { } material)
        {
            return code;
        }
        new MaterialSheet(material, sheet).Print(
            material is Pigment pigment ? runner.LadderOf(pigment, files) : null
        );
        if (MaterialPlots.Of(material) is { } plot)
        {
            sheet.Blank();
            foreach (string line in plot.Draw(surroundings.PlotColumns, sheet.Style.Ascii))
            {
                sheet.Line(line);
            }
        }
        return code;
    }

    private MaterialKind? KindOf(string name)
    {
        foreach (var kind in KindWords.All)
        {
            if (shelf.Names(kind).Contains(name))
            {
                return kind;
            }
        }
        return null;
    }

    private int Unknown(string word, bool hasName)
    {
        var known = new List<string>();
        string kinds = "";
        foreach (var kind in KindWords.All)
        {
            known.Add(kind.Word());
            kinds += (kinds.Length > 0 ? ", " : "") + kind.Word();
            if (!hasName)
            {
                known.AddRange(shelf.Names(kind));
            }
        }
        string what = hasName ? "no kind of material is called" : "no kind and no material is called";
        surroundings.Complain(
            $"{what} {ProblemTexts.Quote(word)}{ProblemTexts.DidYouMean(word, known)}; kinds: {kinds}"
        );
        return ExitCode.Content;
    }
}
