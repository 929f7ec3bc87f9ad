using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Materials.Calibrations;

/// <summary>Words for problems of calibration files.</summary>
internal static class CalibrationTexts
{
    public static string InWords(Calibration calibration) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{calibration.Name} of {calibration.Date}, {calibration.Readings.Length} {(calibration.Readings.Length == 1 ? "reading" : "readings")}"
        );

    public static string FirstKey =>
        "needed: 'calibration_format: 1' as the first key, as 'glowmix fit' writes it";

    public static string NoLight => "the bare spectrum is 0 everywhere; needed: light";

    public static string NoTraps => "per_g is 0 on every rung; needed: traps on one at least";

    public static string NoFiles(string path) =>
        $"'{path}' cannot be opened here: no folder of files was given";

    public static string NoDate(string text) =>
        $"date is {ProblemTexts.Quote(text)}; allowed: a day as year-month-day, such as 2026-03-31";

    public static string NoHash(string key) =>
        $"{key} is no SHA-256; needed: 64 digits 0 to 9 and a to f, as 'sha256sum' prints them";

    public static string ColumnOver(double sum) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"a band that returns to the package leaves it {sum:0.###} times, in all bands together; allowed: 0 to 1"
        );

    public static string NotTold(string key, string name, IEnumerable<string> told) =>
        $"{key} is {ProblemTexts.Quote(name)}, no number with a standard error above; there are {string.Join(", ", told)}";

    public static string PairTwice(string of, string with) =>
        of == with
            ? $"{ProblemTexts.Quote(of)} goes with itself; needed: two different numbers"
            : $"{ProblemTexts.Quote(of)} with {ProblemTexts.Quote(with)} stands here twice";

    public static string ImpossibleCorrelations =>
        "these correlations contradict each other: no errors can go together so; fit again";

    public static string Twice(string material) => $"{ProblemTexts.Quote(material)} stands here twice";
}
