namespace GlowMix.Console.Tune.Model;

/// <summary>What stands beside the pictures or instead of them.</summary>
internal enum Panel
{
    /// <summary>Nothing: the pictures alone.</summary>
    None,

    /// <summary>Every key.</summary>
    Keys,

    /// <summary>Loading over depth.</summary>
    Map,

    /// <summary>Pinned states side by side.</summary>
    Pins,

    /// <summary>The glow beside criteria.</summary>
    Markings,

    /// <summary>What to weigh.</summary>
    Batch,

    /// <summary>Where the numbers come from.</summary>
    Sources,
}
