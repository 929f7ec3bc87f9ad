using GlowMix.Pieces;

namespace GlowMix.Choosing.Draws;

/// <summary>What is in doubt of how grains settle while a pour gels.</summary>
internal static class SettlingDoubts
{
    private const double LeastFlow = 0.1; // of what a resin's sheet tells
    private const double LeastMixingC = 0;
    private const double MostMixingC = 80;

    /// <summary>None where nothing settles.</summary>
    public static void Add(DoubtList list, Piece piece)
    {
        if (!piece.HasPigment || !piece.IsSettled)
        {
            return;
        }
        var resin = piece.Resin;
        var viscosity = resin.Viscosities.FirstOrDefault(v => !v.Doubt.IsNone) ?? resin.Viscosities[0];
        list.Add(
            CauseTexts.Pouring,
            Spread.Of(viscosity.Doubt, viscosity.Value.MPaS, LeastFlow * viscosity.Value.MPaS),
            (draft, v) => draft.ViscosityFactor = v / viscosity.Value.MPaS
        );
        var potLife = resin.PotLives.FirstOrDefault(p => !p.Doubt.IsNone) ?? resin.PotLives[0];
        list.Add(
            CauseTexts.Pouring,
            Spread.Of(potLife.Doubt, potLife.Value.Minutes, LeastFlow * potLife.Value.Minutes),
            (draft, v) => draft.PotLifeFactor = v / potLife.Value.Minutes
        );
        list.Add(
            CauseTexts.Pouring,
            Spread.Of(resin.GelTimeMin.Doubt, resin.GelTimeMin.Value, LeastFlow * resin.GelTimeMin.Value),
            (draft, v) => draft.GelTimeMin = v
        );
        list.AddWithin(
            CauseTexts.Pouring,
            piece.MixingTemperatureC,
            piece.Recipe.Mixing.TemperatureToleranceC,
            LeastMixingC,
            (draft, v) => draft.MixingTemperatureC = v,
            MostMixingC
        );
    }
}
