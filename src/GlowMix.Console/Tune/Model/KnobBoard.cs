using System.Collections.Immutable;
using System.Globalization;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>What of a recipe can be turned, in the order of the path of the light, and how it is.</summary>
/// <param name="shelf">The materials to choose from.</param>
internal sealed class KnobBoard(Shelf shelf)
{
    private const string DefaultMinutes = "480";
    private const string FirstMinutes = "charge.steps.1.minutes";
    private const string Charge = "charge";

    /// <summary>What stands in the place of a clear layer's pigment.</summary>
    public const string NoPigment = "none";

    // Where a layer's loading begins when a pigment is put into it: in the middle of what is usually poured.
    private const string FirstLoadingPercent = "10";
    private const int TakenDigits = 3;

    /// <summary>The knobs of a piece.</summary>
    public ImmutableArray<Knob> Of(RecipeDocument document, Piece piece)
    {
        var knobs = ImmutableArray.CreateBuilder<Knob>();
        // From the face down, as the cut shows them.
        foreach (var layer in piece.Layers.Reverse())
        {
            AddLayer(knobs, document, layer);
        }
        knobs.Add(Words(document, "resin", "", "resin", MaterialKind.Resin, piece.Resin.Name));
        AddLed(knobs, document, piece);
        knobs.Add(Number(document, "led.drive_ma", "", "drive", "mA", piece.DriveMa));
        knobs.Add(Words(document, "board.material", "", "board", MaterialKind.Board, piece.Board.Name));
        AddCharge(knobs, document, piece);
        return knobs.ToImmutable();
    }

    /// <summary>The recipe with a knob turned; whether the value is allowed stands in the result's problems.</summary>
    public static RecipeDocument Turned(RecipeDocument document, Knob knob, string value)
    {
        if (knob.KeyPath == FirstMinutes && knob.IsTaken)
        {
            // No key can be set in a list that is not there.
            string end = document.Text.EndsWith('\n') ? "" : "\n";
            return RecipeDocument.Read(
                $"{document.Text}{end}charge:\n  steps:\n    - light: own-leds\n      minutes: {ScalarText.Of(value)}\n",
                document.Name
            );
        }
        if (knob.IsClearLayer)
        {
            return document.With(knob.KeyPath, value).With(LoadingPath(knob.KeyPath), FirstLoadingPercent);
        }
        return document.With(knob.KeyPath, value);
    }

    /// <summary>What a turn of a knob sets besides, for its sentence; empty if nothing.</summary>
    public static string Besides(Knob knob) => knob.IsClearLayer ? $", {FirstLoadingPercent} %," : "";

    private static string LoadingPath(string pigmentPath) =>
        pigmentPath[..(pigmentPath.LastIndexOf('.') + 1)] + "loading_percent";

    private void AddLayer(ImmutableArray<Knob>.Builder knobs, RecipeDocument document, PieceLayer layer)
    {
        string path = $"layers.{layer.Name}.";
        if (layer.Pigment is { } pigment)
        {
            bool byGrams = document.Get(path + "loading_g_per_100g_resin") is not null;
            knobs.Add(
                byGrams
                    ? Number(document, path + "loading_g_per_100g_resin", layer.Name, "loading", "g/100 g", 0)
                    : Number(
                        document,
                        path + "loading_percent",
                        layer.Name,
                        "loading",
                        "%",
                        layer.LoadingPercent
                    )
            );
            knobs.Add(Number(document, path + "depth_mm", layer.Name, "depth", "mm", layer.DepthMm));
            knobs.Add(
                Number(document, path + "grain_median_um", layer.Name, "grain", "µm", layer.GrainMedianUm)
            );
            knobs.Add(
                Words(document, path + "pigment", layer.Name, "pigment", MaterialKind.Pigment, pigment.Name)
            );
            return;
        }
        knobs.Add(
            new(
                path + "pigment",
                layer.Name,
                "pigment",
                NoPigment,
                IsTaken: false,
                "",
                NumberRange.Any,
                [NoPigment, .. shelf.Names(MaterialKind.Pigment)]
            )
        );
        knobs.Add(Number(document, path + "depth_mm", layer.Name, "depth", "mm", layer.DepthMm));
    }

