using System.Text.Json;
using GlowMix.Console.Commands;
using GlowMix.Readings;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Tables;

/// <summary>Readings for programs; what does not exist is null.</summary>
internal static class ReadingJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Object(ReadingAnswer answer) => JsonText.Of(json => Write(json, answer));

    /// <summary>An array in the order given, with a line end.</summary>
    public static string Array(IEnumerable<ReadingAnswer> answers) => JsonText.OfEach(answers, Write);

    private static void Write(Utf8JsonWriter json, ReadingAnswer answer)
    {
        json.WriteStartObject();
        if (answer.Spectrum is { } figures)
        {
            Write(json, figures);
            Write(json, answer.Comparison);
            ReadingOfJson.Write(json, answer.Predicted);
            json.WriteWarnings(figures.Warnings);
        }
        else if (answer.Decay is { } decay)
        {
            Write(json, decay, answer.Geometry);
            ReadingOfJson.Write(json, answer.DecayPredicted);
            json.WriteWarnings(decay.Warnings);
        }
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ReadingFigures figures)
    {
        var colour = figures.Colour;
        json.WriteString("file", figures.Reading.File);
        json.WriteString("kind", "spectrum");
        json.WriteBoolean("colour_trustworthy", figures.Reading.IsColourTrustworthy);
        json.WriteNumberOrNull("cct_k", colour.CctK);
        json.WriteNumberOrNull("duv", colour.Duv);
        json.WriteNumberOrNull("x", colour.ChromaticityX);
        json.WriteNumberOrNull("y", colour.ChromaticityY);
        json.WriteNumberOrNull("u_prime", colour.UPrime);
        json.WriteNumberOrNull("v_prime", colour.VPrime);
        json.WriteNumberOrNull("ra", colour.Ra);
        json.WriteNumberOrNull("r9", colour.R9);
        json.WriteNumberOrNull("scotopic_photopic_ratio", colour.ScotopicPhotopicRatio);
        json.WriteNumberOrNull("luminous_efficacy_lm_w", colour.LuminousEfficacyLmPerW);
        json.WriteNumberOrNull("illuminance_lx", figures.IlluminanceLx);
        json.WriteNumberOrNull("nominal_cct_k", figures.White?.NominalCctK);
        json.WriteBoolean("inside_nominal_quadrangle", figures.IsInsideWhite);
        json.WriteString("nominal_edition", "ANSI C78.377-2015");
        json.WriteNumber("first_nm", figures.Visible.FirstNm);
        json.WriteNumber("last_nm", figures.Visible.LastNm);
        json.WriteStartArray("peaks");
        foreach (var peak in figures.Peaks)
        {
            json.WriteStartObject();
            json.WriteNumber("nm", peak.Nm);
            json.WriteNumber("share_of_highest", peak.ShareOfHighest);
            json.WriteNumberOrNull("full_width_nm", peak.FullWidthNm);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartObject("band_power_percent");
        foreach (var share in figures.Bands)
        {
            json.WriteNumber(share.Band.Name, share.PowerPercent);
        }
        json.WriteEndObject();
        Write(json, figures.Reading.Findings);
    }

    private static void Write(Utf8JsonWriter json, SpectrumComparison? compared)
    {
        if (compared is null)
        {
            json.WriteNull("against");
            return;
        }
        json.WriteStartObject("against");
        json.WriteString("file", compared.Against.Reading.File);
        json.WriteNumberOrNull("scaled_at_nm", compared.ScaledAtNm);
        json.WriteNumberOrNull("shift_k", compared.ShiftK);
        json.WriteNumberOrNull("shift_u_prime_v_prime", compared.UPrimeVPrime);
        json.WriteNumberOrNull("flux_ratio", compared.FluxRatio);
        Extreme("most", compared.Most);
        Extreme("least", compared.Least);
        json.WriteStartObject("band_ratio");
        foreach (var (band, ratio) in compared.Bands)
        {
            json.WriteNumberOrNull(band.Name, ratio);
        }
        json.WriteEndObject();
        json.WriteStartArray("ratio");
        for (int i = 0; i < compared.Ratio.Count; i++)
        {
            json.WriteStartObject();
            json.WriteNumber("nm", compared.Ratio.WavelengthsNm[i]);
            json.WriteNumber("ratio", compared.Ratio.Values[i]);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();

        void Extreme(string name, (double Nm, double Ratio) at)
        {
            json.WriteStartObject(name);
            json.WriteNumber("nm", at.Nm);
            json.WriteNumber("ratio", at.Ratio);
            json.WriteEndObject();
        }
    }

    private static void Write(Utf8JsonWriter json, DecayFigures figures, MeterGeometry? geometry)
    {
        var reading = figures.Reading;
        json.WriteString("file", reading.File);
        json.WriteString("kind", "decay");
        json.WriteString(
            "unit",
            reading.Unit switch
            {
                DecayUnit.McdPerM2 => "mcd_m2",
                DecayUnit.Lux => "lx",
                _ => "relative",
            }
        );
        json.WriteNumberOrNull("exponent", figures.Exponent);
        json.WriteNumberOrNull("exponent_standard_error", figures.ExponentError);
        json.WriteNumberOrNull("minutes_to_0_3_mcd_m2", figures.MinutesToLimit);
        json.WriteBoolean("minutes_extrapolated", figures.IsExtrapolated);
        json.WriteString("geometry", geometry?.Words);
        json.WriteNumber("display_step", reading.DisplayStep);
        json.WriteStartArray("readings");
        for (int i = 0; i < reading.Minutes.Length; i++)
        {
            json.WriteStartObject();
            json.WriteNumber("minutes", reading.Minutes[i]);
            json.WriteNumber("value", reading.Values[i]);
            json.WriteBoolean("usable", reading.IsUsable(i));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        Write(json, reading.Findings);
    }

    private static void Write(Utf8JsonWriter json, TableFindings findings)
    {
        json.WriteStartObject("found");
        json.WriteString("encoding", findings.Encoding);
        json.WriteString("delimiter", findings.Delimiter);
        json.WriteString("decimal_mark", findings.DecimalMark);
        json.WriteNumber("first_line", findings.FirstLine);
        json.WriteNumber("last_line", findings.LastLine);
        json.WriteNumber("rows", findings.Rows);
        json.WriteNumber("rows_merged", findings.RowsMerged);
        json.WriteNumber("rows_left_out", findings.RowsLeftOut);
        json.WriteNumber("remarks", findings.Remarks);
        json.WriteBoolean("descending", findings.IsDescending);
        json.WriteBoolean("written_across", findings.IsTransposed);
        Column(findings.Kind == ReadingKind.Spectrum ? "wavelength_column" : "time_column", findings.Along);
        json.WriteString(
            findings.Kind == ReadingKind.Spectrum ? "wavelength_unit" : "time_unit",
            findings.AlongUnit
        );
        Column("light_column", findings.Light);
        json.WriteString("light_unit", findings.LightUnit);
        Column("dark_column", findings.Dark);
        json.WriteEndObject();

        void Column(string name, ColumnName? column)
        {
            if (column is not { } known)
            {
                json.WriteNull(name);
                return;
            }
            json.WriteStartObject(name);
            json.WriteNumber("number", known.Number);
            json.WriteString("name", known.Name);
            json.WriteEndObject();
        }
    }
}
