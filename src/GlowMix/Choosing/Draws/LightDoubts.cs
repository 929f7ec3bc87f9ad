using GlowMix.Pieces;

namespace GlowMix.Choosing.Draws;

/// <summary>What is in doubt of the light: the LEDs' own, and that of the lamps that charge.</summary>
internal static class LightDoubts
{
    /// <summary>What a lamp may send below its table, as a share of the level it begins with, two standard deviations up. Assumed.</summary>
    private const double UnknownLevel = 1;

    /// <summary>The LEDs, and the face that their light is spread over.</summary>
    public static void AddLeds(DoubtList list, Piece piece)
    {
        double fluxLm = piece.Led.FluxLm.Value;
        list.Add(
            CauseTexts.LedLight(piece.Led.Name),
            Spread.Of(piece.Led.FluxLm.Doubt, fluxLm, 0),
            (draft, v) => draft.FluxFactor = v / fluxLm
        );
        list.AddWithin(
            CauseTexts.LedLight(piece.Led.Name),
            piece.DriveMa,
            piece.DriveMa * piece.Recipe.Led.DriveTolerancePercent / 100,
            0,
            (draft, v) => draft.DriveMa = v,
            piece.Led.MaxMa.Value
        );
        if (piece.HasSize)
        {
            list.AddWithin(
                CauseTexts.Size,
                piece.LengthMm!.Value,
                piece.Recipe.Pour.LengthToleranceMm,
                0,
                (draft, v) => draft.LengthMm = v
            );
            list.AddWithin(
                CauseTexts.Size,
                piece.WidthMm!.Value,
                piece.Recipe.Pour.WidthToleranceMm,
                0,
                (draft, v) => draft.WidthMm = v
            );
        }
    }

    /// <summary>The charge; none without pigment.</summary>
    public static void AddCharge(DoubtList list, Piece piece)
    {
        if (!piece.HasPigment)
        {
            return;
        }
        for (int i = 0; i < piece.Recipe.Charge.Steps.Length; i++)
        {
            int step = i;
            var told = piece.Recipe.Charge.Steps[i];
            double? percent = told.IlluminanceTolerancePercent ?? told.IrradianceTolerancePercent;
            list.AddWithin(CauseTexts.Lamps, 1, percent / 100, 0, (draft, v) => draft.LampFactors[step] = v);
        }
        foreach (
            var lamp in piece.Steps.Select(s => s.Lamp).Where(l => l?.LacksNearUltraviolet == true).Distinct()
        )
        {
            int[] steps =
            [
                .. Enumerable.Range(0, piece.Steps.Length).Where(i => piece.Steps[i].Lamp == lamp),
            ];
            list.Add(
                CauseTexts.NearUltraviolet(lamp!.Name),
                Spread.Between(0, 0, UnknownLevel, 0),
                (draft, v) =>
                {
                    foreach (int step in steps)
                    {
                        draft.UnknownLevels[step] = v;
                    }
                }
            );
        }
    }
}
