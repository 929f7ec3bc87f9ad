namespace GlowMix.Readings.Files;

/// <summary>A cell of a table read as a duration that tells its units: '2 min', '90 s', '1 h 30 min', '1h30', '1:30 min'.</summary>
internal static class DurationCell
{
    private const double MinutesPerHour = 60;

    /// <summary>Reads a trimmed cell.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="decimalMark">A point or a comma.</param>
    /// <param name="minutes">Minutes.</param>
    public static bool TryRead(ReadOnlySpan<char> cell, char decimalMark, out double minutes)
    {
        minutes = 0;
        double lastUnit = double.PositiveInfinity;
        bool isRead = false;
        while (!cell.IsEmpty)
        {
            int number = 0;
            while (number < cell.Length && cell[number] is (>= '0' and <= '9') or '.' or ',' or ':')
            {
                number++;
            }
            if (number == 0)
            {
                return false;
            }
            var rest = cell[number..].TrimStart();
            int unitEnd = rest.IndexOfAnyInRange('0', '9');
            var word = (unitEnd < 0 ? rest : rest[..unitEnd]).Trim();
            // '1h30': the minutes go without saying.
            double? unit = word.IsEmpty && lastUnit == MinutesPerHour ? 1 : CellUnits.MinutesIn(word);
            if (
                unit is not { } inUnit
                || inUnit >= lastUnit
                || !TryReadCount(cell[..number], decimalMark, out double count)
            )
            {
                return false;
            }
            minutes += count * inUnit;
            lastUnit = inUnit;
            isRead = true;
            cell = unitEnd < 0 ? [] : rest[unitEnd..];
        }
        return isRead;
    }

    // '1:30' of a unit: the second part is a sixtieth of it.
    private static bool TryReadCount(ReadOnlySpan<char> text, char decimalMark, out double count)
    {
        int colon = text.IndexOf(':');
        if (colon < 0)
        {
            bool isNumber = NumberCell.TryRead(text, decimalMark, out NumberCell number);
            count = number.Value;
            return isNumber;
        }
        count = 0;
        if (
            !NumberCell.TryRead(text[..colon], decimalMark, out NumberCell whole)
            || !NumberCell.TryRead(text[(colon + 1)..], decimalMark, out NumberCell part)
            || part.Value >= MinutesPerHour
        )
        {
            return false;
        }
        count = whole.Value + (part.Value / MinutesPerHour);
        return true;
    }
}
