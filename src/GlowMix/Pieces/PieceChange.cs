using System.Globalization;
using GlowMix.Materials;

namespace GlowMix.Pieces;

/// <summary>
/// A piece with one of its numbers changed, exactly as the changed recipe would give it, without reading the recipe again: a
/// search tries thousands.
/// </summary>
internal static class PieceChange
{
    /// <summary>The piece with another number.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="keyPath">The full path of a choosable key that holds a number.</param>
    /// <param name="value">A number that the recipe could hold.</param>
    /// <exception cref="ArgumentException">No such key.</exception>
    public static Piece With(this Piece piece, string keyPath, double value) =>
        keyPath.Split('.') switch
        {
            ["led", "drive_ma"] => piece with { DriveMa = value },
            ["layers", var name, var key] => piece with
            {
                Layers =
                [
                    .. piece.Layers.Select(layer =>
                        layer.Name == name ? With(layer, key, value, piece.Resin) : layer
                    ),
                ],
            },
            _ => throw Unknown(keyPath),
        };

    /// <summary>Share of a mix's volume that is pigment.</summary>
    public static double VolumeFractionOf(double loadingPercent, Pigment pigment, Resin resin) =>
        Optics.Grains.VolumeFraction.FromMass(
            loadingPercent / 100,
            pigment.DensityGPerCm3.Value,
            resin.DensityMixGPerCm3.Value
        );

    private static PieceLayer With(PieceLayer layer, string key, double value, Resin resin) =>
        key switch
        {
            "depth_mm" => layer with { DepthMm = value },
            "grain_median_um" => layer with { GrainMedianUm = value },
            "loading_percent" => Loaded(layer, value, resin),
            "loading_g_per_100g_resin" => Loaded(layer, 100 * value / (100 + value), resin),
            _ => throw Unknown(key),
        };

    private static PieceLayer Loaded(PieceLayer layer, double percent, Resin resin) =>
        layer with
        {
            LoadingPercent = percent,
            VolumeFraction = VolumeFractionOf(
                percent,
                layer.Pigment
                    ?? throw new ArgumentException($"Layer '{layer.Name}' is clear.", nameof(layer)),
                resin
            ),
        };

    private static ArgumentException Unknown(string key) =>
        new(
            string.Create(CultureInfo.InvariantCulture, $"'{key}' is no number that a search may turn."),
            nameof(key)
        );
}
