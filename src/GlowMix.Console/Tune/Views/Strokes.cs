using GlowMix.Console.Tune.Model;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace GlowMix.Console.Tune.Views;

/// <summary>The toolkit's keys as the text UI's own.</summary>
internal static class Strokes
{
    /// <summary>A key. Escape and a key right behind it reach the program as one, with Alt: here they are two again.</summary>
    public static IReadOnlyList<Stroke> Of(Key key) =>
        key.IsAlt && One(key.NoAlt) is { Key: StrokeKey.Sign or StrokeKey.Tab or StrokeKey.Enter } sign
            ? [new(StrokeKey.Escape), sign]
            : [One(key)];

    private static Stroke One(Key key)
    {
        var plain = key.NoShift.NoCtrl.NoAlt;
        var named = plain.KeyCode switch
        {
            KeyCode.CursorUp => StrokeKey.Up,
            KeyCode.CursorDown => StrokeKey.Down,
            KeyCode.CursorLeft => StrokeKey.Left,
            KeyCode.CursorRight => StrokeKey.Right,
            KeyCode.PageUp => StrokeKey.PageUp,
            KeyCode.PageDown => StrokeKey.PageDown,
            KeyCode.Home => StrokeKey.Home,
            KeyCode.End => StrokeKey.End,
            KeyCode.Enter => StrokeKey.Enter,
            KeyCode.Esc => StrokeKey.Escape,
            KeyCode.Tab => StrokeKey.Tab,
            KeyCode.Backspace => StrokeKey.Backspace,
            KeyCode.Delete => StrokeKey.Delete,
            _ => StrokeKey.Other,
        };
        if (named != StrokeKey.Other)
        {
            return new(named, Shift: key.IsShift, Ctrl: key.IsCtrl);
        }
        int code = key.AsRune.Value;
        if (key.IsCtrl && plain.IsKeyCodeAtoZ)
        {
            // What the keyboard sends for Tab and Enter, where nobody took them for these.
            if ((char)(uint)plain.KeyCode is 'I' or 'M' or 'J')
            {
                return new((char)(uint)plain.KeyCode == 'I' ? StrokeKey.Tab : StrokeKey.Enter);
            }
            return new(StrokeKey.Sign, char.ToLowerInvariant((char)(uint)plain.KeyCode), Ctrl: true);
        }
        return code is > 31 and < 0xD800 && !key.IsCtrl && !key.IsAlt
            ? Stroke.Of((char)code)
            : new(StrokeKey.Other);
    }
}
