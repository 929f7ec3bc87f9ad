using GlowMix.Readings;

namespace GlowMix.Console.Texts;

/// <summary>How a file was understood, in one line.</summary>
internal static class FindingsWords
{
    /// <summary>The line.</summary>
    public static string Of(TableFindings findings)
    {
        string decimals = findings.DecimalMark is { } mark ? $"decimal {mark}" : "no decimals";
        string order = findings.IsDescending ? ", falling" : "";
        string across = findings.IsTransposed ? ", written across" : "";
        string dark = findings.Dark is { } column ? $", less {column}" : "";
        string merged = findings.RowsMerged > 0 ? $", {findings.RowsMerged} of them said twice" : "";
        string remarks = findings.Remarks > 0 ? $", {findings.Remarks} remarks between" : "";
        string what = findings.Kind == ReadingKind.Spectrum ? "wavelength" : "time";
        string lines =
            findings.FirstLine == findings.LastLine
                ? $"line {Digits.Plain(findings.FirstLine)}"
                : $"lines {Digits.Plain(findings.FirstLine)} to {Digits.Plain(findings.LastLine)}";
        return $"{(findings.Kind == ReadingKind.Spectrum ? "spectrum" : "decay")}, {Digits.Plain(findings.Rows)} rows ({lines}){merged}{remarks}; "
            + $"{findings.Delimiter}, {decimals}, {findings.Encoding}{across}; "
            + $"{what} in {findings.Along}, {findings.AlongUnit}{order}; light in {findings.Light}, {findings.LightUnit}{dark}";
    }
}
