using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>The words of the problems only a recipe can have.</summary>
public static class RecipeTexts
{
    /// <summary>The first key belongs to another kind of file.</summary>
    public static string OtherKindOfFile(string key) =>
        $"not a recipe: '{key}' is the first key of another kind of file; a recipe begins with 'format: 1'";

    /// <summary>Not a material's name.</summary>
    public static string NotAMaterial(string key, string found) =>
        $"{key} is {ProblemTexts.Quote(found)}; needed: a name in small letters, digits and hyphens, such as white-mask, or a path ending in .yaml";

    /// <summary>Not a layer's name.</summary>
    public static string NotALayerName(string found) =>
        $"name is {ProblemTexts.Quote(found)}; needed: small letters, digits and hyphens, beginning with a letter, such as glow";

    /// <summary>A name used before.</summary>
    public static string LayerNameTwice(string name) =>
        $"two layers are called '{name}'; give each a name of its own";

    /// <summary>The same word twice in a list.</summary>
    public static string ListedTwice(string key, string word) =>
        $"{key} lists {ProblemTexts.Quote(word)} twice";

    /// <summary>A path to a file of the wrong kind.</summary>
    public static string NotAYamlPath(string key, string found) =>
        $"{key} is {ProblemTexts.Quote(found)}; needed: a path ending in .yaml";

    /// <summary>No way to know the LED.</summary>
    public const string LedIsNotSaid =
        "led needs one of: 'material', or 'cct_k' from a label, or 'spectrum' with the name of a file";

    /// <summary>A value that the material's file holds.</summary>
    public static string StandsInTheMaterial(string key, string material) =>
        $"{key} belongs to a LED from a label or a spectrum; that of '{material}' stands in its own file";

    /// <summary>More current than the LED bears.</summary>
    public static string DriveOverMax(double driveMa, double maxMa) =>
        Invariant($"drive_ma is {driveMa}; the LED bears at most {maxMa} (max_ma)");

    /// <summary>A key that says nothing without another.</summary>
    public static string Needs(string key, string other) => $"{key} needs '{other}' beside it";

    /// <summary>A pigment's quantity in a clear layer.</summary>
    public static string NeedsAPigment(string key) =>
        $"{key} needs a 'pigment' beside it; leave both out for a clear layer";

    /// <summary>A fraction written as a percentage.</summary>
    public static string LoadingIsSmall(double percent) =>
        Invariant(
            $"loading_percent is {percent}, hardly any pigment; did you mean {Math.Round(percent * 100, 6)}?"
        );

    /// <summary>The grain's ends in the wrong order.</summary>
    public static string GrainEnds(double fromUm, double toUm) =>
        Invariant($"grain_to_um is {toUm}; needed: more than grain_from_um, {fromUm}");

    /// <summary>A pour so crooked that its top layer ends before the channel does.</summary>
    public static string RunsOutOfTheLayer(double runsOutMm, double depthMm) =>
        Invariant(
            $"runs_out_mm is {runsOutMm}; the top layer of {depthMm} mm allows less than {2 * depthMm}"
        );

    /// <summary>A lamp without its strength.</summary>
    public static string LampNeedsStrength(string lamp) =>
        $"'{lamp}' needs its strength: 'illuminance_lx' or 'irradiance_w_m2'";

    /// <summary>The strength of a light that is not a lamp.</summary>
    public static string StrengthWithoutLamp(string key, string light) =>
        $"{key} is for a lamp; '{light}' has none of its own";

    /// <summary>A second light beside something else than the piece's own LEDs.</summary>
    public static string WithNeedsOwnLeds(string light) =>
        $"'with' stands beside 'light: own-leds' only, not beside '{light}'";

    /// <summary>The second light is not a lamp.</summary>
    public const string WithIsNotALamp = "'with' needs a lamp of the shelf, such as led-4000";

    /// <summary>All steps dark.</summary>
    public const string NoLitStep = "charge has no lit step; needed: one with own-leds or a lamp";

    /// <summary>The last step is dark.</summary>
    public const string DarkAtTheEnd =
        "the glow clock starts when the last light goes off; leave this step out and see 'darkness' for what follows";

    /// <summary>The day is too long.</summary>
    public static string LongerThanADay(double minutes) =>
        Invariant(
            $"the steps of a settled-daily charge take {minutes} minutes; allowed: up to 1440, one day"
        );

    /// <summary>Not one of the minutes of the decay.</summary>
    public static string NotDecayMinutes(string key, double found) =>
        Invariant($"{key} is {found}; allowed: {DecayMinutes.Listed}");

    /// <summary>A figure with a value for each of the decay's minutes.</summary>
    public static string FigureNeedsMinutes(string figure) =>
        $"'{figure}' needs 'at_minutes'; allowed: {DecayMinutes.Listed}";

    /// <summary>A figure with one value.</summary>
    public static string FigureHasNoMinutes(string figure) =>
        $"'{figure}' has one value; leave 'at_minutes' out";

    /// <summary>A target without a bound.</summary>
    public static string TargetNeedsABound(string figure) =>
        $"'{figure}' needs 'at_least', 'at_most' or both";

    /// <summary>Bounds nothing can meet.</summary>
    public static string BoundsCross(double atLeast, double atMost) =>
        Invariant($"at_most is {atMost}, below at_least, {atLeast}");

    /// <summary>A key the search cannot turn.</summary>
    public static string NotChoosable(string key) =>
        $"{ProblemTexts.Quote(key)} cannot be searched; allowed: {string.Join(", ", RecipeKeys.All.Where(k => k.IsChoosable).Select(k => k.Path))}";

    /// <summary>A choice about pigment in a clear layer, or of a LED known from a label.</summary>
    public static string ChoiceIsNotWritten(string path, string needed) =>
        $"'{path}' can be searched only where the recipe says '{needed}'";

    /// <summary>A choice that offers nothing.</summary>
    public static string ChoiceOffersNothing(string key, bool isNumber) =>
        isNumber
            ? $"the choice of {key} needs 'from' and 'to', or 'any_of'"
            : $"the choice of {key} needs 'any_of'";

    /// <summary>A range of something that is no number.</summary>
    public static string NoRangeOfWords(string key, string path) =>
        $"{path} has no numbers; write 'any_of' instead of '{key}'";

    /// <summary>The ends of a range in the wrong order.</summary>
    public static string RangeEnds(double from, double to) =>
        Invariant($"to is {to}; needed: more than from, {from}");

    /// <summary>A key path that is not in this recipe.</summary>
    public static string UnknownKeyPath(string path, string? nearest) =>
        $"the recipe has no key {ProblemTexts.Quote(path)}{(nearest is null ? "" : $"; did you mean '{nearest}'?")}";

    /// <summary>A last word that several keys share.</summary>
    public static string AmbiguousKeyPath(string path, IEnumerable<string> candidates) =>
        $"{ProblemTexts.Quote(path)} stands more than once; write one of {string.Join(", ", candidates)}";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
