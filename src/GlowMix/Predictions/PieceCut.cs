using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>A cut through the pour: what blue light and traps do over its depth, in the likely run. For pictures.</summary>
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
    // What charges an aluminate or a sulfide and comes from a white LED's die.
    private const int BlueFromNm = 400;
    private const int BlueToNm = 500;

    internal static PieceCut Of(Run run)
    {
        var (light, glow) = (run.Light, run.Glow);
        var cells = light.Pour.Cells;
        double[] blue = BlueIn(light);
        double most = blue.Length > 0 ? blue.Max() : 0;
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
                            cell.OverPackages && most > 0 ? blue[c] / most : null,
                            filled[c],
                            100 * light.Pour.Stack.Layers[cell.Layer].VolumeFraction
                        )
                ),
            ]
        );
    }

    // Fluence of the piece's own LEDs in each cell, in any unit.
    private static double[] BlueIn(PieceLight light)
    {
        var blue = new double[light.Pour.Cells.Count];
        if (light.Under is not { } under || light.Pour.OverPackages is not { } response)
        {
            return blue;
        }
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            if (WavelengthGrid.NmAt(i) is >= BlueFromNm and <= BlueToNm)
            {
                var fluence = response.FluenceAt(i);
                for (int c = 0; c < blue.Length; c++)
                {
                    blue[c] += under.UpwardWPerNm[i] * fluence[c];
                }
            }
        }
        return blue;
    }
}
