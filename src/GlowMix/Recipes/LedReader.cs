using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads the section 'led'.</summary>
internal static class LedReader
{
    // Of a LED from a label or a spectrum.
    private static readonly string[] ratingKeys =
    [
        "flux_lm",
        "flux_tolerance_percent",
        "at_ma",
        "max_ma",
        "window_radius_mm",
        "package_height_mm",
        "package_length_mm",
        "package_width_mm",
    ];

    public static RecipeLed Read(MappingReader parent)
    {
        if (parent.Mapping("led") is not { } reader)
        {
            return new() { Source = new LedByName("") };
        }
        var section = new RecipeSection(reader, "led");
        var led = new RecipeLed
        {
            Source = Source(section),
            Count = section.WholeNumber("count"),
            DriveMa = section.Number("drive_ma"),
            DriveTolerancePercent = section.Number("drive_tolerance_percent"),
        };
        double? maxMa = led.Source switch
        {
            LedByLabel label => label.Ratings.MaxMa,
            LedBySpectrum measured => measured.Ratings.MaxMa,
            _ => null,
        };
        if (led.DriveMa > maxMa)
        {
            reader.Error("drive_ma", RecipeTexts.DriveOverMax(led.DriveMa.Value, maxMa.Value));
        }
        section.Finish();
        return led;
    }

    private static LedSource Source(RecipeSection section)
    {
        var reader = section.Reader;
        // Read whatever there is, so that each key is known and each value is judged.
        string? material = section.Material("material");
        string? spectrum = section.Text("spectrum");
        double? cctK = section.Number("cct_k");
        double? ra = section.Number("ra");
        if (material is not null)
        {
            var strangers = ((string[])["spectrum", "cct_k", "ra", .. ratingKeys]).Where(reader.Has);
            foreach (string key in strangers)
            {
                reader.Take(key);
                reader.Error(key, RecipeTexts.StandsInTheMaterial(key, material));
            }
            return new LedByName(material);
        }
        if (spectrum is null && cctK is null)
        {
            bool tried = reader.Has("material") || reader.Has("spectrum") || reader.Has("cct_k");
            if (!tried)
            {
                reader.Problems.Error(reader.Node.Place, RecipeTexts.LedIsNotSaid);
            }
            Array.ForEach(ratingKeys, key => section.Number(key));
            return new LedByName("");
        }
        reader.NotBoth("spectrum", "cct_k");
        if (spectrum is not null)
        {
            reader.NotBoth("spectrum", "ra");
            return new LedBySpectrum(spectrum, Ratings(section));
        }
        return new LedByLabel(cctK!.Value, ra, Ratings(section));
    }

    private static LedRatings Ratings(RecipeSection section) =>
        new()
        {
            FluxLm = section.NeededNumber("flux_lm"),
            FluxTolerancePercent = section.Number("flux_tolerance_percent"),
            AtMa = section.NeededNumber("at_ma"),
            MaxMa = section.Number("max_ma"),
            WindowRadiusMm = section.Number("window_radius_mm"),
            PackageHeightMm = section.Number("package_height_mm"),
            PackageLengthMm = section.Number("package_length_mm"),
            PackageWidthMm = section.Number("package_width_mm"),
        };
}
