namespace GlowMix.Choosing;

/// <summary>Why a target is not judged, and which reading would decide one.</summary>
internal static class TargetTexts
{
    public const string RenderingMeansNothing =
        "this tint is beyond what CIE 13.3 colour rendering is made for";

    public const string TooFarFromWhite = "the light is too far from any white to have one";

    public const string NoPigment = "there is no pigment in the piece";

    public const string LevelPour = "the pour is level";

    public const string SizeUnknown = "it needs count, length_mm and width_mm";

    public const string PricesUnknown = "it needs the piece's size and the prices of what goes into it";

    public const string DoesNotExist = "it does not exist for this piece";

    public const string PigmentReading = "a potted piece's spectrum with and without pigment";

    public const string DecayReading = "a decay reading of a known layer after a known charge";
}
