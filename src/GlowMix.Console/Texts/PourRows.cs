using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>What is poured: loading, depth, masses, and what the recipe left open.</summary>
internal sealed class PourRows(Prediction prediction, IRowSheet sheet)
{
    private readonly FigureValues figures = prediction.Figures;

    /// <summary>Prints them.</summary>
    public void Print()
    {
        string label = "Loading";
        foreach (var loading in prediction.Loadings)
        {
            sheet.Row(
                label,
                $"{loading.Layer}: {Digits.Significant(loading.MassPercent, 3)} % by mass, "
                    + $"{Digits.Significant(loading.GramsPer100GResin, 3)} g per 100 g of resin, "
                    + $"{Digits.Significant(loading.VolumePercent, 2)} % by volume"
            );
            label = "";
        }
        string packages =
            prediction.DepthOverPackagesMm > 0
                ? $"{Digits.Plain(prediction.DepthOverPackagesMm)} mm over the packages"
                : "the packages stay in air";
        sheet.Row("Depth", $"{Digits.Plain(prediction.DepthOverBoardMm)} mm over the board, {packages}");
        Masses();
        Pouring();
        if (prediction.CalibratedBy is { } readings)
        {
            sheet.Row("Calibrated", $"by {readings}");
        }
        if (prediction.TakenAs.Count > 0)
        {
            sheet.Row("Taken as", string.Join(", ", prediction.TakenAs));
        }
    }

    private void Masses()
    {
        if (figures["casting.part_a_g"] is not double partA)
        {
            return;
        }
        string volume = figures["casting.mix_volume_ml"] is double ml
            ? $"{Digits.Significant(ml, 3)} ml: "
            : "";
        string pigment = figures["casting.pigment_g"] is > 0 and double g
            ? $", pigment {Digits.Grams(g)}"
            : "";
        string cost = figures["casting.cost"] is double price ? $"; cost {Digits.Fixed(price, 2)}" : "";
        sheet.Row(
            "Mix",
            $"{volume}part A {Digits.Grams(partA)}, part B {Digits.Grams(figures["casting.part_b_g"])}{pigment}{cost}"
        );
    }

    private void Pouring()
    {
        var parts = new List<string>();
        if (figures["casting.viscosity_mpa_s"] is double viscosity)
        {
            parts.Add($"{Digits.Two(viscosity)} mPa·s");
        }
        bool hasGrains = prediction.Loadings.Any(l => l.MassPercent > 0);
        if (hasGrains && figures["casting.settled_mm"] is double settled)
        {
            parts.Add($"grains settle {Digits.Two(settled)} mm");
        }
        if (figures["casting.degas_window_min"] is double window)
        {
            parts.Add(window > 0 ? $"{Duration.Of(window)} left to degas and pour" : "no time left to pour");
        }
        if (parts.Count > 0)
        {
            sheet.Row("Pour", string.Join("; ", parts));
        }
    }
}
