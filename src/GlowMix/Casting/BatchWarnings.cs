using System.Globalization;

namespace GlowMix.Casting;

/// <summary>What can spoil a batch, heaviest first.</summary>
internal static class BatchWarnings
{
    // A trade page on casting epoxies: slow below 18 °C, unsafe to cure below 15 °C.
    private const double ColdestMixC = 15;

    public static IEnumerable<BatchWarning> Of(BatchSheet sheet, double heaviestOnSheetG)
    {
        var list = new List<BatchWarning>();
        if (!sheet.HasMasses)
        {
            Add(
                "size-unknown",
                null,
                $"the recipe does not tell led.count, pour.length_mm and pour.width_mm, so the masses are for 100 g of A + B"
            );
        }
        foreach (var mix in sheet.Mixes)
        {
            var batch = mix.Batch;
            string layer = batch.Layer.Name;
            if (!batch.Pours)
            {
                Add(
                    "does-not-pour",
                    layer,
                    $"{layer} does not pour: grains fill {batch.PigmentVolumePercent:0} % of the mix, near the densest they pack"
                );
            }
            if (batch.DegasWindowMin <= 0)
            {
                Add(
                    "no-time-to-degas",
                    layer,
                    $"{layer}: stirring and vacuum take {sheet.Mixing.StirringMin + sheet.Mixing.VacuumMin:0} min, the pot life is {batch.PotLifeMin:0} min; {Cure(sheet.Mixing, batch.PotLifeMin)}"
                );
            }
            WarnOfDepth(layer, DeepestMm(sheet, batch));
            if (batch.IsHeavierThanSheet)
            {
                Add(
                    "heavier-than-sheet",
                    layer,
                    $"{layer}: {batch.ResinG:0} g of A + B is more than the {heaviestOnSheetG:0} g that the sheet tells a pot life for; it may set sooner and heat itself: share it out to {mix.Cups} cups, mixed one after the other"
                );
            }
            if (mix.Weighed is { } weighed)
            {
                WarnOfScale(layer, weighed);
            }
        }
        if (sheet.Mixing.TemperatureC < ColdestMixC)
        {
            Add(
                "too-cold",
                null,
                $"at {sheet.Mixing.TemperatureC:0.#} °C a casting epoxy may not cure (a trade page: not below 15 °C)"
            );
        }
        return list;

        void Add(string code, string? layer, FormattableString text) =>
            list.Add(new(code, layer, text.ToString(CultureInfo.InvariantCulture)));

        void WarnOfDepth(string layer, double depthMm)
        {
            if (sheet.Piece.Resin.MaxPourDepthMm?.Value is double most && depthMm > most)
            {
                Add(
                    "deeper-than-sheet",
                    layer,
                    $"{layer} is {depthMm:0.##} mm deep, the sheet allows {most:0.##} mm in one pour: it may heat itself, smoke and crack; pour it in {Math.Ceiling(depthMm / most):0}"
                );
            }
        }

        void WarnOfScale(string layer, WeighedBatch weighed)
        {
            if (weighed.IsTooSmall)
            {
                double pieces = Math.Ceiling(weighed.SmallestSafeMixG / (weighed.MixG / sheet.Pieces));
                string together =
                    pieces <= BatchSheet.MostPieces && pieces > sheet.Pieces
                        ? string.Create(CultureInfo.InvariantCulture, $" ({pieces:0} pieces at once)")
                        : "";
                Add(
                    "scale-too-coarse",
                    layer,
                    $"{layer}: {weighed.MixG:0.###} g is too small for this scale, whose step can put A : B {weighed.RatioDoubtPercent:0.#} % off (2 % at most); smallest safe batch is {Math.Ceiling(weighed.SmallestSafeMixG):0} g{together}"
                );
            }
            double? allowed = sheet
                .Piece.Recipe.Layers.FirstOrDefault(l => l.Name == layer)
                ?.LoadingTolerancePoints;
            double points = (weighed.HighLoadingPercent - weighed.LowLoadingPercent) / 2;
            if (points > allowed)
            {
                Add(
                    "loading-too-coarse",
                    layer,
                    $"{layer}: the scale's step leaves the loading open by ± {points:0.#} points, the recipe allows ± {allowed:0.##}"
                );
            }
        }
    }

    /// <summary>What to do where stirring and vacuum take longer than the pot life.</summary>
    public static string Cure(Mixing mixing, double potLifeMin)
    {
        double leftMin = Math.Floor(potLifeMin - mixing.StirringMin);
        return leftMin >= 1
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"shorten the vacuum to less than {leftMin:0} min, or take a slower resin"
            )
            : "take a slower resin";
    }

    // The top layer evens out a channel that does not lie level.
    private static double DeepestMm(BatchSheet sheet, LayerBatch batch)
    {
        bool isTop = batch.Layer.Name == sheet.Plan.Layers[^1].Layer.Name;
        return batch.Layer.DepthMm + (isTop ? (sheet.Piece.Recipe.Pour.RunsOutMm ?? 0) / 2 : 0);
    }
}
