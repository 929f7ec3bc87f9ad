using System.Globalization;

namespace GlowMix.Readings.Sets;

/// <summary>Words for problems of sets of readings, and for their states.</summary>
public static class SetTexts
{
    internal static string FirstKey => "needed: 'readings_format: 1' as the first key";

    internal static string SecondBare => "a second bare reading; allowed: one";

    internal static string NoBare =>
        "a lit reading says nothing without the bare board, read by the same spectrometer; needed: one with 'state: bare'";

    internal static string NothingToFit =>
        "nothing to fit; needed: a lit reading beside the bare one, or a decay";

    internal static string FlatPackage(string led) =>
        $"{led} has no height to be level with; leave this reading out";

    internal static string NoPigment => "the recipe has no pigment; allowed without: bare, level, potted";

    internal static string SeveralPigmented =>
        "the recipe has several layers with pigment; allowed here: tile, or neither of depth_mm and loading_percent";

    internal static string NotAbovePackages(double depthMm, double heightMm) =>
        Say(
            $"{depthMm:0.##} mm leave the packages of {heightMm:0.##} mm in air; needed: deeper, or 'state: level'"
        );

    internal static string NoGeometry =>
        "the decay is in lx, which is no luminance until it is known how the meter looked at the glow; write 'geometry: contact' (or contact-mask, disc-at) beside it in a set of readings, on the command line --geometry";

    internal static string HoleOverSensor => "the hole is wider than the sensor; allowed: up to its width";

    internal static string RelativeDecay =>
        "the decay is relative: its course alone is used, which tells how the traps lean and not how many there are; for those mcd/m² is needed, or lx with a geometry";

    internal static string TooFewPoints(int count) =>
        Say(
            $"{count} usable {(count == 1 ? "reading" : "readings")} in the dark, above five steps of the display; needed: 3 or more"
        );

    internal static string RawCounts =>
        "raw counts: only ratios to the bare reading are used, the LED's own bands stay as its file tells; say 'corrected: yes', on the command line --corrected yes, if the spectrometer corrects for its response";

    /// <summary>What was read, in words: 'potted, 3 mm'.</summary>
    public static string StateOf(SetReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        string words = reading.State switch
        {
            ReadingState.Bare => "bare",
            ReadingState.Level => "level with the packages",
            ReadingState.Potted => "potted",
            ReadingState.Pigmented => "pigmented",
            _ => "decay",
        };
        if (reading.Tile is int tile)
        {
            words += Say($", tile {tile}");
        }
        if (reading.LoadingPercent is double loading)
        {
            words += Say($", {loading:0.##} %");
        }
        return reading.DepthMm is double depth ? words + Say($", {depth:0.##} mm") : words;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
