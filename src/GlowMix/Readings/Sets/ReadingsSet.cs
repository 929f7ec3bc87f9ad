using System.Collections.Immutable;

namespace GlowMix.Readings.Sets;

/// <summary>Readings that belong to one recipe. Immutable.</summary>
public sealed record ReadingsSet
{
    /// <summary>The set's file as the user named it; the recipe's where the readings were named on the command line.</summary>
    public required string Name { get; init; }

    /// <summary>Whether the spectrometer's numbers are corrected for its response; null: as the files themselves tell.</summary>
    public bool? IsCorrected { get; init; }

    /// <summary>How well the levels of lit readings compare, standard deviation in %; null: not at all.</summary>
    public double? ComparablePercent { get; init; }

    /// <summary>The readings.</summary>
    public required ImmutableArray<SetReading> Readings { get; init; }
}
