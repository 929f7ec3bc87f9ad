using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Texts;

/// <summary>Pages to read beside the options of the commands: what a recipe holds, what the shelf is, how it is computed, how to read back.</summary>
internal static class HelpTopics
{
    private const int KeyColumns = 36;

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["recipe", "materials", "physics", "readings"];

    /// <summary>Prints a page.</summary>
    /// <returns>False if there is none of this name.</returns>
    public static bool Print(string name, Sheet sheet)
    {
        switch (name)
        {
            case "recipe":
                Recipe(sheet);
                break;
            case "materials":
                Materials(sheet);
                break;
            case "physics":
                Physics(sheet);
                break;
            case "readings":
                Readings(sheet);
                break;
            default:
                return false;
        }
        return true;
    }

    private static void Recipe(Sheet sheet)
    {
        sheet.Heading("Recipe: one piece in a text file");
        sheet.Paragraph(
            "YAML, one 'key: value' a line, the unit in the key, '#' before a comment. Needed are format, resin, led and one "
                + "layer with its depth; a pigment needs a loading. All else is taken as usual, and 'predict' tells what it took."
        );
        sheet.Blank();
        foreach (
            string line in new[]
            {
                "format: 1",
                "resin: epoxy-clear-slow",
                "led:",
                "  material: warm-white-3000",
                "layers:                  # from the board upwards",
                "  - depth_mm: 2.5        # the first is measured from the board",
                "    pigment: green-aluminate",
                "    loading_percent: 20  # of the whole mix, by mass",
            }
        )
        {
            sheet.Line("  " + line);
        }
        sheet.Blank();
        sheet.Paragraph(
            "Layers count from the board up, each poured by itself. Tolerances are two standard deviations. The glow clock "
                + "starts when the last light of 'charge' goes off. A light is own-leds, a lamp of the shelf, or dark."
        );
        sheet.Paragraph(
            "On the command line a key is told by its path with dots, layers by their names (layers.glow.depth_mm), or by its "
                + "last word where that is the only one."
        );
        sheet.Blank();
        sheet.Paragraph("Every key, with what it may hold; '*' is a layer's name or an item's number:");
        foreach (var key in RecipeKeys.All)
        {
            sheet.Paragraph(
                $"{key.Path.PadRight(KeyColumns)}  {Allowed(key)}",
                indent: 2,
                hanging: KeyColumns + 2
            );
        }
        sheet.Blank();
        sheet.Row("See", "glowmix new recipe first.yaml; glowmix check first.yaml");
    }

    private static string Allowed(RecipeKey key) =>
        key.Kind switch
        {
            RecipeKeyKind.Word => string.Join(" or ", key.Words),
            RecipeKeyKind.Material => "a material's name, or the path of its file",
            RecipeKeyKind.Minutes => DecayMinutes.Listed,
            RecipeKeyKind.List => "a list",
            RecipeKeyKind.Text => "text",
            RecipeKeyKind.WholeNumber => $"whole, {key.Range}",
            _ => key.Range.ToString(),
        };

    private static void Materials(Sheet sheet)
    {
        sheet.Heading("Materials: the shelf");
        sheet.Paragraph(
            "LEDs, resins, pigments, boards, lamps and criteria travel with the program. 'glowmix materials' lists them, "
                + "'glowmix materials NAME' prints every number with its doubt and its source."
        );
        sheet.Blank();
        sheet.Paragraph(
            "Each number has a source: a publication; 'computed' with how; 'secondary source' with what was read; 'label'; "
                + "'own reading'; 'from memory'; 'common practice, no source'; or 'assumed'. Most makers publish no optical "
                + "data, so much is assumed, and the bands of a prediction are wide because of it. Doubts span two standard "
                + "deviations: a factor, two ends, or percent."
        );
        sheet.Blank();
        sheet.Paragraph(
            "Your own stand beside the recipe, in materials/KIND/NAME.yaml; a name is looked up there first. A file that says "
                + "'like: NAME' takes from that shipped material what it does not say itself. 'glowmix new pigment NAME' and its "
                + "sisters write one from a label or sheet and mark what the label does not tell."
        );
        sheet.Blank();
        foreach (var kind in KindWords.All)
        {
            sheet.Row(kind.Folder(), string.Join(", ", Shelf.ShippedNames(kind)));
        }
        sheet.Blank();
        sheet.Row("Caution", Cautions.InFull);
    }

