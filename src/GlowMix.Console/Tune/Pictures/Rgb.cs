namespace GlowMix.Console.Tune.Pictures;

/// <summary>A screen colour, sRGB, 0 to 255 each.</summary>
internal readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <summary>No light.</summary>
    public static Rgb Black { get; } = new(0, 0, 0);

    /// <summary>Part of the way to another colour.</summary>
    /// <param name="other">The other.</param>
    /// <param name="share">0 this one, 1 the other.</param>
    public Rgb Towards(Rgb other, double share) =>
        new(
            Between(Red, other.Red, share),
            Between(Green, other.Green, share),
            Between(Blue, other.Blue, share)
        );

    private static byte Between(byte from, byte to, double share) =>
        (byte)Math.Round(from + (Math.Clamp(share, 0, 1) * (to - from)));
}
