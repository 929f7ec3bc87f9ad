namespace GlowMix.Console.Tune.Model;

/// <summary>Keys that mean something else while a panel is open.</summary>
internal static class PanelKeys
{
    private const int PageRows = 10;

    /// <summary>Does what a key means in the open panel.</summary>
    /// <returns>Whether it means anything there.</returns>
    public static bool Press(TuneModel model, Stroke stroke)
    {
        switch (stroke.Key)
        {
            case StrokeKey.PageDown:
                model.Scroll += PageRows;
                return true;
            case StrokeKey.PageUp:
                model.Scroll = Math.Max(0, model.Scroll - PageRows);
                return true;
            default:
                return false;
        }
    }
}
