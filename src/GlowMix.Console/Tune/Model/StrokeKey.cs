namespace GlowMix.Console.Tune.Model;

/// <summary>A key, as far as the text UI tells them apart.</summary>
internal enum StrokeKey
{
    /// <summary>Anything that is not known.</summary>
    Other,

    /// <summary>A letter, digit or sign.</summary>
    Sign,
    Up,
    Down,
    Left,
    Right,
    PageUp,
    PageDown,
    Home,
    End,
    Enter,
    Escape,
    Tab,
    Backspace,
    Delete,
}
