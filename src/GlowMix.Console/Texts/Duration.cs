namespace GlowMix.Console.Texts;

/// <summary>Minutes in words, two digits; from three hours on in hours.</summary>
internal readonly record struct Duration
{
    private const double HoursFromMinutes = 180;

    private readonly bool inHours;

    private Duration(bool inHours) => this.inHours = inHours;

    /// <summary>The unit behind the number.</summary>
    public string Unit => inHours ? "h" : "min";

    /// <summary>The unit that suits a number of minutes; several that belong together share the one of the middle.</summary>
    public static Duration For(double? minutes) => new(minutes >= HoursFromMinutes);

    /// <summary>The number without its unit.</summary>
    public string Number(double? minutes) => Digits.Two(inHours ? minutes / 60 : minutes);

    /// <summary>Number and unit.</summary>
    public string Text(double? minutes) => minutes is null ? Digits.None : $"{Number(minutes)} {Unit}";

    /// <summary>A number of minutes in its own unit.</summary>
    public static string Of(double? minutes) =>
        minutes is > 0 and < 1 ? "under 1 min" : For(minutes).Text(minutes);
}
