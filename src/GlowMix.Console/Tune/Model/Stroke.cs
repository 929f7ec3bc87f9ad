namespace GlowMix.Console.Tune.Model;

/// <summary>A key pressed.</summary>
/// <param name="Key">Which.</param>
/// <param name="Sign">The sign, for <see cref="StrokeKey.Sign"/>.</param>
/// <param name="Shift">With Shift, for keys that are no signs.</param>
/// <param name="Ctrl">With Ctrl.</param>
internal readonly record struct Stroke(StrokeKey Key, char Sign = '\0', bool Shift = false, bool Ctrl = false)
{
    /// <summary>A sign.</summary>
    public static Stroke Of(char sign) => new(StrokeKey.Sign, sign);
}
