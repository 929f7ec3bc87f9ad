namespace GlowMix.Console.Reports;

/// <summary>Where the LEDs of a piece would stand if they were spread evenly: a recipe tells how many, and not where.</summary>
internal static class LedPlaces
{
    /// <summary>Middle of each, in mm from the corner of the channel.</summary>
    /// <param name="count">How many.</param>
    /// <param name="lengthMm">Of the channel.</param>
    /// <param name="widthMm">Of the channel.</param>
    public static IReadOnlyList<(double XMm, double YMm)> Of(int count, double lengthMm, double widthMm)
    {
        // Rows as far apart as the LEDs in them, as nearly as whole numbers let it be.
        int rows = Math.Clamp((int)Math.Round(Math.Sqrt(count * widthMm / lengthMm)), 1, count);
        var places = new List<(double, double)>(count);
        for (int row = 0; row < rows; row++)
        {
            int inRow = (count / rows) + (row < count % rows ? 1 : 0);
            for (int i = 0; i < inRow; i++)
            {
                places.Add((lengthMm * (i + 0.5) / inRow, widthMm * (row + 0.5) / rows));
            }
        }
        return places;
    }
}
