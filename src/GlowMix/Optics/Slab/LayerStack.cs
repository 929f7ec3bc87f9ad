namespace GlowMix.Optics.Slab;

/// <summary>A layer of one medium.</summary>
/// <param name="Medium">What light meets in it.</param>
/// <param name="DepthMm">Its depth, 0 or more.</param>
public readonly record struct Layer(Medium Medium, double DepthMm);

/// <summary>Layers of one resin from the floor upwards, a plane face to air above them.</summary>
public sealed class LayerStack
{
    private readonly Layer[] layers;

    /// <summary>A stack.</summary>
    /// <param name="index">Refractive index of the resin at this wavelength, 1 to 4.</param>
    /// <param name="layers">From the floor upwards, at least one.</param>
    /// <exception cref="ArgumentException">No layer.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A depth, a coefficient or the index is out of range.</exception>
    public LayerStack(double index, params ReadOnlySpan<Layer> layers)
    {
        _ = Fresnel.CriticalCosine(index);
        if (layers.IsEmpty)
        {
            throw new ArgumentException("A stack has at least one layer.", nameof(layers));
        }
        foreach (var layer in layers)
        {
            layer.Medium.Require();
            if (!(layer.DepthMm >= 0 && double.IsFinite(layer.DepthMm)))
            {
                throw new ArgumentOutOfRangeException(
                    nameof(layers),
                    layer.DepthMm,
                    "A depth must be 0 or more."
                );
            }
        }
        Index = index;
        this.layers = layers.ToArray();
    }

    /// <summary>Refractive index of the resin.</summary>
    public double Index { get; }

    /// <summary>From the floor upwards.</summary>
    public IReadOnlyList<Layer> Layers => layers;
}
