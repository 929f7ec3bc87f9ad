using GlowMix.Console.Tune.Model;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;

namespace GlowMix.Console.Tests.Tune.Views;

public class TuneScreenTests
{
    [Theory]
    [InlineData(80, 24, false)]
    [InlineData(100, 30, false)]
    [InlineData(120, 36, true)]
    [InlineData(160, 48, true)]
    [InlineData(240, 70, true)]
    public void Numbers_pictures_and_answers_are_in_view_at_every_size(int columns, int rows, bool both)
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, columns, rows);
        string text = screen.Text;
        string[] always =
        [
            "Stair edge, warm white",
            "loading",
            "20 %",
            "LIT",
            "3800 K",
            "light kept",
            "? keys",
        ];
        Assert.All(always, part => Assert.Contains(part, text, StringComparison.Ordinal));
        Assert.Equal(both, text.Contains("DARK", StringComparison.Ordinal));
        screen.Press(Key.Tab);
        Assert.Contains("DARK", screen.Text, StringComparison.Ordinal);
        Assert.Contains("traps full", screen.Text, StringComparison.Ordinal);
        Assert.Contains("100 min", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pins_that_have_no_room_are_counted()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 80, 24);
        for (int i = 0; i < 9; i++)
        {
            screen.Press(Key.CursorRight);
            screen.Press(new Key('p'));
        }
        screen.Press(new Key('c'));
        Assert.Contains(" left out", screen.Text, StringComparison.Ordinal);
        Assert.Contains("now", screen.Text, StringComparison.Ordinal);
        screen.Resize(240, 70);
        Assert.DoesNotContain(" left out", screen.Text, StringComparison.Ordinal);
        Assert.Contains("start", screen.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(100, 30)]
    [InlineData(120, 36)]
    [InlineData(160, 48)]
    [InlineData(240, 70)]
    public void Every_panel_opens_and_closes(int columns, int rows)
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, columns, rows);
        string before = screen.Text;
        (char Key, string Says)[] panels =
        [
            ('?', "hold another number"),
            ('c', "blue to pigment, %"),
            ('m', "depth, mm"),
            ('g', "local codes"),
            ('b', "Mix 1"),
            ('o', "where each number comes from"),
        ];
        foreach (var (key, says) in panels)
        {
            screen.Press(new Key(key));
            Assert.Contains(says, screen.Text, StringComparison.OrdinalIgnoreCase);
            screen.Press(Key.Esc);
            Assert.Equal(Panel.None, rig.Model.Panel);
            Assert.DoesNotContain(says, screen.Text, StringComparison.OrdinalIgnoreCase);
            screen.Press(Key.Esc);
            Assert.Equal(before, screen.Text);
        }
    }

    [Fact]
    public void A_page_with_more_than_fits_says_so_in_a_row_of_its_own()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 80, 24);
        screen.Press(new Key('b'));
        Assert.Matches("▏ +more: down, PageDown", screen.Text);
        for (int i = 0; i < 20; i++)
        {
            screen.Press(Key.PageDown);
        }
        Assert.Matches("▏ +the end; back: up, PageUp", screen.Text);
    }

    [Fact]
    public void Escape_and_a_letter_right_behind_it_are_two_keys()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 80, 24);
        screen.Press(new Key('o'));
        screen.Press(new Key('p').WithAlt);
        Assert.Equal(Panel.None, rig.Model.Panel);
        Assert.Single(rig.Model.Pins.All);
    }

    [Fact]
    public void A_broken_recipe_shows_each_error_with_its_line_and_comes_to_life_when_it_is_mended_on_disk()
    {
        var rig = new TuneRig(
            TuneRig.StairEdge.Replace(
                "loading_percent: 20 ",
                "loading_percent: 2000 ",
                StringComparison.Ordinal
            )
        );
        using var screen = new Screen(rig, 80, 24);
        Assert.Contains("loading_percent is 2000; allowed: 0 to 80", screen.Text, StringComparison.Ordinal);
        Assert.Contains("    loading_percent: 2000 ", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("LIT", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorRight);
        rig.Store.Files[TuneRig.Name] = TuneRig.StairEdge;
        Assert.True(rig.Model.File.LookAtDisk(rig.Model));
        screen.Refresh();
        Assert.Contains("LIT  3800 K", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("2000", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clear_layer_is_seen_as_one_and_takes_pigment()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 80, 24);
        Assert.Contains("cover      no pigment", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Home);
        screen.Press(Key.CursorRight);
        Assert.Contains("loading   10 %", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_turn_shows_value_start_and_change()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 120, 36);
        rig.Hold("layers.glow.loading_percent");
        screen.Press(Key.CursorRight);
        Assert.Contains("21 %", screen.Text, StringComparison.Ordinal);
        Assert.Contains("was 20", screen.Text, StringComparison.Ordinal);
        Assert.Contains("+5 %", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Resized_in_the_middle_of_a_computation_nothing_is_lost()
    {
        var rig = new TuneRig(holdsAnswers: true);
        rig.Desk.AnswerAll();
        using var screen = new Screen(rig, 80, 24);
        rig.Hold("layers.glow.loading_percent");
        screen.Press(Key.CursorRight);
        screen.Resize(160, 48);
        Assert.Contains("DARK  …", screen.Text, StringComparison.Ordinal);
        screen.Resize(100, 30);
        rig.Desk.AnswerAll();
        screen.Refresh();
        Assert.Contains("LIT  3800 K", screen.Text, StringComparison.Ordinal);
        screen.Resize(60, 20);
        Assert.Contains(
            "needs 80 columns and 24 rows",
            screen.Text.Replace("\n", "", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        screen.Resize(80, 24);
        Assert.Contains("LIT  3800 K", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_colour_is_wanted_no_cell_has_one_and_the_held_number_is_still_seen()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 120, 36, hasColour: false);
        bool isHeldSeen = false;
        foreach (var cell in screen.Cells)
        {
            Assert.Equal(Color.None, cell.Attribute!.Value.Foreground);
            Assert.Equal(Color.None, cell.Attribute!.Value.Background);
            isHeldSeen |= cell.Attribute!.Value.Style.HasFlag(TextStyle.Reverse);
        }
        Assert.True(isHeldSeen);
    }

    [Fact]
    public void In_ascii_every_letter_is_of_ascii()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 120, 36, ascii: true);
        rig.Hold("layers.glow.loading_percent");
        foreach (char key in "+?mgbocp")
        {
            screen.Press(new Key(key));
            Assert.DoesNotContain(screen.Text, c => !char.IsAscii(c));
        }
    }

    [Fact]
    public void Without_pigment_the_dark_side_says_so()
    {
        var rig = new TuneRig(holdsAnswers: true);
        rig.Model.Take(new(rig.Text, SamplePredictions.Clear, [], true));
        using var screen = new Screen(rig, 120, 36);
        Assert.Contains("no glow, for there is no pigment", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_click_holds_a_number_the_wheel_turns_it_and_a_point_of_the_map_is_taken_by_clicking_twice()
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 120, 36);
        int row = Array.FindIndex(
            screen.Text.Split('\n'),
            line => line.Contains("loading", StringComparison.Ordinal)
        );
        screen.Mouse(50, row, MouseFlags.LeftButtonClicked);
        Assert.Equal("layers.glow.loading_percent", rig.Model.Bench.Held!.KeyPath);
        screen.Mouse(50, row, MouseFlags.WheeledUp);
        Assert.Equal("21", rig.Held);
        Assert.Contains("21 %", screen.Text, StringComparison.Ordinal);
        screen.Press(new Key('m'));
        var before = rig.Model.Map.Cursor;
        screen.Mouse(46, 12, MouseFlags.LeftButtonClicked);
        Assert.NotEqual(before, rig.Model.Map.Cursor);
        screen.Mouse(46, 12, MouseFlags.LeftButtonClicked);
        Assert.NotEqual("21", rig.Held);
        Assert.Equal(2, rig.Model.Bench.UndoCount);
    }

    [Fact]
    public void Random_keys_break_nothing_and_undo_leads_back_to_the_start() => RandomKeys(150);

    private static void RandomKeys(int count)
    {
        var rig = new TuneRig();
        using var screen = new Screen(rig, 120, 36);
        Key[] keys =
        [
            Key.CursorUp,
            Key.CursorDown,
            Key.CursorLeft,
            Key.CursorRight,
            Key.CursorRight.WithShift,
            Key.CursorLeft.WithCtrl,
            Key.PageUp,
            Key.PageDown,
            Key.Home,
            Key.End,
            Key.Enter,
            Key.Esc,
            Key.Tab,
            Key.Backspace,
            Key.Delete,
            Key.F1,
            .. "0123456789.-+[]{}xurpfcmgbo?<>swzäßé~".Select(c => new Key(c)),
        ];
        // Own sequence: the same keys in every run.
        uint state = 20;
        for (int i = 0; i < count; i++)
        {
            state = (state * 1664525) + 1013904223;
            screen.Press(keys[(int)((state >> 8) % (uint)keys.Length)]);
            Assert.False(rig.Model.HasEnded);
        }
        for (int i = 0; i < 3; i++)
        {
            rig.Press(StrokeKey.Escape);
        }
        while (rig.Model.Bench.UndoCount > 0)
        {
            rig.Press("u");
        }
        Assert.Equal(TuneRig.StairEdge, rig.Text);
    }
}
