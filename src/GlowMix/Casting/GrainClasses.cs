using System.Collections.Immutable;
using GlowMix.Afterglow;
using MathNet.Numerics.Distributions;

namespace GlowMix.Casting;

/// <summary>Grains of a log-normal size distribution by mass, in five classes of a fifth of the mass each. Immutable.</summary>
public sealed class GrainClasses
{
    /// <summary>Number of classes.</summary>
    public const int Count = 5;

    /// <param name="medianUm">Median diameter by mass, µm.</param>
    /// <param name="gsd">Geometric standard deviation, 1 (all alike) to 10.</param>
    public GrainClasses(double medianUm, double gsd)
    {
        MedianUm = Demand.Positive(medianUm, nameof(medianUm), "µm");
        double sigma = Math.Log(Demand.Within(gsd, 1, 10, nameof(gsd), ""));
        var diametersUm = ImmutableArray.CreateBuilder<double>(Count);
        double finerUm = 0;
        for (int i = 0; i < Count; i++)
        {
            // Of grains that are nearly alike rounding must not make the coarser class the finer one.
            finerUm = sigma == 0 ? medianUm : Math.Max(finerUm, RootMeanSquareUm(i, sigma));
            diametersUm.Add(finerUm);
        }
        DiametersUm = diametersUm.MoveToImmutable();
    }

    /// <summary>Median diameter by mass, µm.</summary>
    public double MedianUm { get; }

    /// <summary>
    /// Root mean square diameter of each class by mass, µm, finest first: speeds of fall go with the square, so that the five
    /// fall on average as the whole distribution does.
    /// </summary>
    public ImmutableArray<double> DiametersUm { get; }

    // ∫ d² over a log-normal between two quantiles, completing the square: exp(2σ²) (Φ(z₂ − 2σ) − Φ(z₁ − 2σ)).
    private double RootMeanSquareUm(int index, double sigma)
    {
        double Below(double quantile) =>
            quantile switch
            {
                0 => 0,
                1 => 1,
                _ => Normal.CDF(0, 1, Normal.InvCDF(0, 1, quantile) - (2 * sigma)),
            };
        double share = Below((index + 1.0) / Count) - Below((double)index / Count);
        return MedianUm * Math.Exp(sigma * sigma) * Math.Sqrt(share * Count);
    }
}
