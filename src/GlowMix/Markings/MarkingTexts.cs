namespace GlowMix.Markings;

/// <summary>Words of the marking guidance.</summary>
internal static class MarkingTexts
{
    public const string ChargeNotKnown = "its test charge is not known";
    public const string LimitsNotKnown = "its limits are not known";
    public const string NoLimits = "it sets no limit";

    public static string LuxOfADarkLamp(string lamp) =>
        $"its lamp {lamp} gives hardly any visible light, so that lux say nothing of it";
}
