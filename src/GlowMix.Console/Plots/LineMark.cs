namespace GlowMix.Console.Plots;

/// <summary>How a curve is told from others without colour.</summary>
/// <param name="Letter">In a plot of ASCII letters.</param>
/// <param name="DotsOn">Dots drawn in a row.</param>
/// <param name="DotsOff">Dots left out behind them.</param>
internal readonly record struct LineMark(char Letter, int DotsOn, int DotsOff)
{
    /// <summary>Without gaps.</summary>
    public static LineMark Solid { get; } = new('o', 1, 0);

    /// <summary>Single dots.</summary>
    public static LineMark Dotted { get; } = new('.', 1, 3);

    /// <summary>Short strokes.</summary>
    public static LineMark Dashed { get; } = new('-', 5, 4);

    /// <summary>Whether the dot of this number along the line is drawn.</summary>
    public bool IsDrawn(int dot) => dot % (DotsOn + DotsOff) < DotsOn;
}