    private void AddLed(ImmutableArray<Knob>.Builder knobs, RecipeDocument document, Piece piece)
    {
        switch (piece.Recipe.Led.Source)
        {
            case LedByName:
                knobs.Add(Words(document, "led.material", "", "LED", MaterialKind.Led, piece.Led.Name));
                return;
            case LedByLabel label:
                knobs.Add(Number(document, "led.cct_k", "", "LED white", "K", label.CctK));
                if (label.Ra is double ra)
                {
                    knobs.Add(Number(document, "led.ra", "", "LED Ra", "", ra));
                }
                AddRatings(knobs, document, label.Ratings);
                return;
            case LedBySpectrum measured:
                string file = measured.SpectrumPath;
                knobs.Add(
                    new("led.spectrum", "", "LED", file, IsTaken: false, "", NumberRange.Any, [file])
                    {
                        WhyFixed = "The LED is what its file measured; another file is named in the recipe.",
                    }
                );
                AddRatings(knobs, document, measured.Ratings);
                return;
        }
    }

    private static void AddRatings(
        ImmutableArray<Knob>.Builder knobs,
        RecipeDocument document,
        LedRatings ratings
    )
    {
        knobs.Add(Number(document, "led.flux_lm", "", "LED flux", "lm", ratings.FluxLm));
        knobs.Add(Number(document, "led.at_ma", "", "flux at", "mA", ratings.AtMa));
    }

    private void AddCharge(ImmutableArray<Knob>.Builder knobs, RecipeDocument document, Piece piece)
    {
        if (piece.Recipe.Charge.Steps.IsEmpty)
        {
            if (document.Get("charge.start") is null)
            {
                var range = RecipeKeys.Find("charge.steps.*.minutes")!.Range;
                knobs.Add(new(FirstMinutes, Charge, "lit for", DefaultMinutes, true, "min", range, []));
            }
            return;
        }
        for (int i = 0; i < piece.Recipe.Charge.Steps.Length; i++)
        {
            var step = piece.Recipe.Charge.Steps[i];
            string path = string.Create(CultureInfo.InvariantCulture, $"charge.steps.{i + 1}.");
            string lamp = step.OwnLeds ? "with" : "light";
            string verb =
                step.IsDark ? "dark for"
                : step.OwnLeds ? "lit for"
                : "lamp for";
            if (step.LampName is { } name)
            {
                knobs.Add(Words(document, path + lamp, Charge, "lamp", MaterialKind.Lamp, name));
            }
            if (step.IlluminanceLx is double lx)
            {
                knobs.Add(Number(document, path + "illuminance_lx", Charge, "light", "lx", lx));
            }
            if (step.IrradianceWPerM2 is double irradiance)
            {
                knobs.Add(Number(document, path + "irradiance_w_m2", Charge, "light", "W/m²", irradiance));
            }
            knobs.Add(Number(document, path + "minutes", Charge, verb, "min", step.Minutes));
        }
    }

    private static Knob Number(
        RecipeDocument document,
        string path,
        string group,
        string label,
        string unit,
        double taken
    )
    {
        string? written = document.Get(path);
        return new(
            path,
            group,
            label,
            written ?? NumberText.Write(Rounded(taken)),
            written is null,
            unit,
            document.KeyOf(path).Range,
            []
        );
    }

    // A number nobody wrote, as exact as it is meant.
    private static double Rounded(double taken) =>
        NumberText.TryRead(Digits.Significant(taken, TakenDigits), out double rounded) ? rounded : taken;

    private Knob Words(
        RecipeDocument document,
        string path,
        string group,
        string label,
        MaterialKind kind,
        string taken
    )
    {
        string? written = document.Get(path);
        return new(
            path,
            group,
            label,
            written ?? taken,
            written is null,
            "",
            NumberRange.Any,
            shelf.Names(kind)
        );
    }
}
