using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Spectra;
using static GlowMix.Materials.Calibrations.CalibrationShape;

namespace GlowMix.Materials.Calibrations;

/// <summary>Reads a calibration; what it returns is good only if the list of problems has no error.</summary>
internal static class CalibrationReader
{
    public static Calibration? Read(MappingNode root, string name, ProblemList problems)
    {
        var keys = new MappingReader(root, problems);
        if (root.Entries is [] || root.Entries[0].Key.Value != CalibrationFile.FormatKey)
        {
            problems.Error(root.Place, CalibrationTexts.FirstKey);
            return null;
        }
        if (
            keys.WholeNumber(CalibrationFile.FormatKey, CalibrationFile.Format, CalibrationFile.Format)
            is null
        )
        {
            return null;
        }
        string? date = keys.Text("date");
        if (date is not null && !DateOnly.TryParseExact(date, "yyyy-MM-dd", null, default, out _))
        {
            keys.Error("date", CalibrationTexts.NoDate(date));
        }
        string? recipe = keys.Text("recipe");
        var readings = Readings(keys);
        var led = keys.OptionalMapping("led") is { } l ? LedOf(l) : null;
        var resin = keys.OptionalMapping("resin") is { } r ? ResinOf(r) : null;
        var pigments = Pigments(keys);
        var correlations = CorrelationReader.Read(keys, [.. CalibratedKeys.ToldBy(led, resin, pigments)]);
        var held = Sentences(keys, "held");
        var misfit = Sentences(keys, "misfit");
        keys.Finish();
        return problems.HasErrors
            ? null
            : new()
            {
                Name = name,
                Date = date ?? "",
                RecipeName = recipe ?? "",
                Readings = readings,
                Led = led,
                Resin = resin,
                Pigments = pigments,
                Correlations = correlations,
                Held = held,
                Misfit = misfit,
            };
    }

