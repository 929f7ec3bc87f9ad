using GlowMix.Console.Plots;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The spectrum: now, at the start, and the pigment's part.</summary>
internal static class LitCurves
{
    private const double FirstVisibleNm = 380;
    private const double StepOfTop = 20;

    /// <summary>Paints them.</summary>
    public static void Paint(Leaf leaf, Area area, Prediction now, Prediction? start, Palette palette)
    {
        double peak = SpectrumCurves.Largest(now.Spectra.BareWPerNm);
        double startPeak = start is null ? 0 : SpectrumCurves.Largest(start.Spectra.BareWPerNm);
        if (peak <= 0)
        {
            return;
        }
        var curves = new List<DrawnCurve>();
        double top = SpectrumCurves.Largest(now.Spectra.LitWPerNm) / peak;
        // Each over its own bare board: what the pour does, whatever the drive.
        if (start is not null && startPeak > 0 && !ReferenceEquals(start, now))
        {
            curves.Add(
                new(
                    SpectrumCurves.Of(
                        "at the start",
                        start.Spectra.LitWPerNm,
                        100 / startPeak,
                        LineMark.Dotted
                    ),
                    palette.LitFaint
                )
            );
            top = Math.Max(top, SpectrumCurves.Largest(start.Spectra.LitWPerNm) / startPeak);
        }
        if (SpectrumCurves.Largest(now.Spectra.PigmentWPerNm) > 0)
        {
            curves.Add(
                new(
                    SpectrumCurves.Of("pigment's", now.Spectra.PigmentWPerNm, 100 / peak, LineMark.Dashed),
                    palette.LitPigment
                )
            );
        }
        curves.Add(
            new(SpectrumCurves.Of("now", now.Spectra.LitWPerNm, 100 / peak, LineMark.Solid), palette.Lit.Bold)
        );
        CurvePicture.Paint(
            leaf,
            area,
            Axis.Linear("nm", FirstVisibleNm, WavelengthGrid.LastNm),
            Axis.Linear(
                "bare peak = 100",
                0,
                Math.Max(StepOfTop, Math.Ceiling(100 * top / StepOfTop) * StepOfTop)
            ),
            curves,
            palette.LitFaint
        );
    }
}
