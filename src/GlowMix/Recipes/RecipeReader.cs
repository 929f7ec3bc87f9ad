using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads a whole recipe; what it returns is good only if the list of problems has no error.</summary>
internal static class RecipeReader
{
    private static readonly string[] otherKinds =
    [
        "figures_format",
        "calibration_format",
        "readings_format",
        "material_format",
    ];

    public static Recipe? Read(Document document, ProblemList problems)
    {
        var root = document.Root!;
        if (otherKinds.FirstOrDefault(k => root.Find(k) is not null) is { } kind)
        {
            problems.Error(root.Find(kind)!.Key.Place, RecipeTexts.OtherKindOfFile(kind));
            return null;
        }
        var reader = new MappingReader(root, problems);
        var top = new RecipeSection(reader, "");
        reader.WholeNumber("format", 1, 1);
        var recipe = new Recipe(document)
        {
            Title = top.Text("title"),
            ResinName = top.NeededMaterial("resin"),
            CalibrationPath = Calibration(top),
            Led = LedReader.Read(reader),
            BoardName = Board(reader),
            Pour = Pour(reader),
            Layers = LayersReader.Read(reader),
            Mixing = Mixing(reader),
            Charge = ChargeReader.Read(reader),
            Darkness = Darkness(reader),
            Targets = TargetsReader.Read(reader),
            Balance = BalanceReader.Read(reader),
            CriteriaNames = Criteria(reader),
            Prices = Prices(reader),
        };
        RunsOut(recipe, reader);
        reader.Finish();
        return recipe;
    }

    private static string? Calibration(RecipeSection top)
    {
        string? path = top.Text("calibration");
        if (path is not null && !RecipeSection.IsYamlPath(path))
        {
            top.Reader.Error("calibration", RecipeTexts.NotAYamlPath("calibration", path));
        }
        return path;
    }

    private static string? Board(MappingReader reader)
    {
        var section = RecipeSection.Optional(reader, "board");
        string? name = section.Material("material");
        section.Finish();
        return name;
    }

    private static RecipePour Pour(MappingReader reader)
    {
        var section = RecipeSection.Optional(reader, "pour");
        var pour = new RecipePour
        {
            LengthMm = section.Number("length_mm"),
            LengthToleranceMm = section.Number("length_tolerance_mm"),
            WidthMm = section.Number("width_mm"),
            WidthToleranceMm = section.Number("width_tolerance_mm"),
            RunsOutMm = section.Number("runs_out_mm"),
            Face = section.Word("face") switch
            {
                "up" => Face.Up,
                "down" => Face.Down,
                _ => null,
            },
        };
        section.Needs("length_tolerance_mm", "length_mm");
        section.Needs("width_tolerance_mm", "width_mm");
        section.Finish();
        return pour;
    }

    // Only the top layer runs out: at its shallow end something must be left of it.
    private static void RunsOut(Recipe recipe, MappingReader reader)
    {
        if (recipe.Pour.RunsOutMm is { } runsOutMm && recipe.Layers is [.., { DepthMm: > 0 and var depthMm }])
        {
            if (runsOutMm >= 2 * depthMm)
            {
                var place = (reader.Node["pour"] as MappingNode)?["runs_out_mm"]?.Place;
                reader.Problems.Error(place, RecipeTexts.RunsOutOfTheLayer(runsOutMm, depthMm));
            }
        }
    }

    private static RecipeMixing Mixing(MappingReader reader)
    {
        var section = RecipeSection.Optional(reader, "mixing");
        var mixing = new RecipeMixing
        {
            TemperatureC = section.Number("temperature_c"),
            TemperatureToleranceC = section.Number("temperature_tolerance_c"),
            WastePercent = section.Number("waste_percent"),
            VacuumMin = section.Number("vacuum_min"),
            ScaleStepG = section.Number("scale_step_g"),
        };
        section.Finish();
        return mixing;
    }

    private static RecipeDarkness Darkness(MappingReader reader)
    {
        var section = RecipeSection.Optional(reader, "darkness");
        var darkness = new RecipeDarkness
        {
            TemperatureC = section.Number("temperature_c"),
            LimitMcdPerM2 = section.Number("limit_mcd_m2"),
        };
        section.Finish();
        return darkness;
    }

    private static ImmutableArray<string> Criteria(MappingReader reader)
    {
        if (reader.OptionalList("criteria", 0, 50) is not { } list)
        {
            return [];
        }
        var names = ImmutableArray.CreateBuilder<string>(list.Count);
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Text(i) is not { } name)
            {
                continue;
            }
            if (!RecipeSection.IsMaterial(name))
            {
                list.Problems.Error(list.Node.Items[i].Place, RecipeTexts.NotAMaterial("criteria", name));
            }
            else if (names.Contains(name))
            {
                list.Problems.Error(list.Node.Items[i].Place, RecipeTexts.ListedTwice("criteria", name));
            }
            names.Add(name);
        }
        return names.ToImmutable();
    }

    private static RecipePrices Prices(MappingReader reader)
    {
        var section = RecipeSection.Optional(reader, "prices");
        var prices = new RecipePrices
        {
            ResinPerKg = section.Number("resin_per_kg"),
            PigmentPerKg = section.Number("pigment_per_kg"),
        };
        section.Finish();
        return prices;
    }
}
