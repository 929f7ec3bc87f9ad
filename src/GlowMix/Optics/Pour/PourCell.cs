namespace GlowMix.Optics.Pour;

/// <summary>A thin slice of a pigmented layer: where light is counted, traps fill, and glow begins.</summary>
/// <param name="Layer">Index of the layer in the <see cref="PourStack"/>.</param>
/// <param name="FromMm">Lower edge over the board.</param>
/// <param name="ToMm">Upper edge over the board.</param>
/// <param name="OverPackages">Whether it lies above the packages, in their direct light.</param>
public readonly record struct PourCell(int Layer, double FromMm, double ToMm, bool OverPackages)
{
    /// <summary>Depth of the slice.</summary>
    public double WidthMm => ToMm - FromMm;
}
