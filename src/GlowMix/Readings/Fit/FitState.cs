using System.Collections.Concurrent;
using System.Globalization;
using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>One poured piece, predicted again and again as a fit turns its materials. Safe to use from several threads.</summary>
internal sealed class FitState
{
    // A fit asks for the last few again and again, and for none of those before.
    private const int MostLights = 256;

    private readonly Piece piece;
    private readonly Led led;
    private readonly FitPours pours;
    private readonly Func<Pigment, TrapLadder> sheetLadderOf;
    private readonly string[] pigments;
    private readonly ConcurrentDictionary<(FitNode, string), Lazy<PieceLight>> lights = new();

    /// <param name="piece">As poured, of the materials as they stand.</param>
    /// <param name="led">Its LED, with the bands of the bare reading.</param>
    /// <param name="pours">Solved pours.</param>
    /// <param name="sheetLadderOf">The ladder behind a pigment's sheet.</param>
    public FitState(Piece piece, Led led, FitPours pours, Func<Pigment, TrapLadder> sheetLadderOf)
    {
        (this.piece, this.led, this.pours, this.sheetLadderOf) = (piece, led, pours, sheetLadderOf);
        pigments = [.. piece.Layers.Where(l => l.HasPigment).Select(l => l.Pigment!.Name).Distinct()];
    }

    /// <summary>Logarithm of lit over bare, sample by sample; 0 where the bare LED sends nothing.</summary>
    public double[] LogRatios(FitDraft draft) =>
        Interpolated(
            draft,
            light =>
            {
                var ratios = new double[WavelengthGrid.Count];
                for (int i = 0; i < ratios.Length; i++)
                {
                    double bare = light.BareWPerNm[i];
                    ratios[i] = bare > 0 ? Math.Log(Math.Max(1e-12, light.LitWPerNm[i] / bare)) : 0;
                }
                return ratios;
            }
        );

    /// <summary>Logarithms of the luminance, mcd/m², at some minutes.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="minutes">Time of darkness.</param>
    /// <param name="middleMinutes">Time whose rung the ladder's tilt leaves alone.</param>
    public double[] LogLuminances(FitDraft draft, IReadOnlyList<double> minutes, double middleMinutes) =>
        Interpolated(
            draft,
            light =>
            {
                var glow = PieceGlow.Of(light, p => draft.Of(p).LadderOf(sheetLadderOf(p), middleMinutes));
                return [.. minutes.Select(t => Math.Log(Math.Max(1e-12, glow.Photopic.LuminanceMcdM2(t))))];
            }
        );

    private double[] Interpolated(FitDraft draft, Func<PieceLight, double[]> valuesOf)
    {
        double[]? sum = null;
        foreach (var (node, weight) in FitLattice.Around(draft, pigments))
        {
            double[] values = valuesOf(LightAt(node, draft));
            sum ??= new double[values.Length];
            for (int i = 0; i < values.Length; i++)
            {
                sum[i] += weight * values[i];
            }
        }
        return sum!;
    }

    private PieceLight LightAt(FitNode node, FitDraft draft)
    {
        string key = string.Join(
            '|',
            EntriesOf(draft.Matrix())
                .Concat(draft.ShareShifts)
                .Concat(pigments.Select(name => draft.Pigments.First(p => p.Name == name).Yield))
                .Select(v => v.ToString("R", CultureInfo.InvariantCulture))
        );
        if (lights.Count > MostLights)
        {
            lights.Clear();
        }
        return lights.GetOrAdd((node, key), _ => new(() => Light(node, draft))).Value;
    }

    private static double[] EntriesOf(ReturnMatrix m) =>
        [m[0, 0], m[1, 0], m[2, 0], m[1, 1], m[2, 1], m[2, 2]];

    private PieceLight Light(FitNode node, FitDraft draft)
    {
        var pour = pours.Of(piece, node);
        return PieceLight.Of(
            draft.Applied(piece, led),
            pigments.Length == 0 ? pour : WithYields(pour, draft)
        );
    }

    private PourOptics WithYields(PourOptics pour, FitDraft draft)
    {
        double heightMm = 0;
        var yields = new double[pour.Stack.Layers.Count];
        for (int i = 0; i < yields.Length; i++)
        {
            var slice = pour.Stack.Layers[i];
            double middleMm = heightMm + (slice.DepthMm / 2);
            heightMm += slice.DepthMm;
            if (slice.HasPigment)
            {
                var pigment = draft.Of(PigmentAt(middleMm));
                // The yield of the layer's grains keeps its proportion to that of the file's.
                double share = slice.Yield / pigment.Pigment.PhotoluminescenceYield.Value;
                yields[i] = Math.Min(1, pigment.Yield * share);
            }
        }
        return pour.WithYields(yields);
    }

    private Pigment PigmentAt(double heightMm)
    {
        double topMm = 0;
        return piece
            .Layers.First(layer =>
            {
                topMm += layer.DepthMm;
                return heightMm < topMm;
            })
            .Pigment!;
    }
}
