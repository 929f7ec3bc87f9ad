using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Readings;

/// <summary>The words of the problems a file of readings can have: what is wrong, where, and what to do.</summary>
public static class ReadingTexts
{
    /// <summary>Nothing in it.</summary>
    public const string Empty = "the file is empty";

    /// <summary>No two numbers on a line.</summary>
    public const string NoNumbers =
        "no line of two numbers in it; needed: a wavelength and a value on each line, or a time and a value";

    /// <summary>Every value is zero.</summary>
    public const string AllZero = "all values are 0; needed: some light";

    /// <summary>JSON that holds no spectrum, or several.</summary>
    public const string JsonWithoutTable =
        "is JSON in which there is not one table of wavelengths and values; needed: pairs, or two arrays of the same length. Else export the reading as text or CSV";

    /// <summary>JSON that cannot be read.</summary>
    public const string JsonWithFault =
        "is JSON that breaks off or has a fault here; export the reading again, or as text or CSV";

    /// <summary>A recipe or another file of this program.</summary>
    public static string OwnFile(string key) =>
        $"begins with the key {ProblemTexts.Quote(key)}: a file for 'glowmix predict' or 'check', not a reading";

    /// <summary>No text.</summary>
    public static string NotText(string what) =>
        $"is {what}, not text; needed: the reading exported as text or CSV";

    /// <summary>No text, and nothing known either.</summary>
    public static string Binary(string firstBytes) =>
        $"is a binary file (it begins with the bytes {firstBytes}), not text; needed: the reading exported as text or CSV";

    /// <summary>One row of numbers.</summary>
    public static string TooFewRows(int found) =>
        Invariant($"{found} {(found == 1 ? "row" : "rows")} of numbers; needed: 2 or more");

    /// <summary>Several columns rise like wavelengths.</summary>
    public static string SeveralWavelengths(IEnumerable<ColumnName> columns) =>
        $"{string.Join(" and ", columns)} could all be wavelengths; say which with --wavelength-column";

    /// <summary>Nothing rises or falls throughout.</summary>
    public static string NoWavelengths(int columns) =>
        Invariant(
            $"none of the {columns} columns rises or falls throughout like wavelengths or times; say which it is with --wavelength-column or --time-column"
        );

    /// <summary>Only wavelengths.</summary>
    public const string NoLight =
        "no column of numbers beside the wavelengths or times; needed: one of values";

    /// <summary>A column that is not there.</summary>
    public static string NoSuchColumn(string asked, IEnumerable<ColumnName> columns) =>
        $"there is no column {ProblemTexts.Quote(asked)}; there are {string.Join(", ", columns)}";

    /// <summary>The same column in two roles.</summary>
    public static string SameColumn(ColumnName column) =>
        $"{column} cannot be both; name two different columns";

    /// <summary>Wavelengths that are none in nm.</summary>
    public static string WrongUnit(ColumnName column, double least, double most, string hint) =>
        Invariant(
            $"{column} runs from {least:0.######} to {most:0.######}, which is no visible light in nm{hint}"
        );

    /// <summary>A scale of another sort.</summary>
    public static string OtherScale(ColumnName column, string scale) =>
        $"{column} seems to count {scale}, and values over them are no values per nm; export the spectrum over wavelengths in nm, or say --wavelength-unit nm if it is one";

    /// <summary>A logarithm alone, or what the eye makes of light.</summary>
    public static string NoPlainLight(ColumnName column, bool isLogarithm) =>
        $"{column} is {(isLogarithm ? "a logarithm" : "weighted for the eye")}, and there is no other column of light; export the values themselves, or name a column with --column";

    /// <summary>Numbers that do not go together.</summary>
    public static string MixedUnits(ColumnName column) =>
        $"{column} has numbers with different units, or some with a unit and some without; write all of them in one";

    /// <summary>A comma among points, or a point among commas.</summary>
    public static string OddMark(ColumnName column, string found) =>
        $"{column} has {ProblemTexts.Quote(found)} among numbers with the other decimal mark: thousands or a slip? Write all of them alike";

    /// <summary>Lines of values that follow on each other.</summary>
    public const string WrappedRows =
        "each line seems to hold a wavelength and the values from there on; needed: one wavelength and its value on each line, or --column for one of several spectra";

    /// <summary>A cell that should be a number.</summary>
    public static string NotANumber(ColumnName column, string found) =>
        $"{column} has {ProblemTexts.Quote(found)}; needed: a number. Correct the line, or leave such lines out with --lenient";

    /// <summary>A row that breaks off, or goes on.</summary>
    public static string ShortRow(int found, int needed) =>
        Invariant(
            $"a row of {found} {(found == 1 ? "column" : "columns")} among rows of {needed}; complete it, put # before a remark, or leave such lines out with --lenient"
        );

    /// <summary>One wavelength, two values.</summary>
    public static string Disagree(double nm, double value, int firstLine, double first) =>
        Invariant(
            $"{nm} nm has {value}, and {first} on line {firstLine}; keep one of them, take lines with --lines, or average with --lenient"
        );

    /// <summary>A second table.</summary>
    public static string SecondTable(int firstLine, int lastLine) =>
        Invariant(
            $"the wavelengths begin again here: a second spectrum; take one of them, such as --lines {firstLine}-{lastLine}"
        );

    /// <summary>A wavelength with a slip.</summary>
    public static string OutOfOrder(double nm, double before, double after) =>
        Invariant($"{nm:0.###} nm stands between {before:0.###} and {after:0.###} nm; correct it");

    /// <summary>A second run of times.</summary>
    public static string SecondRun(int firstLine, int lastLine) =>
        Invariant(
            $"the times begin again here: a second run; take one of them, such as --lines {firstLine}-{lastLine}"
        );

    /// <summary>Rows of another width, as many as a table has.</summary>
    public static string OtherTable(int line, int firstLine, int lastLine) =>
        Invariant(
            $"from line {line} on there are rows with another number of columns than on lines {firstLine} to {lastLine}; take one of the tables, such as --lines {firstLine}-{lastLine}"
        );

    /// <summary>The light is upside down.</summary>
    public static string NegativePeak(double value, double nm) =>
        Invariant(
            $"the strongest value is negative, {value} at {nm} nm: more was taken off than was there; check the dark reading"
        );

    /// <summary>Nothing but the highest value.</summary>
    public static string SaturatedEverywhere(double value) =>
        Invariant($"every value is at the top, {value}: saturated; read again with a shorter exposure");

    /// <summary>Nothing of the table is visible.</summary>
    public static string NothingVisible(double firstNm, double lastNm) =>
        Invariant(
            $"reaches from {firstNm:0.###} to {lastNm:0.###} nm; needed: two rows or more from 380 to 780 nm"
        );

    /// <summary>A range of lines without rows.</summary>
    public static string NoLines(int first, int last, int count) =>
        Invariant($"--lines {first}-{last}: the file has {count} {(count == 1 ? "line" : "lines")}");

    /// <summary>A glow that gets brighter.</summary>
    public static string Grows(double minutes, double value, double first) =>
        Invariant(
            $"the glow grows: {value} after {minutes:0.###} min in the dark, {first} at first; check the order of the columns and when the light went off (--dark-from)"
        );

    /// <summary>A time that is none.</summary>
    public static string NegativeTime(double minutes) =>
        Invariant($"a time of {minutes} min; needed: 0 or more");

    /// <summary>Text with a point as decimal mark in every country.</summary>
    internal static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
