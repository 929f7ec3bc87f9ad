namespace GlowMix.Console.Tune.Model;

/// <summary>Keys that mean something else while a panel is open.</summary>
internal static class PanelKeys
{
    private const int PageRows = 10;

    /// <summary>Does what a key means in the open panel.</summary>
    /// <returns>Whether it means anything there.</returns>
    public static bool Press(TuneModel model, Stroke stroke) =>
        model.Panel switch
        {
            Panel.Map => OnMap(model, stroke),
            Panel.Batch => OnBatch(model, stroke) || Scrolls(model, stroke),
            Panel.Keys or Panel.Markings or Panel.Sources => Scrolls(model, stroke),
            _ => false,
        };

    private static bool OnMap(TuneModel model, Stroke stroke)
    {
        var map = model.Map;
        switch (stroke.Key)
        {
            case StrokeKey.Left:
                map.Move(-1, 0);
                return true;
            case StrokeKey.Right:
                map.Move(1, 0);
                return true;
            case StrokeKey.Up:
                map.Move(0, 1);
                return true;
            case StrokeKey.Down:
                map.Move(0, -1);
                return true;
            case StrokeKey.Enter:
                map.Take();
                return true;
            default:
                return false;
        }
    }

    private static bool OnBatch(TuneModel model, Stroke stroke)
    {
        if (stroke is not { Key: StrokeKey.Sign, Sign: '<' or '>' })
        {
            return false;
        }
        model.Pages.ChangeCount(stroke.Sign == '>' ? 1 : -1);
        return true;
    }

    private static bool Scrolls(TuneModel model, Stroke stroke)
    {
        int by = stroke.Key switch
        {
            StrokeKey.PageDown => PageRows,
            StrokeKey.PageUp => -PageRows,
            StrokeKey.Down => 1,
            StrokeKey.Up => -1,
            _ => 0,
        };
        model.Scroll = Math.Max(0, model.Scroll + by);
        return by != 0;
    }
}
