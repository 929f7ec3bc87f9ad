using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>The words of the problems a material's file can have beyond those of any document.</summary>
public static class MaterialProblemTexts
{
    /// <summary>What a source may be, for messages.</summary>
    public const string Sources =
        "a publication by name, or 'assumed', 'from memory', 'common practice, no source', 'computed; how', "
        + "'secondary source; what was read', 'own reading' or 'label', each with '; note' behind it if you like";

    /// <summary>A number or table without a source.</summary>
    public static string NoSource(string key) => $"{key} has no source; add a line 'source:' with {Sources}";

    /// <summary>A source that names nothing.</summary>
    public static string SourceNamesNothing(string key, string found) =>
        $"source of {key} is {ProblemTexts.Quote(found)}; needed: {Sources}";

    /// <summary>A bare value where one with its source is needed.</summary>
    public static string ValueWithoutSource(string key, string found) =>
        $"{key} is a bare value; write two lines below it, 'value: {found}' and 'source: …'";

    /// <summary>Two statements of doubt.</summary>
    public static string SeveralDoubts(string key) =>
        $"{key} states its doubt twice; write one of factor, low with high, tolerance_percent";

    /// <summary>low without high, high without low, or not around the value.</summary>
    public static string EndsNotAround(string key) =>
        $"low and high of {key} belong together, low at most the value and high at least the value";

    /// <summary>A kind of file in the place of another.</summary>
    public static string WrongKind(string found, string needed) =>
        $"kind is '{found}'; needed here: {needed}";

    /// <summary>The first key is missing or another.</summary>
    public const string FirstKey = "the first line of a material must be 'material_format: 1'";

    /// <summary>Points of a table out of order.</summary>
    public static string NotAscending(string key, double at) =>
        Invariant($"{key}: {at} does not ascend; write the points in ascending order");

    /// <summary>A criterion that neither tells its limits nor says that there are none.</summary>
    public const string NoLimits =
        "limits are not told; write them below 'mcd_m2_at_minutes:', or 'value: none' where the document sets none, or "
        + "'value: unknown' where you have not read it";

    /// <summary>A table with too few points.</summary>
    public static string TooFewPoints(string key, int least) =>
        Invariant($"{key} has too few points; needed: {least} or more");

    /// <summary>A key of a table that is no number.</summary>
    public static string PointNotANumber(string key, string found, NumberRange allowed) =>
        $"{key}: {ProblemTexts.Quote(found)} is no number; allowed: {allowed}";

    /// <summary>A key of a table out of its range.</summary>
    public static string PointOutOfRange(string key, double found, NumberRange allowed) =>
        Invariant($"{key}: {found} is out of range; allowed: {allowed}");

    /// <summary>A table that ends inside the model's wavelengths.</summary>
    public static string TableHeld(string key, double fromNm, double toNm) =>
        Invariant(
            $"{key} has points from {fromNm} to {toNm} nm; beyond them the value at the end is kept (the model needs 340 to 780 nm)"
        );

    /// <summary>A formula that leaves the possible.</summary>
    public static string IndexOutOfRange(double nm, double index) =>
        Invariant($"the refractive index at {nm} nm is {index:0.####}; allowed: 1 to 3");

    /// <summary>A material that a file leans on is not there.</summary>
    public static string LikeNotShipped(
        string name,
        MaterialKind kind,
        IReadOnlyCollection<string> shipped
    ) =>
        $"like is {ProblemTexts.Quote(name)}; allowed: a shipped {kind.Word()}, {string.Join(", ", shipped)}"
        + ProblemTexts.DidYouMean(name, shipped);

    /// <summary>No such material.</summary>
    public static string NotOnTheShelf(string name, MaterialKind kind, IReadOnlyCollection<string> known) =>
        $"no {kind.Word()} {ProblemTexts.Quote(name)} in materials/{kind.Folder()} or on the shelf"
        + (
            ProblemTexts.DidYouMean(name, known) is { Length: > 0 } near
                ? near
                : $"; there are {string.Join(", ", known)}"
        );

    /// <summary>A path where there are no files.</summary>
    public static string NoFiles(string path) =>
        $"{ProblemTexts.Quote(path)} is a path, and no files can be read here; name a material of the shelf";

    /// <summary>Shares that are no shares.</summary>
    public static string SharesDoNotAddUp(double sum) =>
        Invariant($"die_share, green_share and red_share add up to {sum:0.######}; needed: 1");

    /// <summary>Bands in the wrong order.</summary>
    public const string BandsOutOfOrder = "the peaks must ascend: die_peak_nm, green_peak_nm, red_peak_nm";

    /// <summary>More light out than in.</summary>
    public static string ColumnAboveOne(string column, double sum) =>
        Invariant($"return_matrix.{column} adds up to {sum:0.####} W a watt; allowed: 1 at most");

    /// <summary>Rated above the greatest.</summary>
    public static string RatedAboveMost(double atMa, double maxMa) =>
        Invariant($"at_ma is {atMa} and max_ma {maxMa}; max_ma must be at_ma or more");

    /// <summary>A reading in air that is darker than the surface's own reflection.</summary>
    public static string DarkerThanItsSurface(double nm) =>
        Invariant(
            $"the reflectance in air at {nm} nm is below the 0.092 that the surface alone sends back; it counts as 0 under resin"
        );

    /// <summary>A spectrum without light.</summary>
    public const string NoLight = "the spectrum has no light from 340 to 780 nm";

    /// <summary>A reading with less than no light.</summary>
    public const string SpectrumBelowZero =
        "the spectrum of an LED must be 0 or more everywhere, with some light from 340 to 780 nm";

    /// <summary>A reading of something else than white light.</summary>
    public const string NotWhite =
        "the spectrum is no white light (no correlated colour temperature); needed: the bare white LED in air";

    /// <summary>A reading without a blue peak.</summary>
    public static string NoDie(double fromNm, double toNm) =>
        Invariant(
            $"the spectrum has no peak from {fromNm} to {toNm} nm; needed: a white LED with a blue or violet die"
        );

    /// <summary>A reading without a phosphor.</summary>
    public const string NoPhosphor =
        "the spectrum has no broad light beside its blue peak; needed: a white LED with a phosphor";

    /// <summary>A colour temperature that the bands cannot mix.</summary>
    public static string NoWhiteOfThatTemperature(double cctK) =>
        Invariant($"a blue die with a green and a red phosphor cannot give {cctK} K; measure its spectrum");

    /// <summary>What a stand-in for a label is worth.</summary>
    public static string StandInOfLabel(string nearest, double raFound, double? raTold) =>
        raTold is { } told && Math.Abs(raFound - told) > 1
            ? Invariant(
                $"the LED's spectrum is a stand-in with Ra {raFound:0} (the label's {told:0} is out of reach); package as of {nearest}"
            )
            : Invariant(
                $"the LED's spectrum is a stand-in with the label's white, Ra {raFound:0}; package as of {nearest}"
            );

    /// <summary>Parts and mix do not agree.</summary>
    public static string DensitiesDisagree(double stated, double computed) =>
        Invariant(
            $"density_mix_g_cm3 is {stated}, but the parts at their ratio give {computed:0.###}; they must agree within 5 %"
        );

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
