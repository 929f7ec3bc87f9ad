namespace GlowMix.Predictions;

/// <summary>A cut through the pour: what charging light and traps do over its depth, in the likely run. For pictures.</summary>
/// <param name="DepthMm">All layers together, mm over the board.</param>
/// <param name="PackageHeightMm">How far the LED packages stand up from the board, mm.</param>
/// <param name="Layers">From the board upwards.</param>
/// <param name="Slices">
/// Of the layers with pigment, from the board upwards; clear layers, and what grains have sunk
/// out of, have none: light passes them nearly unchanged, and they hold no traps.
/// </param>
public sealed record PieceCut(
    double DepthMm,
    double PackageHeightMm,
    IReadOnlyList<CutLayer> Layers,
    IReadOnlyList<CutSlice> Slices
)
{
    internal static PieceCut Of(Run run)
    {
        var (light, glow) = (run.Light, run.Glow);
        var cells = light.Pour.Cells;
        double[] taken = light.LedAbsorbedPerSMm3;
        double most = taken.Length > 0 ? taken.Max() : 0;
        double[] filled = glow?.FilledPercentOfCells() ?? new double[cells.Count];
        return new(
            light.Piece.DepthMm,
            light.Piece.Led.PackageHeightMm.Value,
            [
                .. light.Piece.Layers.Select(l => new CutLayer(
                    l.Name,
                    l.DepthMm,
                    l.Pigment?.Name,
                    l.LoadingPercent
                )),
            ],
            [
                .. cells.Select(
                    (cell, c) =>
                        new CutSlice(
                            cell.FromMm,
                            cell.ToMm,
                            most > 0 ? taken[c] / most : 0,
                            filled[c],
                            100 * light.Pour.Stack.Layers[cell.Layer].VolumeFraction
                        )
                ),
            ]
        );
    }
}
