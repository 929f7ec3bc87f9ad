using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Starts;

/// <summary>A first recipe: one glowing or clear pour over white LEDs, every line commented.</summary>
internal sealed class RecipeStart : Starter
{
    private const string NoPigment = "none";

    /// <inheritdoc/>
    public override string Word => "recipe";

    /// <inheritdoc/>
    public override string Description =>
        "A first recipe, every line commented. What is not told is taken as usual.";

    /// <inheritdoc/>
    public override IReadOnlyList<StartField> Fields { get; } =
    [
        new("title", "TEXT", "what the piece is called") { Question = "What is the piece called" },
        new("resin", "NAME", "a resin of the shelf; epoxy-clear-slow if not given")
        {
            Kind = MaterialKind.Resin,
            Usual = "epoxy-clear-slow",
            Question = "Resin, a name of 'glowmix materials resins'",
        },
        new("led", "NAME|K", "an LED of the shelf, or the colour temperature on the reel; warm-white-3000")
        {
            Kind = MaterialKind.Led,
            OrNumber = RecipeKeys.Find("led.cct_k")!.Range,
            Usual = "warm-white-3000",
            Question = "LED, a name of 'glowmix materials leds', or the colour temperature on its reel in K",
        },
        Keyed("ra", "led.ra", "Ra", "with a colour temperature: the reel's colour rendering") with
        {
            Applies = IsFromLabel,
            Question = "Colour rendering Ra on the reel, empty if silent",
        },
        Keyed("flux-lm", "led.flux_lm", "lm", "with a colour temperature: lumens of one LED") with
        {
            Applies = IsFromLabel,
            Question = "Lumens of one LED",
        },
        Keyed("at-ma", "led.at_ma", "mA", "with a colour temperature: at this current") with
        {
            Applies = IsFromLabel,
            Question = "At how many mA",
        },
        Keyed("count", "led.count", "N", "how many LEDs there are") with
        {
            IsWhole = true,
            Question = "How many LEDs, empty if not known yet",
        },
        new("board", "NAME", "the board's surface; white-mask if not given")
        {
            Kind = MaterialKind.Board,
            Usual = "white-mask",
            Question = "Board, a name of 'glowmix materials boards'",
        },
        Keyed("length-mm", "pour.length_mm", "mm", "length of the channel, inside") with
        {
            Question = "Length of the channel in mm, empty if not known yet",
        },
        Keyed("width-mm", "pour.width_mm", "mm", "width of the channel, inside") with
        {
            Question = "Width of the channel in mm, empty if not known yet",
        },
        new("pigment", "NAME", "an afterglow pigment of the shelf, or none; green-aluminate if not given")
        {
            Kind = MaterialKind.Pigment,
            OrWord = NoPigment,
            Usual = "green-aluminate",
            Question = "Afterglow pigment, a name of 'glowmix materials pigments', or none",
        },
        Keyed(
            "depth-mm",
            "layers.*.depth_mm",
            "mm",
            "depth of the pour, from the board; 2.5 if not given"
        ) with
        {
            Usual = "2.5",
            Question = "Depth of the pour in mm, from the board up",
        },
        Keyed(
            "loading-percent",
            "layers.*.loading_percent",
            "%",
            "pigment in the whole mix, by mass; 20 if not given"
        ) with
        {
            Usual = "20",
            Applies = HasPigment,
            Question = "Pigment in % of the whole mix, by mass",
        },
        Keyed("cover-mm", "layers.*.depth_mm", "mm", "a clear layer above it") with
        {
            Applies = HasPigment,
            Question = "Clear layer above it in mm, empty for none",
        },
    ];

    /// <inheritdoc/>
    public override string? ProblemOf(StartAnswers answers) =>
        !IsFromLabel(answers) ? null
        : !answers.Has("flux-lm") || !answers.Has("at-ma")
            ? "an LED by its colour temperature needs --flux-lm and --at-ma, both of the reel"
        : null;

