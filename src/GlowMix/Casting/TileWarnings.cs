using System.Globalization;

namespace GlowMix.Casting;

/// <summary>What can spoil test tiles, heaviest first.</summary>
internal static class TileWarnings
{
    private const double MostLoadingErrorPercent = 5; // assumed: well below what pigments differ by

    public static IEnumerable<BatchWarning> Of(TestTiles tiles)
    {
        foreach (var mix in tiles.Mixes)
        {
            string layer = mix.Layer.Name;
            for (int i = 0; i < mix.Cups.Length; i++)
            {
                if (!mix.Cups[i].Batch.Pours)
                {
                    yield return new(
                        "does-not-pour",
                        layer,
                        Say(
                            $"{layer} of tile {i + 1} does not pour: grains fill {mix.Cups[i].Batch.PigmentVolumePercent:0} % of the mix, near the densest they pack"
                        )
                    );
                }
            }
            if (mix.DegasWindowMin <= 0)
            {
                yield return new(
                    "no-time-to-degas",
                    layer,
                    Say(
                        $"{layer}: stirring twice and vacuum take {mix.PotLifeMin - mix.DegasWindowMin:0} min, the pot life is {mix.PotLifeMin:0} min: mix one tile at a time"
                    )
                );
            }
            if (tiles.Piece.Resin.MaxPourDepthMm?.Value is double most && mix.Layer.DepthMm > most)
            {
                yield return new(
                    "deeper-than-sheet",
                    layer,
                    Say(
                        $"{layer} is {mix.Layer.DepthMm:0.##} mm deep, the sheet allows {most:0.##} mm in one pour: it may heat itself, smoke and crack"
                    )
                );
            }
            if (mix.Parts.IsTooSmall)
            {
                yield return new(
                    "scale-too-coarse",
                    layer,
                    Say(
                        $"{layer}: {mix.Parts.MixG:0.###} g is too small for this scale, whose step can put A : B {mix.Parts.RatioDoubtPercent:0.#} % off (2 % at most); smallest safe batch is {Math.Ceiling(mix.Parts.SmallestSafeMixG):0} g: mix that much and leave the rest over"
                    )
                );
            }
            double step = tiles.ScaleStepG / 2;
            var least = mix.Cups.Where(c => c.Batch.Layer.Loading != default).MinBy(c => c.PigmentG);
            if (least is not null && 100 * step > MostLoadingErrorPercent * least.PigmentG)
            {
                yield return new(
                    "loading-too-coarse",
                    layer,
                    Say(
                        $"{layer}: half a step of the scale is more than {MostLoadingErrorPercent:0} % of the {least.PigmentG:0.###} g of pigment in the least loaded tile; use a finer scale for the pigment"
                    )
                );
            }
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
