using System.Globalization;

namespace GlowMix.Casting;

/// <summary>What can spoil test tiles, heaviest first.</summary>
internal static class TileWarnings
{
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
                        $"{layer}: stirring twice and vacuum take {mix.PotLifeMin - mix.DegasWindowMin:0} min, the pot life is {mix.PotLifeMin:0} min: {BatchWarnings.Cure(tiles.Mixing with { StirringMin = 2 * tiles.Mixing.StirringMin }, mix.PotLifeMin)}"
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
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
