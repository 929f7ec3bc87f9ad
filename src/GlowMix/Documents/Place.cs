namespace GlowMix.Documents;

/// <summary>Where something stands in a text, as editors count: both from 1. The default value is no place.</summary>
public readonly record struct Place(int Line, int Column) : IComparable<Place>
{
    /// <summary>Line first, then column.</summary>
    public int CompareTo(Place other) =>
        Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);

    /// <summary>'line:column'.</summary>
    public override string ToString() => FormattableString.Invariant($"{Line}:{Column}");

    /// <summary>Stands before.</summary>
    public static bool operator <(Place a, Place b) => a.CompareTo(b) < 0;

    /// <summary>Stands behind.</summary>
    public static bool operator >(Place a, Place b) => a.CompareTo(b) > 0;

    /// <summary>Stands before or at the same place.</summary>
    public static bool operator <=(Place a, Place b) => a.CompareTo(b) <= 0;

    /// <summary>Stands behind or at the same place.</summary>
    public static bool operator >=(Place a, Place b) => a.CompareTo(b) >= 0;
}
