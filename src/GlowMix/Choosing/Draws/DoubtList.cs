using System.Collections.Immutable;

namespace GlowMix.Choosing.Draws;

/// <summary>Numbers in doubt, as they are found.</summary>
internal sealed class DoubtList
{
    private readonly ImmutableArray<DoubtfulNumber>.Builder numbers =
        ImmutableArray.CreateBuilder<DoubtfulNumber>();

    /// <summary>All in the order in which they were added.</summary>
    public ImmutableArray<DoubtfulNumber> ToImmutable() => numbers.ToImmutable();

    /// <summary>Adds a number with a tolerance; none without.</summary>
    public void AddWithin(
        Cause cause,
        double likely,
        double? tolerance,
        double least,
        Action<PieceDraft, double> put,
        double most = double.PositiveInfinity,
        string? key = null
    )
    {
        if (tolerance is > 0 and double told)
        {
            Add(cause, Spread.Within(likely, told, least, most), put, key);
        }
    }

    /// <summary>Adds a number with a spread; none without.</summary>
    public void Add(Cause cause, Spread? spread, Action<PieceDraft, double> put, string? key = null)
    {
        if (spread is { } s)
        {
            numbers.Add(new(cause, s, put, key));
        }
    }
}