    private static void Physics(Sheet sheet)
    {
        sheet.Heading("Physics: what is computed, and what is not");
        sheet.Row(
            "Grains",
            "Lorenz-Mie scattering of spheres in resin, averaged over a log-normal spread of sizes: how much light each gram of "
                + "pigment absorbs and scatters."
        );
        sheet.Row(
            "Light",
            "Discrete ordinates through the layers, 340 to 780 nm by 5 nm, with Fresnel reflection at the surface and a board "
                + "that sends light back. Energy closes to a billionth."
        );
        sheet.Row(
            "White",
            "Under resin a package gets back less of its own light, so less blue turns into yellow and red: the white turns "
                + "cooler. Pigment takes blue and gives green."
        );
        sheet.Row(
            "Glow",
            "A ladder of traps from a second to days, filled by absorbed light and emptied by warmth, fitted to the decay sheet. "
                + "Deep or heavy layers shade themselves."
        );
        sheet.Row(
            "Pour",
            "Viscosity over loading and time, grains settling until the gel, masses by part. Settled grains count where they lie."
        );
        sheet.Row(
            "Bands",
            "The middle 80 % of draws over all tolerances and doubts, or with --quick the least and greatest of a few runs. The "
                + "glow's low end leads: pigment strength is known to a factor of two."
        );
        sheet.Blank();
        sheet.Paragraph(
            "Not computed: side walls, single LEDs as dots, heat, yellowing, wear, walking safety, legibility. The output warns "
                + "where a recipe leaves what the model holds for. Formulas name author, year and equation in the code."
        );
        sheet.Blank();
        sheet.Row("Caution", Cautions.EscapeRoutes);
    }

    private static void Readings(Sheet sheet)
    {
        sheet.Heading("Readings: what to measure, and how");
        sheet.Paragraph(
            "One cured sample of known loading and depth settles more than any sheet: read its spectrum lit, bare and potted, "
                + "and its luminance at a few minutes in the dark after a known charge. 'glowmix batch FILE --test-tiles' says what "
                + "to weigh for three small ones."
        );
        sheet.Blank();
        sheet.Row(
            "Spectra",
            "same place, same angle, same current, LEDs warm; a dark reading first; the bare board before the pour. Raw counts "
                + "of an instrument without response correction give ratios, no colours."
        );
        sheet.Row(
            "Decay",
            "a black room and a charge that is told: lamp, lux, minutes. Begin the clock when the light goes off; 2, 10, 30 "
                + "and 60 minutes do. Hours on a bag tell neither limit nor charge and do not compare."
        );
        sheet.Row(
            "Files",
            "text with columns, or JSON of two lists; delimiter, decimal mark, units and order are found by themselves and told. A spectrum that stands in "
                + "for an LED has two columns, nm and value, and numbers with a point."
        );
        sheet.Row(
            "Fit",
            "'glowmix fit RECIPE' makes a calibration of them, each number with its error; what the readings cannot tell apart "
                + "is named and stays as its file has it. A set of readings (readings_format: 1) says for each file its state: bare, level "
                + "(clear resin to the top of the packages), potted, pigmented or decay, with depth_mm, loading_percent or tile "
                + "where it differs from the recipe, and for a lux meter its geometry. A decay without a unit of light tells by its course "
                + "how the traps lean; how many there are stays with the pigment's sheet."
        );
        sheet.Row(
            "First",
            "read what 'predict' names under Calibrate: those are the assumed numbers that matter most."
        );
        sheet.Blank();
        sheet.Row("Caution", "Never look into an ultraviolet lamp. " + Cautions.EscapeRoutes);
    }
}
