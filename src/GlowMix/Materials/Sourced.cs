namespace GlowMix.Materials;

/// <summary>A value of a material with its source. The value's unit is in the name of whoever holds it.</summary>
/// <param name="Value">The value.</param>
/// <param name="Note">Where it comes from.</param>
/// <param name="Doubt">How far off it may be; none where the file says nothing.</param>
public sealed record Sourced<T>(T Value, SourceNote Note, Doubt Doubt = default)
{
    /// <summary>How well the value is founded.</summary>
    public SourceMark Mark => Note.Mark;

    /// <summary>The source as written.</summary>
    public string Source => Note.Text;

    /// <summary>Another value from the same source and with the same doubt.</summary>
    public Sourced<TOther> Select<TOther>(Func<T, TOther> map) => new(map(Value), Note, Doubt);
}
