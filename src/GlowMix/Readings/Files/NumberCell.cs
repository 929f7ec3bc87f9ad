using System.Globalization;

namespace GlowMix.Readings.Files;

/// <summary>A cell of a table read as a number.</summary>
/// <param name="Value">The number, finite.</param>
/// <param name="HasMark">It has a decimal mark.</param>
/// <param name="IsGrouped">Its thousands are set apart.</param>
/// <param name="Unit">Where in the trimmed cell a unit begins, such as the 'nm' of '450 nm'; 0 without one.</param>
internal readonly record struct NumberCell(double Value, bool HasMark, bool IsGrouped, int Unit)
{
    private const int LongestCell = 48;

    /// <summary>Blanks of any kind, which stand round numbers and in them.</summary>
    public static bool IsBlank(char c) =>
        c is ' ' or '\t' or '\u00A0' or '\u202F' or '\u2009' or '\u2007' or '\u3000' or '\f' or '\v';

    /// <summary>A cell without the blanks and quotes round it.</summary>
    public static ReadOnlySpan<char> Trim(ReadOnlySpan<char> cell)
    {
        while (cell.Length > 0 && (IsBlank(cell[0]) || cell[0] == '"'))
        {
            cell = cell[1..];
        }
        while (cell.Length > 0 && (IsBlank(cell[^1]) || cell[^1] == '"'))
        {
            cell = cell[..^1];
        }
        return cell;
    }

    /// <summary>Reads a trimmed cell: sign, digits with grouped thousands or not, decimal mark, exponent, a known unit.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="decimalMark">A point or a comma; the other one groups thousands.</param>
    /// <param name="number">The number.</param>
    public static bool TryRead(ReadOnlySpan<char> cell, char decimalMark, out NumberCell number)
    {
        number = default;
        if (cell.Length is 0 or > LongestCell)
        {
            return false;
        }
        Span<char> plain = stackalloc char[LongestCell];
        int length = 0;
        int i = 0;
        if (cell[0] is '+' or '-' or '\u2212')
        {
            plain[length++] = cell[0] == '+' ? '+' : '-';
            i++;
        }
        int digits = 0;
        bool hasMark = false;
        bool isGrouped = false;
        for (; i < cell.Length; i++)
        {
            char c = cell[i];
            if (char.IsAsciiDigit(c))
            {
                plain[length++] = c;
                digits++;
            }
            else if (c == decimalMark && !hasMark)
            {
                plain[length++] = '.';
                hasMark = true;
            }
            else if (!hasMark && IsGroup(cell, i, digits, isGrouped))
            {
                isGrouped = true;
            }
            else
            {
                break;
            }
        }
        if (digits == 0)
        {
            return false;
        }
        if (i + 1 < cell.Length && cell[i] is 'e' or 'E' or 'd' or 'D')
        {
            int sign = cell[i + 1] is '+' or '-' or '\u2212' ? 1 : 0;
            int end = i + 1 + sign;
            while (end < cell.Length && char.IsAsciiDigit(cell[end]))
            {
                end++;
            }
            if (end > i + 1 + sign)
            {
                plain[length++] = 'e';
                plain[length++] = sign == 1 && cell[i + 1] != '+' ? '-' : '+';
                cell[(i + 1 + sign)..end].CopyTo(plain[length..]);
                length += end - (i + 1 + sign);
                i = end;
            }
        }
        int unit = 0;
        if (i < cell.Length)
        {
            while (i < cell.Length && IsBlank(cell[i]))
            {
                i++;
            }
            unit = i;
            if (!CellUnits.IsKnown(cell[unit..]))
            {
                return false;
            }
        }
        const NumberStyles Plain =
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (
            !double.TryParse(plain[..length], Plain, CultureInfo.InvariantCulture, out double value)
            || !double.IsFinite(value)
        )
        {
            return false;
        }
        number = new(value + 0.0, hasMark, isGrouped, unit);
        return true;
    }

    // A comma, point, apostrophe or narrow blank between one to three digits and groups of exactly three.
    private static bool IsGroup(ReadOnlySpan<char> cell, int at, int digitsBefore, bool isGrouped)
    {
        if (
            cell[at] is not (',' or '.' or '\'' or '_' or '\u2019' or ' ' or '\u00A0' or '\u202F' or '\u2009')
        )
        {
            return false;
        }
        bool leadingIsFine = isGrouped || (digitsBefore is >= 1 and <= 3 && cell[at - digitsBefore] != '0');
        return leadingIsFine
            && at + 3 < cell.Length
            && char.IsAsciiDigit(cell[at + 1])
            && char.IsAsciiDigit(cell[at + 2])
            && char.IsAsciiDigit(cell[at + 3])
            && (at + 4 == cell.Length || !char.IsAsciiDigit(cell[at + 4]));
    }
}
