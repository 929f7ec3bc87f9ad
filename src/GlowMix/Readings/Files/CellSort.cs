namespace GlowMix.Readings.Files;

/// <summary>What a cell holds.</summary>
internal enum CellSort : byte
{
    /// <summary>Words, or a number that is none.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A time of the clock.</summary>
    Clock,

    /// <summary>A duration with its unit.</summary>
    Duration,

    /// <summary>A date.</summary>
    Date,

    /// <summary>Nothing.</summary>
    Empty,
}
