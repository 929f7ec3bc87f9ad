using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>A few points of a curve, ascending; beyond them the value at the end is kept.</summary>
/// <param name="Points">At least one.</param>
public sealed record PointTable(ImmutableArray<CurvePoint> Points)
{
    /// <summary>On the straight line between the points.</summary>
    public double Linear(double at) => Between(at, x => x, y => y, y => y);

    /// <summary>On the straight line between the logarithms of the values, which must be above zero.</summary>
    public double LogLinear(double at) => Between(at, x => x, Math.Log, Math.Exp);

    /// <summary>On the straight line over the logarithm of the abscissa, which must be above zero.</summary>
    public double LinearOverLog(double at) => Between(at, Math.Log, y => y, y => y);

    /// <summary>The straight line at every wavelength of the model; abscissa in nm.</summary>
    public Spectrum LinearOnGrid() => Spectrum.FromNm(Linear);

    /// <summary>The straight line through the logarithms at every wavelength of the model; abscissa in nm.</summary>
    public Spectrum LogLinearOnGrid() => Spectrum.FromNm(LogLinear);

    private double Between(
        double at,
        Func<double, double> abscissa,
        Func<double, double> forth,
        Func<double, double> back
    )
    {
        int after = 0;
        while (after < Points.Length && Points[after].At < at)
        {
            after++;
        }
        if (after == Points.Length)
        {
            return Points[^1].Value;
        }
        if (after == 0 || Points[after].At == at)
        {
            return Points[after].Value;
        }
        var (from, to) = (Points[after - 1], Points[after]);
        double share = (abscissa(at) - abscissa(from.At)) / (abscissa(to.At) - abscissa(from.At));
        return back(forth(from.Value) + (share * (forth(to.Value) - forth(from.Value))));
    }
}
