using GlowMix.Casting;

namespace GlowMix.Predictions;

/// <summary>Figures of the pour.</summary>
internal static class CastingFigures
{
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
}
