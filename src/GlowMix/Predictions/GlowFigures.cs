using GlowMix.Colour;

namespace GlowMix.Predictions;

/// <summary>Figures of the dark piece from one run.</summary>
internal static class GlowFigures
{
    /// <summary>End of decay in ISO 16069 and UNE 23035-1 (Alcón et al. 2011, Color Res. Appl. 36, 383, abstract), mcd/m².</summary>
    public const double StandardLimitMcdPerM2 = 0.3;

    /// <summary>Minutes after the last light at which the glow's colour is told.</summary>
    public const double ColourMinutes = 10;

    private const double McdPerCd = 1000;

    public static void Set(FigureValues.Builder figures, PieceGlow glow, double limitMcdPerM2)
    {
        foreach (double minutes in FigureCatalogue.Minutes)
        {
            double photopic = glow.Photopic.LuminanceMcdM2(minutes);
            double scotopic = glow.Scotopic.LuminanceMcdM2(minutes);
            double mesopic = McdPerCd * Mesopic.LuminanceCdPerM2(photopic / McdPerCd, scotopic / McdPerCd);
            figures.Set("afterglow.luminance_mcd_m2", minutes, photopic);
            figures.Set("afterglow.scotopic_luminance_mcd_m2", minutes, scotopic);
            figures.Set("afterglow.mesopic_luminance_mcd_m2", minutes, mesopic);
        }
        figures.Set("afterglow.minutes_to_0_3_mcd_m2", glow.Photopic.MinutesUntil(StandardLimitMcdPerM2));
        figures.Set("afterglow.minutes_to_limit", glow.Photopic.MinutesUntil(limitMcdPerM2));
        figures.Set("afterglow.capacity_filled_percent", glow.CapacityFilledPercent);
        figures.Set("afterglow.capacity_filled_bottom_percent", glow.CapacityFilledBottomPercent);
        figures.Set("afterglow.capacity_filled_surface_percent", glow.CapacityFilledSurfacePercent);
        figures.Set("afterglow.charge_minutes_to_90_percent", glow.ChargeMinutesTo90Percent);
        var point = ColourPoint.Of(glow.EmittedWPerNmMm2(ColourMinutes));
        figures.Set("afterglow.x", point.Chromaticity?.X).Set("afterglow.y", point.Chromaticity?.Y);
    }
}
