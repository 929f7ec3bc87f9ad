using GlowMix.Afterglow;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>
/// Trap ladders fitted to the shelf's sheets beforehand, which travel along in data/derived. Each sheet is found by a hash of
/// every number that its fit follows from: another sheet, sample or pigment finds nothing and is fitted.
/// </summary>
internal static class DerivedLadders
{
    /// <summary>Name of the file that would hold this sheet's ladders, without folder and ending.</summary>
    public static string KeyOf(SheetSample sample)
    {
        var (pigment, resin, backing, lamp) = sample;
        var sheet = pigment.Sheet;
        var hash = new InputHash()
            .Add(pigment.RefractiveIndex.Value)
            .Add(pigment.AbsorptionPerMm.Value)
            .Add(pigment.EmissionPeakNm.Value)
            .Add(pigment.EmissionFwhmNm.Value)
            .Add(pigment.PhotoluminescenceYield.Value)
            .Add(pigment.DensityGPerCm3.Value)
            .Add(pigment.GrainMedianUm.Value)
            .Add(pigment.GrainGsd.Value)
            .Add(pigment.TrapCapacityPerG.Value)
            .Add(pigment.TrapFrequencyFactorPerS.Value)
            .Add(pigment.TrapCaptureActivationEv.Value)
            .Add(pigment.TrapWeightExponent.Value)
            .Add(pigment.TrapEmptyingByLight.Value)
            .Add(resin.RefractiveIndex.Value)
            .Add(resin.AbsorptionPerMm.Value)
            .Add(resin.DensityMixGPerCm3.Value)
            .Add(backing.ReflectanceIn(resin.RefractiveIndex.Value))
            .Add(lamp.RelativeSpectrum.Value)
            .Add(sheet.LoadingPercent.Value)
            .Add(sheet.DepthMm.Value)
            .Add(sheet.IlluminanceLx.Value)
            .Add(sheet.Minutes.Value)
            .Add(sheet.TemperatureC.Value);
        foreach (var point in sheet.Points.Value)
        {
            hash.Add(point.Minutes).Add(point.LuminanceMcdM2);
        }
        return hash.ToString();
    }

    /// <summary>The ladders that travel along, to the last digit as they would be fitted; none for a sheet that is not known.</summary>
    public static (Variation Variation, LadderFitResult Fit)[] Find(
        SheetSample sample,
        TrapConstants constants
    )
    {
        if (ShippedTable.Find($"derived/ladders/{KeyOf(sample)}") is not { } table)
        {
            return [];
        }
        var points = sample.Pigment.Sheet.Points.Value;
        var fits = new (Variation, LadderFitResult)[table.Count];
        for (int row = 0; row < fits.Length; row++)
        {
            var rungs = new double[TrapLadder.RungCount];
            for (int k = 0; k < rungs.Length; k++)
            {
                rungs[k] = table[$"rung_{k + 1}_per_mm3"][row];
            }
            var residuals = new double[points.Length];
            for (int i = 0; i < residuals.Length; i++)
            {
                residuals[i] = table[$"residual_{i + 1}_percent"][row];
            }
            fits[row] = (
                new(table["absorption_factor"][row], table["smoothing"][row]),
                new()
                {
                    Ladder = new(rungs, table["trapping_efficiency"][row], constants),
                    ResidualsPercent = [.. residuals],
                    ReachesMinutes = sample.Pigment.Sheet.ReachMinutes,
                }
            );
        }
        return fits;
    }
}