    private static ImmutableArray<CalibratedReading> Readings(MappingReader keys)
    {
        if (keys.List("readings", 1, MostReadings) is not { } list)
        {
            return [];
        }
        var readings = ImmutableArray.CreateBuilder<CalibratedReading>();
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is not { } item)
            {
                continue;
            }
            string? file = item.Text("file");
            string? state = item.Text("state");
            string? hash = Hash(item, "sha256", isOptional: false);
            item.Finish();
            readings.Add(new(file ?? "", state ?? "", hash ?? ""));
        }
        return readings.ToImmutable();
    }

    private static CalibratedLed LedOf(MappingReader keys)
    {
        string? material = keys.Text("material");
        string? hash = Hash(keys, "material_sha256", isOptional: true);
        ImmutableArray<CalibratedNumber> shares = [];
        if (keys.OptionalMapping("shares") is { } s)
        {
            shares = [.. Bands.Select(k => Number(s, k, Yield) ?? default)];
            s.Finish();
        }
        ImmutableArray<CalibratedNumber> entries = [];
        CalibratedNumber? conversion = null;
        if (keys.OptionalMapping("return_matrix") is { } m)
        {
            entries = [.. CalibratedLed.EntryKeys.Select(k => Number(m, k, Yield) ?? default)];
            m.Finish();
            conversion = OptionalNumber(keys, "conversion", CalibrationShape.Conversion);
            CheckColumns(m, entries);
        }
        var bare = keys.OptionalMapping("bare_spectrum") is { } b ? SpectrumOf(b) : null;
        keys.Finish();
        return new()
        {
            Material = material ?? "",
            MaterialSha256 = hash,
            Shares = shares,
            ReturnEntries = keys.Problems.HasErrors ? [] : entries,
            Conversion = conversion,
            BareSpectrum = bare,
        };
    }

    // Light that falls back on a package leaves it once at most.
    private static void CheckColumns(MappingReader keys, ImmutableArray<CalibratedNumber> entries)
    {
        double[] columns =
        [
            entries[0].Value + entries[1].Value + entries[2].Value,
            entries[3].Value + entries[4].Value,
        ];
        if (columns.Max() > 1 + 1e-9)
        {
            keys.Problems.Error(keys.Node.Place, CalibrationTexts.ColumnOver(columns.Max()));
        }
    }

    private static Spectrum? SpectrumOf(MappingReader keys)
    {
        var table = MaterialReader.Points(
            keys,
            "at_nm",
            "bare_spectrum at_nm",
            NumberRange.Between(WavelengthGrid.FirstNm, WavelengthGrid.LastNm),
            Power,
            WavelengthGrid.Count
        );
        keys.Finish();
        if (table is null)
        {
            return null;
        }
        var spectrum = Spectrum.FromNm(table.Linear);
        if (spectrum.IntegralOverNm() <= 0)
        {
            keys.Problems.Error(keys.Node.Place, CalibrationTexts.NoLight);
            return null;
        }
        return spectrum;
    }

    private static CalibratedResin ResinOf(MappingReader keys)
    {
        string? material = keys.Text("material");
        string? hash = Hash(keys, "material_sha256", isOptional: true);
        var factor = Number(keys, "absorption_factor", Factor);
        keys.Finish();
        return new()
        {
            Material = material ?? "",
            MaterialSha256 = hash,
            AbsorptionFactor = factor ?? default,
        };
    }

    private static ImmutableArray<CalibratedPigment> Pigments(MappingReader keys)
    {
        if (keys.OptionalList("pigments", 1, MostPigments) is not { } list)
        {
            return [];
        }
        var pigments = ImmutableArray.CreateBuilder<CalibratedPigment>();
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is { } item)
            {
                var pigment = PigmentOf(item);
                if (pigments.Any(p => p.Material == pigment.Material))
                {
                    item.Error("material", CalibrationTexts.Twice(pigment.Material));
                }
                pigments.Add(pigment);
            }
        }
        return pigments.ToImmutable();
    }

    private static CalibratedPigment PigmentOf(MappingReader keys)
    {
        string? material = keys.Text("material");
        string? hash = Hash(keys, "material_sha256", isOptional: true);
        var factor = OptionalNumber(keys, "absorption_factor", Factor);
        var yield = OptionalNumber(keys, "photoluminescence_yield", Yield);
        MeasuredTraps? measured = null;
        CalibratedNumber? level = null;
        CalibratedNumber? tilt = null;
        CalibratedNumber? trapping = null;
        if (keys.OptionalMapping("traps") is { } traps)
        {
            level = Number(traps, "level", Factor);
            tilt = Number(traps, "tilt", Tilt);
            trapping = Number(traps, "trapping_factor", Factor);
            double? efficiency = traps.Number("trapping_efficiency", Efficiency);
            double? reach = traps.Number("read_to_min", ReadToMin);
            double? middle = traps.OptionalNumber("tilt_at_min", ReadToMin);
            ImmutableArray<double> perG = [];
            if (traps.List("per_g", MeasuredTraps.RungCount, MeasuredTraps.RungCount) is { } rungs)
            {
                perG = [.. Enumerable.Range(0, rungs.Count).Select(i => rungs.Number(i, TrapsPerG) ?? 0)];
                if (!traps.Problems.HasErrors && perG.Sum() <= 0)
                {
                    traps.Error("per_g", CalibrationTexts.NoTraps);
                }
            }
            traps.Finish();
            measured = new(perG, efficiency ?? 1, reach ?? 1) { MiddleMinutes = middle };
        }
        keys.Finish();
        return new()
        {
            Material = material ?? "",
            MaterialSha256 = hash,
            AbsorptionFactor = factor,
            PhotoluminescenceYield = yield,
            Traps = measured,
            TrapLevel = level,
            TrapTilt = tilt,
            TrappingFactor = trapping,
        };
    }

    private static ImmutableArray<string> Sentences(MappingReader keys, string key) =>
        keys.OptionalList(key, 0, MostSentences) is { } list
            ? [.. Enumerable.Range(0, list.Count).Select(list.Text).OfType<string>()]
            : [];

    private static CalibratedNumber? OptionalNumber(MappingReader keys, string key, NumberRange allowed) =>
        keys.OptionalMapping(key) is { } entry ? Number(entry, allowed) : null;

    private static CalibratedNumber? Number(MappingReader keys, string key, NumberRange allowed) =>
        keys.Mapping(key) is { } entry ? Number(entry, allowed) : null;

    private static CalibratedNumber? Number(MappingReader entry, NumberRange allowed)
    {
        double? value = entry.Number("value", allowed);
        double? error = entry.OptionalNumber("standard_error", Error);
        entry.Finish();
        return value is double v ? new(v, error) : null;
    }

    private static string? Hash(MappingReader keys, string key, bool isOptional)
    {
        string? hash = isOptional ? keys.OptionalText(key) : keys.Text(key);
        if (hash is not null && !(hash.Length == Sha256.Length && hash.All(char.IsAsciiHexDigitLower)))
        {
            keys.Error(key, CalibrationTexts.NoHash(key));
        }
        return hash;
    }
}
