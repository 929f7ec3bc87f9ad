namespace GlowMix.Optics.Slab;

/// <summary>Where a unit of light went.</summary>
public sealed class SourceFate
{
    private readonly Func<int, double, double> fluence;

    internal SourceFate(double escaped, double floor, double[] absorbed, Func<int, double, double> fluence)
    {
        Escaped = escaped;
        AbsorbedByFloor = floor;
        AbsorbedInLayers = absorbed;
        this.fluence = fluence;
    }

    /// <summary>Share that leaves into the air; for light from the air what comes back, the face's own reflection included.</summary>
    public double Escaped { get; }

    /// <summary>Share that the floor keeps.</summary>
    public double AbsorbedByFloor { get; }

    /// <summary>Share absorbed in each layer, from the floor upwards.</summary>
    public IReadOnlyList<double> AbsorbedInLayers { get; }

    /// <summary>Fluence, ∫ radiance dΩ, per unit of the source's flux on unit area.</summary>
    /// <param name="layer">Index from the floor upwards.</param>
    /// <param name="heightMm">Height above the layer's lower face.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such layer, or a height outside it.</exception>
    public double Fluence(int layer, double heightMm) => fluence(layer, heightMm);
}
