namespace GlowMix.Optics.Slab;

/// <summary>What a source inside a layer sends out through its faces, in √(w μ) scale.</summary>
/// <remarks>
/// A source's own field need not fit what enters the layer: it may itself take in light through the faces. That light is
/// 'held': still to be added, with the sign turned, to what really enters.
/// </remarks>
internal sealed class LayerEmission(int nodes)
{
    private readonly double[] work = new double[nodes];

    /// <summary>Whether the layer holds a source at present.</summary>
    public bool Emits { get; set; }

    /// <summary>Up through the upper face.</summary>
    public double[] Up { get; } = new double[nodes];

    /// <summary>Down through the lower face.</summary>
    public double[] Down { get; } = new double[nodes];

    /// <summary>Down through the upper face, still to be added.</summary>
    public double[] HeldTop { get; } = new double[nodes];

    /// <summary>Up through the lower face, still to be added.</summary>
    public double[] HeldBottom { get; } = new double[nodes];

    /// <summary>Turns what the own field sends out into what the layer standing alone sends out.</summary>
    public void AddAnswerToHeld(LayerOperators layer)
    {
        layer.Transmit(work, HeldBottom);
        RowMath.AddScaled(Up, work, 1);
        layer.Reflect(work, HeldTop);
        RowMath.AddScaled(Up, work, 1);
        layer.Transmit(work, HeldTop);
        RowMath.AddScaled(Down, work, 1);
        layer.Reflect(work, HeldBottom);
        RowMath.AddScaled(Down, work, 1);
    }
}
