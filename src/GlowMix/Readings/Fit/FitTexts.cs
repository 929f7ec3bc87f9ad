using System.Globalization;
using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>Words about fits.</summary>
public static class FitTexts
{
    /// <summary>Why a number was held.</summary>
    public static string HeldBecause(HeldNumber held)
    {
        ArgumentNullException.ThrowIfNull(held);
        return held.ToldTogetherWith.IsEmpty
            ? $"{held.Words}: the readings hardly tell it"
            : $"{held.Words}: cannot be told apart from {string.Join(", ", held.ToldTogetherWith)}";
    }

    /// <summary>Where the model does not follow a reading.</summary>
    public static string LackOfFit(ReadingMisfit misfit)
    {
        ArgumentNullException.ThrowIfNull(misfit);
        return Say(
            $"{misfit.Name} ({misfit.State}): off by {misfit.RmsPercent:0.##} %, {misfit.TimesItsNoise:0.#} times its noise"
        );
    }

    internal static string AtItsEnd(string words, double end) =>
        Say($"{words} stands at the end of what is possible, {end:0.####}: something else must differ");

    internal static string MoreThanTheBareHolds =>
        "the package would turn more light into longer bands than its bare spectrum holds: check bare and potted reading";

    internal static string NothingToFit =>
        "there is nothing to fit: a bare and a potted reading, or a decay, are needed";

    internal static string NotOfThisRecipe(string name, string state, double offPercent) =>
        Say(
            $"{name} ({state}) cannot be followed, it is off by {offPercent:0} %: is it of this recipe, and are bare and potted not exchanged?"
        );

    internal static string AnotherLed(Led led, Spectrum bare) =>
        $"the bare board reads {WhiteOf(bare)}, {led.Name} has {WhiteOf(led.BareShapePerNm)} by its file: is it a reading of this LED?";

    internal static string NoCommonLight(string name) =>
        $"{name}: no light in common with the bare reading; not used";

    private static string WhiteOf(Spectrum spectrum) =>
        ColourFigures.Of(spectrum).CctK is double k ? Say($"{k:0} K") : "no CCT";

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
