namespace GlowMix.Materials;

/// <summary>Parts of resin to hardener.</summary>
/// <param name="IsByVolume">The parts are volumes, not masses.</param>
/// <param name="PartA">Parts of A, above 0.</param>
/// <param name="PartB">Parts of B, above 0.</param>
public readonly record struct MixRatio(bool IsByVolume, double PartA, double PartB)
{
    /// <summary>Mass of part A over the mass of both.</summary>
    /// <param name="densityAGPerCm3">Density of part A; matters for a ratio by volume only.</param>
    /// <param name="densityBGPerCm3">Density of part B.</param>
    public double MassShareOfA(double densityAGPerCm3, double densityBGPerCm3)
    {
        double a = IsByVolume ? PartA * densityAGPerCm3 : PartA;
        double b = IsByVolume ? PartB * densityBGPerCm3 : PartB;
        return a / (a + b);
    }
}
