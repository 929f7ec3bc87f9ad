namespace GlowMix.Materials;

/// <summary>How well a number is founded, from the best to the least; the order is not a scale.</summary>
public enum SourceMark
{
    /// <summary>Looked up in the named publication.</summary>
    Published,

    /// <summary>Looked up in a page that quotes the document; the document itself was not read.</summary>
    Secondary,

    /// <summary>Computed from sourced data; the source says how.</summary>
    Computed,

    /// <summary>From memory, not looked up.</summary>
    FromMemory,

    /// <summary>Assumed, no source: calibrate it first.</summary>
    Assumed,

    /// <summary>Common practice of the trade, no source.</summary>
    CommonPractice,

    /// <summary>The user's own reading or label.</summary>
    Users,
}
