using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/resins.</summary>
internal static class ResinReader
{
    private static readonly NumberRange Minutes = NumberRange.Above(0, 20000);
    private static readonly NumberRange Hours = NumberRange.Above(0, 2000);

    public static Resin? Read(MaterialReader reader, MaterialHead head, Resin? like)
    {
        var index = RefractiveIndexReader.Read(reader, like?.RefractiveIndex);
        var absorption = SpectrumReader.Read(
            reader,
            "absorption_per_mm",
            NumberRange.Above(0, 100),
            table => table.LogLinearOnGrid(),
            like?.AbsorptionPerMm
        );
        var mixDensity = reader.Number(
            "density_mix_g_cm3",
            MaterialRanges.DensityGPerCm3,
            like?.DensityMixGPerCm3
        );
        var densityA = reader.Number(
            "density_part_a_g_cm3",
            MaterialRanges.DensityGPerCm3,
            like?.DensityPartAGPerCm3
        );
        var densityB = reader.Number(
            "density_part_b_g_cm3",
            MaterialRanges.DensityGPerCm3,
            like?.DensityPartBGPerCm3
        );
        var ratio = reader.Entry(
            "mix_ratio",
            like?.MixRatio,
            isOptional: false,
            entry => Ratio(reader, entry)
        );
        var viscosities = Rows(reader, "viscosity", like?.Viscosities ?? default, ReadViscosity);
        var potLives = Rows(reader, "pot_life", like?.PotLives ?? default, ReadPotLife);
        var gel = reader.Number("gel_time_min", Minutes, like?.GelTimeMin);
        var depth = reader.OptionalNumber(
            "max_pour_depth_mm",
            NumberRange.Above(0, 1000),
            like?.MaxPourDepthMm
        );
        var toTouch = reader.OptionalNumber("cure_to_touch_h", Hours, like?.CureToTouchH);
        var full = reader.OptionalNumber("cure_full_h", Hours, like?.CureFullH);
        if (
            index is null
            || absorption is null
            || mixDensity is null
            || densityA is null
            || densityB is null
            || ratio is null
            || viscosities.IsDefault
            || potLives.IsDefault
            || gel is null
        )
        {
            return null;
        }
        var resin = new Resin
        {
            Name = head.Name,
            Title = head.Title,
            Cautions = head.Cautions,
            Origin = head.Origin,
            RefractiveIndex = index,
            AbsorptionPerMm = absorption,
            DensityMixGPerCm3 = mixDensity,
            DensityPartAGPerCm3 = densityA,
            DensityPartBGPerCm3 = densityB,
            MixRatio = ratio,
            Viscosities = Ascending.By(viscosities, v => v.Value.TemperatureC),
            PotLives = Ascending.By(potLives, p => p.Value.MassG),
            GelTimeMin = gel,
            MaxPourDepthMm = depth,
            CureToTouchH = toTouch,
            CureFullH = full,
        };
        return HasDensitiesThatAgree(resin, reader.Keys) ? resin : null;
    }

    // A slip in a density would turn a ratio by volume into wrong masses without a sign.
    private static bool HasDensitiesThatAgree(Resin resin, MappingReader keys)
    {
        double shareA = resin.MassShareOfPartA;
        double computed =
            1
            / ((shareA / resin.DensityPartAGPerCm3.Value) + ((1 - shareA) / resin.DensityPartBGPerCm3.Value));
        double stated = resin.DensityMixGPerCm3.Value;
        if (Math.Abs((computed / stated) - 1) <= 0.05)
        {
            return true;
        }
        keys.Error("density_mix_g_cm3", MaterialProblemTexts.DensitiesDisagree(stated, computed));
        return false;
    }

    private static Sourced<MixRatio>? Ratio(MaterialReader reader, MappingReader entry)
    {
        string? by = entry.OneOf("by", "mass", "volume");
        double? a = entry.Number("part_a", NumberRange.Above(0, 1000));
        double? b = entry.Number("part_b", NumberRange.Above(0, 1000));
        var note = MaterialReader.Note(entry, "mix_ratio");
        return by is not null && a is { } partA && b is { } partB && note is { } source
            ? reader.Remember(
                "mix_ratio",
                $"{NumberText.Write(partA)} : {NumberText.Write(partB)} by {by}",
                new Sourced<MixRatio>(new(by == "volume", partA, partB), source)
            )
            : null;
    }

    private static (Viscosity, string)? ReadViscosity(MappingReader row)
    {
        double? mPaS = row.Number("mpa_s", NumberRange.Above(0, 1e6));
        double? temperature = row.Number("temperature_c", MaterialRanges.TemperatureC);
        return mPaS is { } v && temperature is { } t
            ? (new(v, t), $"{NumberText.Write(v)} mPa·s at {NumberText.Write(t)} °C")
            : null;
    }

    private static (PotLife, string)? ReadPotLife(MappingReader row)
    {
        double? minutes = row.Number("minutes", Minutes);
        double? mass = row.Number("mass_g", NumberRange.Above(0, 100000));
        double? temperature = row.Number("temperature_c", MaterialRanges.TemperatureC);
        return minutes is { } m && mass is { } g && temperature is { } t
            ? (
                new(m, g, t),
                $"{NumberText.Write(m)} min for {NumberText.Write(g)} g at {NumberText.Write(t)} °C"
            )
            : null;
    }

    private static ImmutableArray<Sourced<T>> Rows<T>(
        MaterialReader reader,
        string key,
        ImmutableArray<Sourced<T>> like,
        Func<MappingReader, (T, string)?> read
    )
        where T : struct
    {
        if (!reader.Keys.Has(key) && !like.IsDefault)
        {
            reader.Keys.Take(key);
            reader.Borrow(key);
            return like;
        }
        if (reader.Keys.List(key, 1, 20) is not { } list)
        {
            return default;
        }
        var rows = ImmutableArray.CreateBuilder<Sourced<T>>();
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is not { } row)
            {
                continue;
            }
            var value = read(row);
            var doubt = MaterialReader.ReadDoubt(row, key);
            var note = MaterialReader.Note(row, key);
            row.Finish();
            if (value is var (row1, text) && note is { } source)
            {
                rows.Add(reader.Remember(key, text, new Sourced<T>(row1, source, doubt)));
            }
        }
        return rows.Count == list.Count ? rows.ToImmutable() : default;
    }
}
