using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads the list 'layers'.</summary>
internal static class LayersReader
{
    /// <summary>The most layers a piece may have.</summary>
    public const int MostLayers = 12;

    private static readonly string[] pigmentKeys =
    [
        "grain_median_um",
        "grain_tolerance_factor",
        "grain_gsd",
        "grain_from_um",
        "grain_to_um",
        "loading_percent",
        "loading_g_per_100g_resin",
        "loading_tolerance_points",
    ];

    public static ImmutableArray<RecipeLayer> Read(MappingReader parent)
    {
        if (parent.List("layers", 1, MostLayers) is not { } list)
        {
            return [];
        }
        var layers = ImmutableArray.CreateBuilder<RecipeLayer>(list.Count);
        var names = new HashSet<string>();
        for (int i = 0; i < list.Count; i++)
        {
            string name = KeyPaths.LayerName(list.Node.Items[i], i);
            if (list.Mapping(i, name) is not { } reader)
            {
                continue;
            }
            var layer = Layer(new RecipeSection(reader, "layers.*"), name);
            if (!names.Add(layer.Name))
            {
                reader.Problems.Error(
                    reader.Node["name"]?.Place ?? reader.Node.Place,
                    RecipeTexts.LayerNameTwice(name)
                );
            }
            layers.Add(layer);
        }
        return layers.ToImmutable();
    }

    private static RecipeLayer Layer(RecipeSection section, string defaultName)
    {
        string name = section.Text("name") ?? defaultName;
        if (section.Reader.Has("name") && !IsLayerName(name))
        {
            section.Reader.Error("name", RecipeTexts.NotALayerName(name));
        }
        var layer = new RecipeLayer
        {
            Name = name,
            DepthMm = section.NeededNumber("depth_mm"),
            DepthToleranceMm = section.Number("depth_tolerance_mm"),
            PigmentName = section.Material("pigment"),
        };
        layer = WithGrain(layer, section);
        layer = WithLoading(layer, section);
        if (!section.Reader.Has("pigment"))
        {
            foreach (string key in pigmentKeys.Where(section.Reader.Has))
            {
                section.Reader.Error(key, RecipeTexts.NeedsAPigment(key));
            }
        }
        section.Finish();
        return layer;
    }

    private static RecipeLayer WithGrain(RecipeLayer layer, RecipeSection section)
    {
        double? medianUm = section.Number("grain_median_um");
        double? toleranceFactor = section.Number("grain_tolerance_factor");
        double? gsd = section.Number("grain_gsd");
        double? fromUm = section.Number("grain_from_um");
        double? toUm = section.Number("grain_to_um");
        layer = layer with
        {
            GrainMedianUm = medianUm,
            GrainToleranceFactor = toleranceFactor,
            GrainGsd = gsd,
        };

        var reader = section.Reader;
        if (!reader.Has("grain_from_um") && !reader.Has("grain_to_um"))
        {
            return layer;
        }
        foreach (string end in new[] { "grain_from_um", "grain_to_um" })
        {
            bool excluded = reader.NotBoth("grain_median_um", end) || reader.NotBoth("grain_gsd", end);
            if (excluded)
            {
                return layer;
            }
        }
        section.Needs("grain_from_um", "grain_to_um");
        section.Needs("grain_to_um", "grain_from_um");
        if (fromUm is null || toUm is null)
        {
            return layer;
        }
        if (fromUm >= toUm)
        {
            reader.Error("grain_to_um", RecipeTexts.GrainEnds(fromUm.Value, toUm.Value));
            return layer;
        }
        return layer with
        {
            GrainMedianUm = Grain.MedianOfEndsUm(fromUm.Value, toUm.Value),
            GrainGsd = Grain.GsdOfEnds(fromUm.Value, toUm.Value),
            GrainIsFromEnds = true,
        };
    }

    private static RecipeLayer WithLoading(RecipeLayer layer, RecipeSection section)
    {
        var reader = section.Reader;
        double? percent = section.Number("loading_percent");
        double? gPer100g = section.Number("loading_g_per_100g_resin");
        double? tolerancePoints = section.Number("loading_tolerance_points");
        reader.NotBoth("loading_percent", "loading_g_per_100g_resin");
        if (
            reader.Has("pigment")
            && !reader.Has("loading_percent")
            && !reader.Has("loading_g_per_100g_resin")
        )
        {
            reader.Problems.Error(
                reader.PlaceOf("pigment"),
                ProblemTexts.Missing("loading_percent", reader.Where)
            );
        }
        if (percent is > 0 and < 1)
        {
            reader.Warning("loading_percent", RecipeTexts.LoadingIsSmall(percent.Value));
        }
        return layer with
        {
            LoadingPercent = percent ?? (100 * gPer100g / (100 + gPer100g)),
            LoadingTolerancePoints = tolerancePoints,
        };
    }

    private static bool IsLayerName(string name) =>
        PlainName.IsWords(name, joints: "-") && !char.IsAsciiDigit(name[0]);
}
