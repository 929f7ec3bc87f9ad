using GlowMix.Casting;
using GlowMix.Pieces;

namespace GlowMix.Predictions;

/// <summary>Figures of the pour.</summary>
internal static class CastingFigures
{
    /// <summary>The pour of a piece, as it is mixed.</summary>
    public static CastingPlan PlanOf(Piece piece)
    {
        var resin = piece.Resin;
        return CastingPlan.Of(
            new CastingPour
            {
                LengthMm = piece.LengthMm,
                WidthMm = piece.WidthMm,
                PackageCount = piece.Count,
                PackageLengthMm = piece.Led.PackageLengthMm.Value,
                PackageWidthMm = piece.Led.PackageWidthMm.Value,
                PackageHeightMm = piece.Led.PackageHeightMm.Value,
            },
            [.. piece.Layers.Select(LayerOf)],
            new CastingResin(
                resin.DensityMixGPerCm3.Value,
                resin.MassShareOfPartA,
                new ResinFlow(
                    [.. resin.Viscosities.Select(v => v.Value)],
                    [.. resin.PotLives.Select(p => p.Value)],
                    resin.GelTimeMin.Value
                )
            ),
            new Mixing
            {
                TemperatureC = piece.MixingTemperatureC,
                WastePercent = piece.WastePercent,
                VacuumMin = piece.VacuumMin,
                ResinPerKg = piece.Recipe.Prices.ResinPerKg,
                PigmentPerKg = piece.Recipe.Prices.PigmentPerKg,
            }
        );
    }

    public static void Set(FigureValues.Builder figures, CastingPlan plan)
    {
        bool pigmented = plan.Layers.Any(l => l.Layer.Pigment is not null);
        figures.Set("casting.mix_volume_ml", plan.MixVolumeMl);
        figures.Set("casting.part_a_g", plan.PartAG).Set("casting.part_b_g", plan.PartBG);
        figures.Set("casting.pigment_g", plan.PigmentG);
        figures.Set("casting.pigment_g_per_100g_resin", pigmented ? plan.PigmentGPer100GResin : null);
        figures.Set("casting.pigment_volume_percent", pigmented ? plan.PigmentVolumePercent : null);
        figures.Set("casting.viscosity_mpa_s", plan.ViscosityMPaS);
        figures.Set("casting.settled_mm", pigmented ? plan.SettledMm : null);
        figures.Set("casting.degas_window_min", plan.DegasWindowMin);
        figures.Set("casting.cost", plan.Cost);
    }

    private static CastingLayer LayerOf(PieceLayer layer) =>
        new(
            layer.Name,
            layer.DepthMm,
            layer.Pigment is { } pigment
                ? new CastingPigment(
                    pigment.DensityGPerCm3.Value,
                    new GrainClasses(layer.GrainMedianUm, layer.GrainGsd),
                    GrainPacking.Crushed
                )
                : null,
            PigmentLoading.FromPercentByMass(layer.LoadingPercent)
        );
}
