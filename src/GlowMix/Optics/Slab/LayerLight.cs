namespace GlowMix.Optics.Slab;

/// <summary>Light of one source inside one layer; written and read by <see cref="LayerOperators"/>.</summary>
internal sealed class LayerLight(int nodes)
{
    /// <summary>Amplitudes of the even parts; in a clear layer the light up through the lower face.</summary>
    public double[] Even { get; } = new double[nodes];

    /// <summary>Amplitudes of the odd parts; in a clear layer the light down through the upper face.</summary>
    public double[] Odd { get; } = new double[nodes];

    /// <summary>Fluence per mode at the lower face, falling upwards.</summary>
    public double[] FromBelow { get; } = new double[nodes];

    /// <summary>Fluence per mode at the upper face, falling downwards.</summary>
    public double[] FromAbove { get; } = new double[nodes];

    /// <summary>Modes kept as polynomials.</summary>
    public int[] ThinIndex { get; } = new int[nodes];

    /// <summary>How many of them.</summary>
    public int ThinModes { get; set; }
}
