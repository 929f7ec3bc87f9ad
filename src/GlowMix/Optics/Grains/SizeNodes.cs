namespace GlowMix.Optics.Grains;

/// <summary>A grain size distribution as single sizes.</summary>
/// <param name="DiametersUm">Diameters in rising order, µm.</param>
/// <param name="MassShares">Share of the pigment's mass that each stands for; together 1.</param>
internal sealed record SizeNodes(double[] DiametersUm, double[] MassShares)
{
    /// <summary>Number of sizes.</summary>
    public int Count => DiametersUm.Length;
}
