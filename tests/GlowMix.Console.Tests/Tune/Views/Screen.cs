using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Views;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace GlowMix.Console.Tests.Tune.Views;

/// <summary>The text UI on a terminal that is not there.</summary>
internal sealed class Screen : IDisposable
{
    private readonly IApplication app = Application.Create(new VirtualTimeProvider());
    private readonly TuneScreen screen;
    private readonly SessionToken token;

    public Screen(TuneRig rig, int columns, int rows, bool ascii = false, bool hasColour = true)
        : this(rig.Model, columns, rows, ascii, hasColour) { }

    public Screen(TuneModel model, int columns, int rows, bool ascii = false, bool hasColour = true)
    {
        app.Init(DriverRegistry.Names.ANSI);
        app.Driver!.SetScreenSize(columns, rows);
        screen = new TuneScreen(model, ascii, hasColour);
        token = app.Begin(screen)!;
        app.LayoutAndDraw(true);
    }

    public string Text => app.Driver!.ToString()!;

    public Terminal.Gui.Drawing.Cell[,] Cells => app.Driver!.Contents!;

    public void Resize(int columns, int rows)
    {
        app.Driver!.SetScreenSize(columns, rows);
        Pump();
    }

    public void Press(Key key)
    {
        app.InjectKey(key);
        Pump();
    }

    public void Mouse(int x, int y, MouseFlags flags)
    {
        app.InjectMouse(new Mouse { ScreenPosition = new(x, y), Flags = flags });
        Pump();
    }

    public void Refresh()
    {
        screen.Refresh();
        Pump();
    }

    public void Dispose()
    {
        app.End(token);
        screen.Dispose();
        app.Dispose();
    }

    private void Pump()
    {
        app.TimedEvents!.RunTimers();
        app.LayoutAndDraw();
    }
}
