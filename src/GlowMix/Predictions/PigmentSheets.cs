using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Optics.Pour;

namespace GlowMix.Predictions;

/// <summary>Solves the sample of a pigment's sheet, so that the ladder behind the sheet can be fitted.</summary>
internal sealed class PigmentSheets(Shelf shelf, OpticsShelf optics)
{
    /// <summary>The materials that a sheet's sample is made of.</summary>
    /// <returns>Null, with the problems, if one is not to be had.</returns>
    public (SheetSample? Sample, ImmutableArray<Problem> Problems) SampleOf(Pigment pigment)
    {
        var sheet = pigment.Sheet;
        var resin = shelf.Resin(sheet.Resin.Value);
        var backing = shelf.Board(sheet.Backing.Value);
        var lamp = shelf.Lamp(sheet.Lamp.Value);
        string file = pigment.Name;
        ImmutableArray<Problem> problems =
        [
            .. resin.Problems,
            .. backing.Problems,
            .. lamp.Problems,
            .. new[] { resin.NotFound, backing.NotFound, lamp.NotFound }
                .OfType<string>()
                .Select(text => new Problem(file, null, $"the sheet's sample: {text}")),
        ];
        return resin.Material is null || backing.Material is null || lamp.Material is null
            ? (null, problems)
            : (new(pigment, resin.Material, backing.Material, lamp.Material), problems);
    }

    /// <summary>The sheet with what its sample absorbs and sends out.</summary>
    public SolvedSheet Solve(SheetSample sample, double absorptionFactor) =>
        Solve(
            sample,
            GrainsOf(sample).WithAbsorptionScaled(absorptionFactor),
            sample.Pigment.PhotoluminescenceYield.Value
        );

    /// <summary>The sheet, were the pigment's grains and yield others.</summary>
    public SolvedSheet Solve(SheetSample sample, GrainTable grains, double yield)
    {
        var pigment = sample.Pigment;
        var sheet = pigment.Sheet;
        double phi = VolumeFraction.FromMass(
            sheet.LoadingPercent.Value / 100,
            pigment.DensityGPerCm3.Value,
            sample.Resin.DensityMixGPerCm3.Value
        );
        var resin = optics.Of(sample.Resin);
        var layer = new PourLayer(sheet.DepthMm.Value, phi, grains, pigment.EmissionPerNm, yield);
        var pour = PourOptics.Of(new PourStack(resin, [layer], PackageHeightMm: 0));
        var floor = sample.Backing.ReflectanceIn(resin.Index);
        var lightWPerMm2Nm = 1e-6 * sample.Lamp.WPerM2NmAtLux(sheet.IlluminanceLx.Value);
        var weights = GlowWeights.McdPerM2(GlowEscape.Of(pour, floor), pour, Photometry.LmPerW);
        return new(
            sheet.Points.Value,
            sheet.Minutes.Value,
            sheet.TemperatureC.Value,
            [.. PigmentExcitation.FromSky(pour, lightWPerMm2Nm, floor)],
            [.. weights],
            pigment.TrapCapacityPerMm3
        );
    }

    private GrainTable GrainsOf(SheetSample sample)
    {
        var pigment = sample.Pigment;
        return optics
            .GrainsOf(pigment, sample.Resin, pigment.GrainMedianUm.Value, pigment.GrainGsd.Value)
            .Whole;
    }
}
