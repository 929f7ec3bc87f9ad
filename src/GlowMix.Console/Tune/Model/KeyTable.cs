namespace GlowMix.Console.Tune.Model;

/// <summary>Every key of the text UI: the one place that both the keys page and the keyboard take them from.</summary>
internal static class KeyTable
{
    /// <summary>In the order of the keys page.</summary>
    public static IReadOnlyList<KeyLine> All { get; } =
    [
        new(
            "up, down",
            "hold another number",
            s => s.Key is StrokeKey.Up or StrokeKey.Down,
            (m, s) => m.Hold(m.Bench.Cursor + (s.Key == StrokeKey.Up ? -1 : 1))
        ),
        new(
            "Home, End",
            "hold the first, the last",
            s => s.Key is StrokeKey.Home or StrokeKey.End,
            (m, s) => m.Hold(s.Key == StrokeKey.Home ? 0 : int.MaxValue)
        ),
        new(
            "left, right   - +",
            "turn it down, up",
            s => Is(s, StrokeKey.Left, StrokeKey.Right, '-', '+', shift: false, ctrl: false),
            (m, s) => m.Turn(StepSize.Usual, IsUp(s))
        ),
        new(
            "Shift left, right   [ ]",
            "in fine steps",
            s => Is(s, StrokeKey.Left, StrokeKey.Right, '[', ']', shift: true, ctrl: false),
            (m, s) => m.Turn(StepSize.Fine, IsUp(s))
        ),
        new(
            "Ctrl left, right   { }",
            "in large steps; also PageDown, PageUp",
            s =>
                Is(s, StrokeKey.Left, StrokeKey.Right, '{', '}', shift: false, ctrl: true)
                || s.Key is StrokeKey.PageDown or StrokeKey.PageUp,
            (m, s) => m.Turn(StepSize.Large, IsUp(s))
        ),
        new(
            "digits, then Enter",
            "set it exactly",
            s => s is { Key: StrokeKey.Sign, Ctrl: false, Sign: (>= '0' and <= '9') or '.' },
            (m, s) => m.Type(s.Sign.ToString())
        ),
        new(
            "Enter",
            "type a value, or the beginning of a name",
            s => s.Key == StrokeKey.Enter,
            (m, _) => m.Type("")
        ),
        new("x", "put it back to where it stood at the start", s => IsSign(s, 'x'), (m, _) => m.PutBack()),
        new(
            "u, r",
            "undo, redo; without end",
            s => IsSign(s, 'u') || IsSign(s, 'r'),
            (m, s) => m.GoBack(s.Sign == 'r')
        ),
        new(
            "Tab",
            "the other side, lit or dark, where only one has room",
            s => s.Key == StrokeKey.Tab,
            (m, _) => m.Turnover()
        ),
        new("p", "pin this state", s => IsSign(s, 'p'), (m, _) => m.PinThis()),
        new("f", "flip to the next pinned state", s => IsSign(s, 'f'), (m, _) => m.Flip()),
        new("c", "pinned states side by side", s => IsSign(s, 'c'), (m, _) => m.Open(Panel.Pins)),
        new(
            "m",
            "map of loading and depth; arrows move, Enter takes",
            s => IsSign(s, 'm'),
            (m, _) => m.Open(Panel.Map)
        ),
        new("g", "marking guidance", s => IsSign(s, 'g'), (m, _) => m.Open(Panel.Markings)),
        new(
            "b",
            "batch: what to weigh; < > fewer or more pieces",
            s => IsSign(s, 'b'),
            (m, _) => m.Open(Panel.Batch)
        ),
        new(
            "o",
            "origins: where each number comes from",
            s => IsSign(s, 'o'),
            (m, _) => m.Open(Panel.Sources)
        ),
        new(
            "s, S",
            "save; save under another name",
            s => IsSign(s, 's') || IsSign(s, 'S'),
            (m, s) => m.Save(asOther: s.Sign == 'S')
        ),
        new("?", "these keys", s => IsSign(s, '?'), (m, _) => m.Open(Panel.Keys)),
        new("Esc", "back to the pictures", s => s.Key == StrokeKey.Escape, (m, _) => m.Open(Panel.None)),
        new(
            "q   Ctrl C",
            "quit",
            s => IsSign(s, 'q') || s is { Key: StrokeKey.Sign, Ctrl: true, Sign: 'c' or 'q' },
            (m, _) => m.Quit()
        ),
    ];

    /// <summary>What a key does; null if nothing.</summary>
    public static KeyLine? Find(Stroke stroke) => All.FirstOrDefault(k => k.IsPressed(stroke));

    private static bool IsSign(Stroke stroke, char sign) =>
        stroke is { Key: StrokeKey.Sign, Ctrl: false } && stroke.Sign == sign;

    private static bool IsUp(Stroke stroke) =>
        stroke.Key is StrokeKey.Right or StrokeKey.PageUp || stroke.Sign is '+' or ']' or '}';

    private static bool Is(
        Stroke stroke,
        StrokeKey down,
        StrokeKey up,
        char downSign,
        char upSign,
        bool shift,
        bool ctrl
    ) =>
        ((stroke.Key == down || stroke.Key == up) && stroke.Shift == shift && stroke.Ctrl == ctrl)
        || IsSign(stroke, downSign)
        || IsSign(stroke, upSign);
}
