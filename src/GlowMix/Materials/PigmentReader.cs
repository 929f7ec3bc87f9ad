using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/pigments.</summary>
internal static class PigmentReader
{
    public static Pigment? Read(MaterialReader reader, MaterialHead head, Pigment? like)
    {
        var density = reader.Number("density_g_cm3", MaterialRanges.DensityGPerCm3, like?.DensityGPerCm3);
        var index = RefractiveIndexReader.Read(reader, like?.RefractiveIndex);
        var absorption = SpectrumReader.Read(
            reader,
            "absorption_per_mm",
            NumberRange.Between(0, 1000),
            table => table.LinearOnGrid(),
            like?.AbsorptionPerMm
        );
        var peak = reader.Number("emission_peak_nm", NumberRange.Between(380, 740), like?.EmissionPeakNm);
        var fwhm = reader.Number("emission_fwhm_nm", NumberRange.Between(10, 200), like?.EmissionFwhmNm);
        var yield = reader.Number(
            "photoluminescence_yield",
            NumberRange.Above(0, 1),
            like?.PhotoluminescenceYield
        );
        var median = reader.Number("grain_median_um", NumberRange.Between(0.5, 500), like?.GrainMedianUm);
        var gsd = reader.Number("grain_gsd", NumberRange.Between(1, 3), like?.GrainGsd);
        var fine = FineGrains(reader, like?.FineGrainTable);
        var capacity = reader.Number(
            "trap_capacity_per_g",
            NumberRange.Between(1e12, 1e21),
            like?.TrapCapacityPerG
        );
        var frequency = reader.Number(
            "trap_frequency_factor_per_s",
            NumberRange.Between(1e6, 1e15),
            like?.TrapFrequencyFactorPerS
        );
        var activation = reader.Number(
            "trap_capture_activation_ev",
            NumberRange.Between(0, 1),
            like?.TrapCaptureActivationEv
        );
        var exponent = reader.Number(
            "trap_weight_exponent",
            NumberRange.Between(-1, 1),
            like?.TrapWeightExponent
        );
        var emptying = reader.Number(
            "trap_emptying_by_light",
            NumberRange.Between(0, 100),
            like?.TrapEmptyingByLight
        );
        var sheet = DecaySheetReader.Read(reader, like?.Sheet);
        return
            density is null
            || index is null
            || absorption is null
            || peak is null
            || fwhm is null
            || yield is null
            || median is null
            || gsd is null
            || fine is null
            || capacity is null
            || frequency is null
            || activation is null
            || exponent is null
            || emptying is null
            || sheet is null
            ? null
            : new()
            {
                Name = head.Name,
                Title = head.Title,
                Cautions = head.Cautions,
                Origin = head.Origin,
                DensityGPerCm3 = density,
                RefractiveIndex = index,
                AbsorptionPerMm = absorption,
                EmissionPeakNm = peak,
                EmissionFwhmNm = fwhm,
                PhotoluminescenceYield = yield,
                GrainMedianUm = median,
                GrainGsd = gsd,
                FineGrainTable = fine,
                TrapCapacityPerG = capacity,
                TrapFrequencyFactorPerS = frequency,
                TrapCaptureActivationEv = activation,
                TrapWeightExponent = exponent,
                TrapEmptyingByLight = emptying,
                Sheet = sheet,
            };
    }

    private static Sourced<PointTable>? FineGrains(MaterialReader reader, Sourced<PointTable>? like)
    {
        const string Key = "fine_grain_efficiency";
        if (!reader.Keys.Has(Key) && like is not null)
        {
            reader.Keys.Take(Key);
            reader.Borrow(Key);
            return like;
        }
        return reader.Table(Key, "at_um", NumberRange.Above(0, 1000), NumberRange.Above(0, 1));
    }
}
