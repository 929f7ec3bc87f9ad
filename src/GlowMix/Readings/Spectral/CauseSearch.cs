using System.Collections.Immutable;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Readings.Fit;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>
/// Turns one number of a piece after the other until its light comes nearest to a reading. Shapes are compared, not levels: a
/// spectrometer's distance is not known.
/// </summary>
internal sealed class CauseSearch
{
    // Steps of the lattice on which fits solve pours: nothing is interpolated.
    private static readonly int[] Steps = [-5, -4, -3, -2, -1, 1, 2, 3, 4, 5];
    private const double PourStep = 0.12;
    private const double LeastExplained = 0.15;
    private const double FromNm = 400;
    private const double ToNm = 720;

    private readonly Piece piece;
    private readonly Predictor predictor;
    private readonly FitPours pours;
    private readonly double[] read;

    public CauseSearch(ReadingFigures reading, Piece piece, Predictor predictor)
    {
        (this.piece, this.predictor) = (piece, predictor);
        pours = new(predictor.Optics);
        read = Shape(ResampledSpectrum.From(reading.Reading.Spectrum).Spectrum);
        DifferenceNow = Difference(LightOf(piece, _ => { }));
    }

    /// <summary>Share of the light at other wavelengths, as it stands.</summary>
    public double DifferenceNow { get; }

    /// <summary>The causes that explain something, best first.</summary>
    public ImmutableArray<CauseFound> Found()
    {
        if (DifferenceNow <= 0 || piece.DepthOverPackagesMm <= 0)
        {
            return [];
        }
        var causes = Causes().ToArray();
        var found = new CauseFound?[causes.Length];
        Parallel.For(0, causes.Length, i => found[i] = Best(causes[i].Words, causes[i].Turned));
        return
        [
            .. found
                .OfType<CauseFound>()
                .Where(c => c.LeftShare <= 1 - LeastExplained)
                .OrderBy(c => c.LeftShare),
        ];
    }

    private IEnumerable<(string Words, Func<int, (double Factor, Spectrum Light)?> Turned)> Causes()
    {
        foreach (
            string pigment in piece.Layers.Where(l => l.HasPigment).Select(l => l.Pigment!.Name).Distinct()
        )
        {
            yield return (
                $"absorption of {pigment}'s grains",
                step =>
                {
                    double factor = FitLattice.StrengthAt(step);
                    return (
                        factor,
                        LightOf(piece, d => d.Pigments.First(p => p.Name == pigment).Strength = factor)
                    );
                }
            );
            yield return (
                $"yield of {pigment}",
                step =>
                {
                    double factor = Math.Exp(PourStep * step);
                    double now = piece
                        .Layers.First(l => l.Pigment?.Name == pigment)
                        .Pigment!.PhotoluminescenceYield.Value;
                    return factor * now > 1
                        ? null
                        : (
                            factor,
                            LightOf(piece, d => d.Pigments.First(p => p.Name == pigment).Yield = factor * now)
                        );
                }
            );
        }
        yield return (
            "light that the package turns into longer bands",
            step =>
            {
                double factor = FitLattice.StrengthAt(step);
                return (factor, LightOf(piece, d => d.Conversion = factor));
            }
        );
        yield return (
            $"absorption of {piece.Resin.Name}",
            step =>
            {
                double factor = FitLattice.ResinFactorAt(2 * step);
                return (factor, LightOf(piece, d => d.ResinFactor = factor));
            }
        );
        foreach (PieceLayer layer in piece.Layers)
        {
            yield return (
                $"depth of {layer.Name}",
                step => Poured(layer, $"layers.{layer.Name}.depth_mm", layer.DepthMm, step)
            );
            if (layer.HasPigment)
            {
                yield return (
                    $"loading of {layer.Name}",
                    step => Poured(layer, $"layers.{layer.Name}.loading_percent", layer.LoadingPercent, step)
                );
            }
        }
    }

    private (double Factor, Spectrum Light)? Poured(PieceLayer layer, string key, double now, int step)
    {
        double factor = Math.Exp(PourStep * step);
        double value = factor * now;
        if (key.EndsWith("loading_percent", StringComparison.Ordinal) && value > 80)
        {
            return null;
        }
        Piece changed = piece.With(key, value);
        return changed.DepthOverPackagesMm <= 0 ? null : (factor, LightOf(changed, _ => { }));
    }

    private CauseFound? Best(string words, Func<int, (double Factor, Spectrum Light)?> turned)
    {
        CauseFound? best = null;
        foreach (int step in Steps)
        {
            if (turned(step) is var (factor, light))
            {
                double left = Difference(light) / DifferenceNow;
                best = best is null || left < best.LeftShare ? new(words, factor, left) : best;
            }
        }
        return best;
    }

    private Spectrum LightOf(Piece changed, Action<FitDraft> turn)
    {
        var pigments = changed
            .Layers.Where(l => l.HasPigment)
            .Select(l => l.Pigment!)
            .DistinctBy(p => p.Name);
        var draft = new FitDraft(changed.Led, pigments);
        turn(draft);
        var state = new FitState(changed, changed.Led, pours, p => predictor.LadderOf(p).Fit!.Ladder!);
        double[] ratios = state.LogRatios(draft);
        Spectrum bare = PieceLight.BandsOf(changed).BareWPerNm;
        return Spectrum.FromIndex(i => bare[i] * Math.Exp(ratios[i]));
    }

    // Half the sum of what is too much and what is too little.
    private double Difference(Spectrum light)
    {
        double[] shape = Shape(light);
        double sum = 0;
        for (int i = 0; i < shape.Length; i++)
        {
            sum += Math.Abs(shape[i] - read[i]);
        }
        return sum / 2;
    }

    private static double[] Shape(Spectrum light)
    {
        var shape = new double[WavelengthGrid.Count];
        double sum = 0;
        for (int i = 0; i < shape.Length; i++)
        {
            shape[i] = WavelengthGrid.NmAt(i) is >= (int)FromNm and <= (int)ToNm ? light[i] : 0;
            sum += shape[i];
        }
        return [.. shape.Select(s => sum > 0 ? s / sum : 0)];
    }
}