    /// <inheritdoc/>
    public override StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open)
    {
        var text = new StartText();
        text.Comment(
                "A first recipe, to be changed. Predict it with 'glowmix predict', or again at each save with",
                "'glowmix predict --watch'. A line with '#' in front says nothing until the '#' goes."
            )
            .Blank()
            .Line("format: 1")
            .Line($"title: {ScalarText.Of(answers.Text("title") ?? answers.Name)}")
            .Line(
                $"resin: {ScalarText.Of(answers.Text("resin")!)}",
                "of all layers; see 'glowmix materials resins'"
            );
        WriteLed(text, answers);
        text.Line("board:")
            .Line(
                $"  material: {ScalarText.Of(answers.Text("board")!)}",
                "what the LEDs sit on; it sends light back up"
            )
            .Line("pour:", "the channel, inside")
            .Line(
                Given("  length_mm", answers.Text("length-mm"), "500"),
                "without count, length and width: no masses"
            )
            .Line(Given("  width_mm", answers.Text("width-mm"), "12"), "and no lumens")
            .Line("  face: up", "side the viewer sees, while it gels: grains sink away from it");
        WriteLayers(text, answers);
        text.Line("mixing:")
            .Line("  temperature_c: 22", "of the room and the parts")
            .Line("  waste_percent: 10", "what stays in the cup");
        if (HasPigment(answers))
        {
            text.Line("charge:", "in order; the glow clock starts when the last light goes off")
                .Line("  steps:")
                .Line("    - light: own-leds", "or a lamp of 'glowmix materials lamps' with illuminance_lx")
                .Line("      minutes: 480")
                .Line("      temperature_c: 20")
                .Line("darkness:")
                .Line("  temperature_c: 20", "a warmer darkness: brighter early, shorter late")
                .Line("  limit_mcd_m2: 0.3", "what counts as visible; the marking standards use 0.3");
        }
        text.Line("# targets:", "what the piece must reach; 'predict' judges it")
            .Line("#   - figure: lit.duv", "tint of the white: above 0 greenish, below 0 pinkish")
            .Line("#     at_most: 0.02");
        if (HasPigment(answers))
        {
            text.Line("#   - figure: afterglow.luminance_mcd_m2")
                .Line("#     at_minutes: 60")
                .Line("#     at_least: 5");
        }
        return StartTexts.Of(text.ToString());
    }

    private static void WriteLed(StartText text, StartAnswers answers)
    {
        text.Line("led:");
        if (IsFromLabel(answers))
        {
            text.Line(
                    $"  cct_k: {answers.Text("led")}",
                    "of the reel's label; the spectrum is then a stand-in"
                )
                .Line(Given("  ra", answers.Text("ra"), "80"), "colour rendering, of the label")
                .Line($"  flux_lm: {answers.Text("flux-lm")}", "of one LED …")
                .Line($"  at_ma: {answers.Text("at-ma")}", "… at this current");
        }
        else
        {
            text.Line($"  material: {ScalarText.Of(answers.Text("led")!)}", "see 'glowmix materials leds'");
        }
        text.Line(Given("  count", answers.Text("count"), "60"), "packages on the board")
            .Line("  # drive_ma: 40", "through each, steady; else its rated current");
    }

    private static void WriteLayers(StartText text, StartAnswers answers)
    {
        bool hasPigment = HasPigment(answers);
        text.Line("layers:", "from the board upwards; each is one pour of its own")
            .Line($"  - name: {(hasPigment ? "glow" : "clear")}")
            .Line($"    depth_mm: {answers.Text("depth-mm")}", "from the board, not from the top of the LEDs")
            .Line("    depth_tolerance_mm: 0.2", "how well it is kept: two standard deviations");
        if (hasPigment)
        {
            text.Line(
                    $"    pigment: {ScalarText.Of(answers.Text("pigment")!)}",
                    "leave out for a clear layer"
                )
                .Line("    # grain_from_um: 25", "'25-65 µm' on the bag; else the pigment's own grain")
                .Line("    # grain_to_um: 65")
                .Line($"    loading_percent: {answers.Text("loading-percent")}", "of the whole mix, by mass");
        }
        if (hasPigment && answers.Text("cover-mm") is { } coverMm)
        {
            text.Line("  - name: cover", "keeps wear and water off the pigment")
                .Line($"    depth_mm: {coverMm}");
        }
    }

    private static string Given(string key, string? value, string example) =>
        value is null
            ? $"{key[..(key.Length - key.TrimStart().Length)]}# {key.TrimStart()}: {example}"
            : $"{key}: {value}";

    private static StartField Keyed(string name, string path, string unit, string description) =>
        StartField.Number(name, unit, description, RecipeKeys.Find(path)!.Range);

    private static bool IsFromLabel(StartAnswers answers) => answers.Number("led") is not null;

    private static bool HasPigment(StartAnswers answers) =>
        answers.Text("pigment") is not (null or NoPigment);
}
