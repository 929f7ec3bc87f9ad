using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Casting;

/// <summary>A slice of a settled layer. Immutable.</summary>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="ClassFractions">Volume fraction of each class of grain, finest first.</param>
public sealed record SettledSublayer(double ThicknessMm, ImmutableArray<double> ClassFractions)
{
    /// <summary>Volume fraction of all grains.</summary>
    public double VolumeFraction => Total.Of(ClassFractions.AsSpan());

    /// <summary>Share of the slice's pigment in each class, finest first; empty where there is none.</summary>
    public ImmutableArray<double> ClassShares
    {
        get
        {
            double all = VolumeFraction;
            return all > 0 ? [.. ClassFractions.Select(fraction => fraction / all)] : [];
        }
    }
}
