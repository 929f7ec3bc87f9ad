using GlowMix.Console.Plots;
using GlowMix.Console.Texts;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Console.Reports;

/// <summary>The spectrum, bare and potted.</summary>
internal static class SpectrumChart
{
    private const double FirstNm = 380;
    private const int TableStepNm = 20;

    /// <summary>Power over wavelength, the bare board's peak at 100.</summary>
    public static Illustration Of(Prediction prediction)
    {
        var spectra = prediction.Spectra;
        double scale = 100 / SpectrumCurves.Largest(spectra.BareWPerNm);
        double highest = scale * Math.Max(100 / scale, SpectrumCurves.Largest(spectra.LitWPerNm));
        var chart = new Chart(
            Axis.Linear("nm", FirstNm, WavelengthGrid.LastNm),
            Axis.Linear("per nm, bare peak 100", 0, 1.08 * highest)
        );
        var legend = new List<(string, string)>();
        bool hasPigment = SpectrumCurves.Largest(spectra.PigmentWPerNm) > 0;
        Add(spectra.BareWPerNm, "bare", "bare");
        Add(spectra.LitWPerNm, "potted", "lit");
        if (hasPigment)
        {
            Add(spectra.PigmentWPerNm, "from pigment", "pigment");
        }
        chart.Legend(legend);
        return new(
            chart.Drawn("Spectrum", InWords(spectra, scale)),
            "Spectrum of the bare board (dotted) and of the potted piece"
                + (hasPigment ? "; dashed the pigment's own part of it." : "."),
            hasPigment ? ["nm", "bare", "potted", "pigment's part"] : ["nm", "bare", "potted"],
            [.. Rows(spectra, scale, hasPigment)]
        );

        void Add(Spectrum spectrum, string name, string looks)
        {
            var curve = SpectrumCurves.Of(name, spectrum, scale, LineMark.Solid);
            chart.Curve(curve.Xs, curve.Ys, looks);
            legend.Add((name, looks));
        }
    }

    private static int PeakOf(Spectrum spectrum)
    {
        int peak = 0;
        for (int i = 1; i < WavelengthGrid.Count; i++)
        {
            peak = spectrum[i] > spectrum[peak] ? i : peak;
        }
        return peak;
    }

    private static string InWords(LitSpectra spectra, double scale)
    {
        int bare = PeakOf(spectra.BareWPerNm);
        int lit = PeakOf(spectra.LitWPerNm);
        return $"the bare board is strongest at {WavelengthGrid.NmAt(bare)} nm, the potted piece at "
            + $"{WavelengthGrid.NmAt(lit)} nm with {Digits.Fixed(scale * spectra.LitWPerNm[lit], 0)} of the bare board's 100";
    }

    private static IEnumerable<string[]> Rows(LitSpectra spectra, double scale, bool hasPigment)
    {
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            double nm = WavelengthGrid.NmAt(i);
            if (nm < FirstNm || nm % TableStepNm != 0)
            {
                continue;
            }
            string[] row =
            [
                Digits.Plain(nm),
                Digits.Fixed(scale * spectra.BareWPerNm[i], 1),
                Digits.Fixed(scale * spectra.LitWPerNm[i], 1),
                Digits.Fixed(scale * spectra.PigmentWPerNm[i], 1),
            ];
            yield return hasPigment ? row : row[..3];
        }
    }
}
