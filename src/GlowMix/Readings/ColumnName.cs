namespace GlowMix.Readings;

/// <summary>A column of a file.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Name">From the header; empty where it has none.</param>
public readonly record struct ColumnName(int Number, string Name)
{
    /// <summary>'column 2 'net'' or 'column 2'.</summary>
    public override string ToString() =>
        Name.Length == 0
            ? FormattableString.Invariant($"column {Number}")
            : FormattableString.Invariant($"column {Number} '{Name}'");
}
