namespace GlowMix.Console.Tune.Pictures;

/// <summary>How letters stand out where there is no colour.</summary>
[Flags]
internal enum Emphasis
{
    /// <summary>As text stands.</summary>
    None = 0,

    /// <summary>Heavier.</summary>
    Bold = 1,

    /// <summary>Standing back.</summary>
    Faint = 2,

    /// <summary>Ink and paper changed over: where the focus is.</summary>
    Reverse = 4,

    /// <summary>Underlined: what is being typed.</summary>
    Underline = 8,
}
