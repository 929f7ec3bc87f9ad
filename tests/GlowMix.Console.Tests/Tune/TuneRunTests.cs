using GlowMix.Console.Commands;
using GlowMix.Console.Tune;
using GlowMix.Documents;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace GlowMix.Console.Tests.Tune;

public sealed class TuneRunTests : IDisposable
{
    private const string Name = TuneRig.Name;

    private readonly CommandLine folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_fault_on_the_screens_thread_gives_the_terminal_back_and_leaves_the_turns_beside_a_whole_file()
    {
        folder.Write(Name, TuneRig.StairEdge);
        using IApplication app = Application.Create(new VirtualTimeProvider());
        app.InitializedChanged += (_, e) =>
        {
            if (e.Value)
            {
                // Down to the loading, one step up, and then what no code foresees.
                app.Invoke(() => Press(app, Key.CursorDown, Key.CursorRight));
                app.Invoke(() => throw new InvalidOperationException("a fault on purpose"));
            }
        };

        var fault = Assert.Throws<InvalidOperationException>(() =>
            Run(app, TestContext.Current.CancellationToken)
        );

        Assert.Equal("a fault on purpose", fault.Message);
        Assert.Equal(TuneRig.StairEdge, folder.Read(Name));
        Assert.Equal(
            TuneRig.StairEdge.Replace(
                "loading_percent: 20 ",
                "loading_percent: 21 ",
                StringComparison.Ordinal
            ),
            folder.Read(Name + ".autosave")
        );
        app.Dispose();
        Assert.False(app.Initialized);
    }

    [Fact]
    public void A_run_that_is_asked_to_end_does_so_without_a_question()
    {
        folder.Write(Name, TuneRig.StairEdge);
        using var stop = new CancellationTokenSource();
        using IApplication app = Application.Create(new VirtualTimeProvider());
        app.InitializedChanged += (_, e) =>
        {
            if (e.Value)
            {
                app.Invoke(() => Press(app, Key.CursorDown, Key.CursorRight));
                app.Invoke(stop.Cancel);
            }
        };
        Assert.Equal(ExitCode.Done, Run(app, stop.Token));
        Assert.Equal(TuneRig.StairEdge, folder.Read(Name));
        Assert.Contains("loading_percent: 21 ", folder.Read(Name + ".autosave"), StringComparison.Ordinal);
    }

    private static void Press(IApplication app, params Key[] keys)
    {
        foreach (var key in keys)
        {
            app.InjectKey(key);
        }
    }

    private int Run(IApplication app, CancellationToken stop) =>
        TuneRun.On(
            app,
            new FileText(Name, TuneRig.StairEdge),
            new Surroundings
            {
                Out = TextWriter.Null,
                Error = TextWriter.Null,
                Folder = folder.Folder,
                Stop = stop,
            },
            new RecipeRunner(),
            ascii: false,
            hasColour: true
        );
}
