namespace GlowMix.Console.Tune.Pictures;

/// <summary>How a cell of the screen looks; a colour of null is the terminal's own.</summary>
/// <param name="Ink">Of the letter.</param>
/// <param name="Paper">Behind it.</param>
/// <param name="Emphasis">Beside the colours, and instead of them where there are none.</param>
internal readonly record struct Look(Rgb? Ink, Rgb? Paper, Emphasis Emphasis = Emphasis.None)
{
    /// <summary>The terminal's own colours.</summary>
    public static Look Plain { get; }

    /// <summary>Heavier.</summary>
    public Look Bold => this with { Emphasis = Emphasis | Emphasis.Bold };

    /// <summary>Standing back.</summary>
    public Look Faint => this with { Emphasis = Emphasis | Emphasis.Faint };

    /// <summary>Ink and paper changed over.</summary>
    public Look Reverse => this with { Emphasis = Emphasis | Emphasis.Reverse };

    /// <summary>Underlined.</summary>
    public Look Underline => this with { Emphasis = Emphasis | Emphasis.Underline };
}
