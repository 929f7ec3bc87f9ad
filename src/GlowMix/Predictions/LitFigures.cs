using GlowMix.Colour;
using GlowMix.LitState;

namespace GlowMix.Predictions;

/// <summary>Figures of the lit piece from one run.</summary>
internal static class LitFigures
{
    /// <returns>Whether the lit Ra is within its method's limit.</returns>
    public static bool Set(FigureValues.Builder figures, PieceLight light)
    {
        var bare = ColourFigures.Of(light.BareWPerNm);
        var lit = light.Under is null ? bare : ColourFigures.Of(light.LitWPerNm);
        int? count = light.Piece.Count;

        figures.Set("bare.cct_k", bare.CctK).Set("bare.duv", bare.Duv);
        figures.Set("bare.x", bare.ChromaticityX).Set("bare.y", bare.ChromaticityY);
        figures.Set("bare.ra", bare.Ra).Set("bare.r9", bare.R9);
        figures.Set("bare.flux_lm", count * bare.LuminousFluxLm);

        figures.Set("lit.cct_k", lit.CctK).Set("lit.duv", lit.Duv);
        figures.Set("lit.x", lit.ChromaticityX).Set("lit.y", lit.ChromaticityY);
        figures.Set("lit.u_prime", lit.UPrime).Set("lit.v_prime", lit.VPrime);
        figures.Set("lit.ra", lit.Ra).Set("lit.r9", lit.R9);
        figures.Set("lit.flux_lm", count * lit.LuminousFluxLm);
        figures.Set("lit.flux_kept_percent", 100 * lit.LuminousFluxLm / bare.LuminousFluxLm);
        figures.Set("lit.luminous_efficacy_lm_w", lit.LuminousEfficacyLmPerW);
        figures.Set("lit.scotopic_photopic_ratio", lit.ScotopicPhotopicRatio);
        figures.Set(
            "lit.green_share_percent",
            lit.LuminousFluxLm > 0
                ? 100 * Photometry.PhotopicLm(light.PigmentWPerNm) / lit.LuminousFluxLm
                : null
        );
        figures.Set("lit.shift_k", lit.CctK - bare.CctK);
        figures.Set(
            "lit.shift_u_prime_v_prime",
            lit.Chromaticity is { } after && bare.Chromaticity is { } before
                ? ColourDifference.UPrimeVPrime(before, after)
                : null
        );

        var blue = light.Under is null ? BlueBudget.InAir : light.Under.Budget;
        figures.Set("lit.blue_absorbed_by_pigment_percent", 100 * blue?.Pigment);
        figures.Set("lit.blue_absorbed_by_resin_percent", 100 * blue?.Resin);
        figures.Set("lit.blue_absorbed_by_board_percent", 100 * blue?.Board);
        figures.Set("lit.blue_taken_back_by_package_percent", 100 * blue?.Package);
        figures.Set("lit.blue_escaped_percent", 100 * blue?.Escaped);
        return lit.RaMeaningful;
    }
}
