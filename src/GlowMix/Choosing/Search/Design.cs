using System.Collections.Immutable;

namespace GlowMix.Choosing.Search;

/// <summary>One way to pour the piece: which words it takes, and where it stands on each axis.</summary>
/// <param name="Variant">Index of its choice of materials and other words.</param>
/// <param name="Steps">Index into the values of each axis.</param>
internal sealed record Design(int Variant, ImmutableArray<int> Steps) : IComparable<Design>
{
    /// <summary>Variants first, then axis by axis: an order that owes nothing to when a design was tried.</summary>
    public int CompareTo(Design? other)
    {
        if (other is null)
        {
            return 1;
        }
        int order = Variant.CompareTo(other.Variant);
        for (int a = 0; order == 0 && a < Steps.Length; a++)
        {
            order = Steps[a].CompareTo(other.Steps[a]);
        }
        return order;
    }

    /// <inheritdoc/>
    public bool Equals(Design? other) => CompareTo(other) == 0;

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Variant);
        foreach (int step in Steps)
        {
            hash.Add(step);
        }
        return hash.ToHashCode();
    }
}
