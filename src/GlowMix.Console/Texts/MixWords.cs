using GlowMix.Casting;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Console.Texts;

/// <summary>What a batch sheet says of a mix, row by row.</summary>
internal sealed class MixWords(Piece piece, Mixing mixing, double scaleStepG)
{
    private const double HoursPerDay = 24;

    private readonly int decimals = DecimalsOf(scaleStepG);

    /// <summary>Grams as this scale shows them, without the unit.</summary>
    public string Grams(double grams) => Digits.Fixed(grams, decimals);

    /// <summary>'epoxy-clear-slow, A : B = 3 : 1 by mass'.</summary>
    public string Resin
    {
        get
        {
            var ratio = piece.Resin.MixRatio.Value;
            string told =
                $"A : B = {Digits.Plain(ratio.PartA)} : {Digits.Plain(ratio.PartB)} by {(ratio.IsByVolume ? "volume" : "mass")}";
            string byMass = ratio.IsByVolume
                ? $", {Digits.Significant(piece.Resin.MassShareOfPartA / (1 - piece.Resin.MassShareOfPartA), 3)} : 1 by mass"
                : "";
            return $"{piece.Resin.Name}, {told}{byMass}";
        }
    }

    /// <summary>'glow: 2.5 mm deep'.</summary>
    public static string LayerOf(CastingLayer layer) =>
        $"{layer.Name}, {Digits.Plain(layer.DepthMm)} mm deep";

    /// <summary>'20 % of the mix by mass, 25 g per 100 g of A + B, 7.2 % by volume'.</summary>
    public static string Loading(LayerBatch batch) =>
        $"{Digits.Significant(batch.Layer.Loading.PercentByMass, 3)} % of the mix by mass, "
        + $"{Digits.Significant(batch.Layer.Loading.GPer100GResin, 3)} g per 100 g of A + B, "
        + $"{Digits.Significant(batch.PigmentVolumePercent, 2)} % by volume";

    /// <summary>Whether it pours, and how far grains sink.</summary>
    public string Flow(LayerBatch batch)
    {
        string pours = batch.ViscosityMPaS is double viscosity
            ? $"{Digits.Two(viscosity)} mPa·s, pours"
            : "a paste, does not pour";
        if (batch.Layer.Pigment is not { } pigment || batch.Layer.Loading == default)
        {
            return pours;
        }
        string to = piece.Recipe.Pour.Face == Face.Down ? "face" : "board";
        return $"{pours}; {Digits.Plain(pigment.Grains.MedianUm)} µm grains sink {Digits.Two(batch.SettledMm)} of "
            + $"{Digits.Plain(batch.Layer.DepthMm)} mm to the {to}";
    }

    /// <summary>From stirring to the next pour.</summary>
    /// <param name="potLifeMin">Pot life, min.</param>
    /// <param name="windowMin">What is left of it after stirring and vacuum, min.</param>
    /// <param name="vesselMl">Room of the vacuum vessel; null without vacuum or masses.</param>
    public string Times(double potLifeMin, double windowMin, (double Least, double Most)? vesselMl)
    {
        string vessel = vesselMl is var (least, most)
            ? $" in a vessel of {Digits.Two(least)} to {Digits.Two(most)} ml (it foams)"
            : "";
        string vacuum = mixing.VacuumMin > 0 ? $"vacuum {Digits.Plain(mixing.VacuumMin)} min{vessel}; " : "";
        string pour =
            windowMin > 0
                ? $"{Digits.Two(windowMin)} of {Digits.Two(potLifeMin)} min pot life left to pour"
                : $"no time left to pour, the pot life is {Digits.Two(potLifeMin)} min";
        return $"stir {Digits.Plain(mixing.StirringMin)} min, scraping the sides; {vacuum}{pour}";
    }

    /// <summary>What the scale's step does to the ratio, and to the loading if there is one.</summary>
    public static string Scale(WeighedBatch weighed)
    {
        string low = Digits.Significant(weighed.LowLoadingPercent, 3);
        string high = Digits.Significant(weighed.HighLoadingPercent, 3);
        string loading =
            weighed.PigmentG > 0 ? $"; loading {(low == high ? low : $"{low} to {high}")} %" : "";
        string off = weighed.RatioDoubtPercent < 0.1 ? "0.1" : Digits.Two(weighed.RatioDoubtPercent);
        return $"A : B within {off} % ({Digits.Plain(WeighedBatch.MostRatioDoubtPercent)} % allowed){loading}";
    }

    /// <summary>How long until the next layer, or until it is cured.</summary>
    public string? Cure(bool isLast) =>
        isLast
            ? Hours(piece.Resin.CureFullH) is { } full
                ? $"leave it {full} to cure through"
                : null
            : Hours(piece.Resin.CureToTouchH) is { } touch
                ? $"next layer when this bears a touch, about {touch}"
                : null;

    private static string? Hours(Sourced<double>? hours) =>
        hours?.Value switch
        {
            null => null,
            >= 3 * HoursPerDay and double h => $"{Digits.Two(h / HoursPerDay)} days",
            double h => $"{Digits.Two(h)} h",
        };

    private static int DecimalsOf(double stepG)
    {
        int decimals = 0;
        for (double step = stepG; decimals < 4 && Math.Abs(step - Math.Round(step)) > 1e-6; step *= 10)
        {
            decimals++;
        }
        return decimals;
    }
}
