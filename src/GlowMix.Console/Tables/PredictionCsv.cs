using GlowMix.Console.Texts;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Console.Tables;

/// <summary>The tables of a prediction: spectra, decay and figures.</summary>
internal static class PredictionCsv
{
    /// <summary>The tables, each with the name of its file.</summary>
    public static IReadOnlyList<(string Name, string Content)> Of(Prediction prediction) =>
        [
            ("spectra.csv", Spectra(prediction.Spectra)),
            ("decay.csv", Decay(prediction.Decay)),
            ("figures.csv", Figures(prediction)),
        ];

    private static string Spectra(LitSpectra spectra)
    {
        var csv = new CsvText();
        csv.Row("wavelength_nm", "bare_w_per_nm", "lit_w_per_nm", "pigment_w_per_nm", "glow_shape");
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            csv.Cell(WavelengthGrid.NmAt(i))
                .Cell(spectra.BareWPerNm[i])
                .Cell(spectra.LitWPerNm[i])
                .Cell(spectra.PigmentWPerNm[i])
                .Cell(spectra.GlowShape?[i])
                .EndRow();
        }
        return csv.ToString();
    }

    // Without pigment the head stands alone: an old table must not be taken for this recipe's.
    private static string Decay(DecayCurve? decay)
    {
        var csv = new CsvText();
        csv.Row("minutes", "luminance_low_mcd_m2", "luminance_likely_mcd_m2", "luminance_high_mcd_m2");
        for (int i = 0; i < decay?.Minutes.Count; i++)
        {
            csv.Cell(decay.Minutes[i])
                .Cell(decay.LowMcdPerM2[i])
                .Cell(decay.LikelyMcdPerM2[i])
                .Cell(decay.HighMcdPerM2[i])
                .EndRow();
        }
        return csv.ToString();
    }

    private static string Figures(Prediction prediction)
    {
        var csv = new CsvText();
        csv.Row("figure", "unit", "value", "low", "high");
        foreach (var figure in FigureCatalogue.All)
        {
            var band = prediction.BandOf(figure);
            csv.Cell(figure.Name)
                .Cell(figure.Unit)
                .Cell(prediction.Figures[figure])
                .Cell(band.Low)
                .Cell(band.High)
                .EndRow();
        }
        return csv.ToString();
    }
}
