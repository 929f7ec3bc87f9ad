namespace GlowMix.Console.Tune.Pictures;

/// <summary>What stands where on a screen of some size.</summary>
/// <param name="Head">The piece's name.</param>
/// <param name="Lit">The lit side; empty where it has no room.</param>
/// <param name="Numbers">The numbers to turn.</param>
/// <param name="Dark">The dark side; empty where it has no room.</param>
/// <param name="Panel">Beside or below the pictures; empty if none is open.</param>
/// <param name="Foot">The sentence.</param>
internal sealed record ScreenPlan(Area Head, Area Lit, Area Numbers, Area Dark, Area Panel, Area Foot)
{
    /// <summary>The smallest screen.</summary>
    public const int LeastColumns = 80;

    /// <summary>The smallest screen.</summary>
    public const int LeastRows = 24;

    private const int BothSidesColumns = 120;
    private const int BothSidesRows = 36;
    private const int PanelBelowColumns = 140;
    private const int PanelBelowRows = 46;
    private const int NumbersColumns = 36;
    private const int WideNumbersColumns = 44;
    private const int FootRows = 2;

    /// <summary>Whether anything can be shown at all.</summary>
    public static bool HasRoom(int columns, int rows) => columns >= LeastColumns && rows >= LeastRows;

    /// <summary>Whether both sides of the piece have room at once.</summary>
    public static bool HasBothSides(int columns, int rows) =>
        columns >= BothSidesColumns && rows >= BothSidesRows;

    /// <summary>The plan where there is nothing to draw and much to say: a recipe with errors.</summary>
    public static ScreenPlan OfErrors(int columns, int rows) =>
        new(
            new(0, 0, columns, 1),
            default,
            new(0, 1, columns, rows - 1 - FootRows),
            default,
            default,
            new(0, rows - FootRows, columns, FootRows)
        );

    /// <summary>The plan of a screen that has room.</summary>
    /// <param name="columns">Its width.</param>
    /// <param name="rows">Its height.</param>
    /// <param name="hasPanel">A panel is open.</param>
    /// <param name="panelIsText">It is a text, which needs the whole width where that is small.</param>
    /// <param name="showsDark">Of the sides, the dark one, where only one has room.</param>
    public static ScreenPlan Of(int columns, int rows, bool hasPanel, bool panelIsText, bool showsDark)
    {
        var head = new Area(0, 0, columns, 1);
        var foot = new Area(0, rows - FootRows, columns, FootRows);
        var body = new Area(0, 1, columns, rows - 1 - FootRows);
        if (!HasBothSides(columns, rows))
        {
            if (hasPanel && panelIsText)
            {
                return new(head, default, default, default, body, foot);
            }
            var side = body with { X = NumbersColumns, Columns = columns - NumbersColumns };
            return new(
                head,
                hasPanel || showsDark ? default : side,
                body with
                {
                    Columns = NumbersColumns,
                },
                hasPanel || !showsDark ? default : side,
                hasPanel ? side : default,
                foot
            );
        }
        int numbers = columns >= PanelBelowColumns ? WideNumbersColumns : NumbersColumns;
        if (!hasPanel)
        {
            return Beside(body, default);
        }
        if (columns >= PanelBelowColumns && rows >= PanelBelowRows)
        {
            int below = Math.Max(18, body.Rows * 4 / 10);
            return Beside(
                body with
                {
                    Rows = body.Rows - below,
                },
                body with
                {
                    Y = body.Y + body.Rows - below,
                    Rows = below,
                }
            );
        }
        return new(
            head,
            default,
            body with
            {
                Columns = numbers,
            },
            default,
            body with
            {
                X = numbers,
                Columns = columns - numbers,
            },
            foot
        );

        ScreenPlan Beside(Area upper, Area panel)
        {
            int left = (columns - numbers) / 2;
            return new(
                head,
                upper with
                {
                    Columns = left,
                },
                upper with
                {
                    X = left,
                    Columns = numbers,
                },
                upper with
                {
                    X = left + numbers,
                    Columns = columns - numbers - left,
                },
                panel,
                foot
            );
        }
    }
}
