using System.Drawing;
using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace GlowMix.Console.Tune.Views;

/// <summary>The whole screen: places the parts, hands keys to the model.</summary>
internal sealed class TuneScreen : Runnable
{
    private readonly TuneModel model;
    private readonly HeadView head;
    private readonly SideView lit;
    private readonly NumbersView numbers;
    private readonly SideView dark;
    private readonly PanelView panel;
    private readonly FootView foot;
    private readonly TooSmallView tooSmall;
    private readonly LeafView[] parts;

    /// <param name="model">What is shown.</param>
    /// <param name="ascii">Letters of ASCII only.</param>
    /// <param name="hasColour">False for none at all.</param>
    public TuneScreen(TuneModel model, bool ascii, bool hasColour)
    {
        this.model = model;
        CanFocus = true;
        (Width, Height) = (Dim.Fill(), Dim.Fill());
        head = new(model, ascii);
        lit = new(model, ascii, hasColour, dark: false);
        numbers = new(model, ascii);
        dark = new(model, ascii, hasColour, dark: true);
        panel = new(model, ascii, hasColour);
        foot = new(model, ascii);
        tooSmall = new(ascii);
        parts = [head, lit, numbers, dark, panel, foot, tooSmall];
        Add(parts);
    }

    /// <summary>Shows what the model holds now.</summary>
    public void Refresh()
    {
        if (model.HasEnded)
        {
            RequestStop();
            return;
        }
        Arrange(Viewport.Size);
        foreach (var part in parts)
        {
            part.SetNeedsDraw();
        }
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (ScreenPlan.HasRoom(Viewport.Width, Viewport.Height))
        {
            foreach (var stroke in Strokes.Of(key))
            {
                model.Press(stroke);
            }
        }
        else if (Strokes.Of(key) is [.., { Key: StrokeKey.Sign, Sign: 'q' or 'c' } last])
        {
            model.Press(last);
        }
        Refresh();
        return true;
    }

    /// <inheritdoc/>
    protected override void OnSubViewLayout(LayoutEventArgs args)
    {
        Arrange(Viewport.Size);
        base.OnSubViewLayout(args);
    }

    private void Arrange(Size size)
    {
        bool hasRoom = ScreenPlan.HasRoom(size.Width, size.Height);
        bool hasErrors = model.Bench.Piece is null && model.Panel == Panel.None;
        var plan =
            hasRoom && hasErrors ? ScreenPlan.OfErrors(size.Width, size.Height)
            : hasRoom
                ? ScreenPlan.Of(
                    size.Width,
                    size.Height,
                    model.Panel != Panel.None,
                    model.Panel is Panel.Keys or Panel.Pins or Panel.Markings or Panel.Batch or Panel.Sources,
                    model.ShowsDark
                )
            : new(default, default, default, default, default, default);
        head.Place(plan.Head);
        lit.Place(plan.Lit);
        numbers.Place(plan.Numbers);
        dark.Place(plan.Dark);
        panel.Place(plan.Panel);
        foot.Place(plan.Foot);
        tooSmall.Place(hasRoom ? default : new(0, 0, size.Width, size.Height));
    }
}
