namespace GlowMix.Documents.Tidying;

/// <summary>The lines of one entry with the comments that go with it.</summary>
internal sealed class TidyBlock
{
    /// <summary>Place in the canonical order.</summary>
    public double Order { get; set; }

    /// <summary>An empty line stands above it.</summary>
    public bool IsSetOff { get; init; }

    /// <summary>Without line ends.</summary>
    public List<string> Lines { get; } = [];
}
