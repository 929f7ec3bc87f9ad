using GlowMix.Console.Commands;
using GlowMix.Console.Tune.Model;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Tune.Model;

public class TuneModelTests
{
    private const string Loading = "layers.glow.loading_percent";

    private static string Recipe(string name) =>
        File.ReadAllText(Path.Combine(TopFolder.Path, "recipes", name));

    [Fact]
    public void Arrows_turn_the_held_number_in_three_sizes()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press(StrokeKey.Right);
        Assert.Equal("21", rig.Held);
        rig.Press(StrokeKey.Right, shift: true);
        Assert.Equal("21.1", rig.Held);
        rig.Press(StrokeKey.Right, ctrl: true);
        Assert.Equal("25", rig.Held);
        rig.Press("-]{");
        Assert.Equal("20", rig.Held);
    }

    [Fact]
    public void Every_knob_of_the_sample_turns_and_comes_back()
    {
        var rig = new TuneRig();
        foreach (var knob in rig.Model.Bench.Knobs.ToArray())
        {
            rig.Hold(knob.KeyPath);
            rig.Press(StrokeKey.Left);
            rig.Press(StrokeKey.Right);
            rig.Press(StrokeKey.Right);
            Assert.True(rig.Held != knob.Value || rig.Model.Foot.Length > 0, knob.KeyPath);
        }
        while (rig.Model.Bench.UndoCount > 0)
        {
            rig.Press("u");
        }
        Assert.Equal(TuneRig.StairEdge, rig.Text);
    }

    [Fact]
    public void The_desk_is_told_where_the_next_key_leads_and_what_it_worked_out_is_shown_at_once()
    {
        var rig = new TuneRig(holdsAnswers: true);
        rig.Desk.AnswerAll();
        rig.Hold("layers.glow.grain_median_um");
        string[] ahead = [.. rig.Desk.Ahead.Select(d => d.Get("layers.glow.grain_median_um")!)];
        Assert.Equal(["45", "35", "41", "39", "60", "20"], ahead);
        foreach (var document in rig.Desk.Ahead)
        {
            rig.Model.Take(CannedDesk.Answer(document, banded: false));
        }
        Assert.Equal("40", rig.Held);
        rig.Press(StrokeKey.Right);
        Assert.True(rig.Model.IsFresh);
    }

    [Fact]
    public void What_the_hand_did_last_is_worked_out_first()
    {
        var rig = new TuneRig();
        rig.Hold("layers.glow.grain_median_um");
        rig.Press("{");
        Assert.Equal("20", rig.Held);
        rig.Press("}");
        Assert.Equal("40", rig.Held);
        Assert.Equal("60", rig.Desk.Ahead.First().Get("layers.glow.grain_median_um"));
    }

    [Fact]
    public void A_clear_layer_takes_a_pigment_with_a_loading_to_begin_with()
    {
        var rig = new TuneRig();
        const string Pigment = "layers.cover.pigment";
        rig.Hold(Pigment);
        Assert.Equal("none", rig.Held);
        Assert.Null(rig.Model.Set("violet-blue-aluminate"));
        Assert.Contains("none → violet-blue-aluminate, 10 %", rig.Model.Foot, StringComparison.Ordinal);
        rig.Hold("layers.cover.loading_percent");
        rig.Press(StrokeKey.Right);
        Assert.Equal("11", rig.Held);
        // What is put back is what stood there; that nothing did, only undoing brings back.
        rig.Hold(Pigment);
        rig.Press("x");
        Assert.Contains("clear at the start", rig.Model.Foot, StringComparison.Ordinal);
        rig.Press("uu");
        Assert.Equal(TuneRig.StairEdge, rig.Text);
    }

    [Fact]
    public void A_led_known_from_its_label_is_turned_by_the_labels_numbers()
    {
        var rig = new TuneRig(Recipe("reel-label.yaml"));
        rig.Hold("led.cct_k");
        rig.Press(StrokeKey.Right);
        Assert.Equal("4100", rig.Held);
        foreach (string key in (string[])["led.ra", "led.flux_lm", "led.at_ma"])
        {
            rig.Hold(key);
            rig.Press(StrokeKey.Left);
            Assert.Equal(key, rig.Model.Bench.Present.KeyPath);
        }
        rig.Hold("layers.glow.grain_median_um");
        Assert.Equal("40.3", rig.Held);
    }

    [Fact]
    public void A_led_whose_spectrum_was_measured_is_shown_and_says_why_it_does_not_turn()
    {
        const string Name = "measured-led.yaml";
        var shelf = new Shelf();
        string text = Recipe(Name);
        var world = new Surroundings
        {
            Out = TextWriter.Null,
            Error = TextWriter.Null,
            Folder = Path.Combine(TopFolder.Path, "recipes"),
        };
        var files = FolderMaterials.BesideFile(Name, world);
        var bench = new Bench(
            RecipeDocument.Read(text, Name),
            new KnobBoard(shelf),
            document => PieceAssembly.Of(document, shelf, files)
        );
        bench.Hold(bench.Knobs.ToList().FindIndex(k => k.KeyPath == "led.spectrum"));
        Assert.Equal("measured-led.csv", bench.Held!.Value);
        Assert.Contains(
            "what its file measured",
            bench.Turn(StepSize.Usual, up: true)!,
            StringComparison.Ordinal
        );
        Assert.Contains("what its file measured", bench.SetTyped("other.csv")!, StringComparison.Ordinal);
        Assert.Equal(text, bench.Document.Text);
    }

    [Fact]
    public void A_turn_keeps_every_comment()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press(StrokeKey.Right);
        string[] before = TuneRig.StairEdge.Split('\n');
        string[] after = rig.Text.Split('\n');
        Assert.Equal(before.Length, after.Length);
        Assert.Equal(1, before.Zip(after).Count(lines => lines.First != lines.Second));
    }

    [Fact]
    public void A_typed_value_is_set_exactly()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("17.25");
        Assert.Equal("20", rig.Held);
        rig.Press(StrokeKey.Enter);
        Assert.Equal("17.25", rig.Held);
        Assert.Null(rig.Model.Entry);
        rig.Press("+u");
        Assert.Equal("17.25", rig.Held);
    }

    [Theory]
    [InlineData("85", "0 to 80")]
    [InlineData("3,5", "3.5")]
    [InlineData("1e", "0 to 80")]
    public void A_value_out_of_range_is_refused_at_the_field_and_changes_nothing(string typed, string told)
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press(typed);
        rig.Press(StrokeKey.Enter);
        Assert.Contains(told, rig.Model.Foot, StringComparison.Ordinal);
        Assert.Equal(TuneRig.StairEdge, rig.Text);
        rig.Press(StrokeKey.Escape);
        Assert.Null(rig.Model.Entry);
    }

    [Fact]
    public void The_end_of_a_range_is_told_and_not_clipped()
    {
        var rig = new TuneRig();
        rig.Hold("layers.glow.depth_mm");
        for (int i = 0; i < 4; i++)
        {
            rig.Press(StrokeKey.Left, ctrl: true);
        }
        Assert.Equal("0.5", rig.Held);
        rig.Press(StrokeKey.Left, ctrl: true);
        Assert.Equal("0.5", rig.Held);
        Assert.Contains("allowed: 0.01 to 200", rig.Model.Foot, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_is_taken_by_its_beginning()
    {
        var rig = new TuneRig();
        rig.Hold("resin");
        rig.Press(StrokeKey.Enter);
        rig.Press("silicone");
        rig.Press(StrokeKey.Enter);
        Assert.Contains("silicone-clear, silicone-phenyl", rig.Model.Foot, StringComparison.Ordinal);
        rig.Press("-p");
        rig.Press(StrokeKey.Enter);
        Assert.Equal("silicone-phenyl", rig.Held);
    }

    [Fact]
    public void The_sentence_says_what_the_last_turn_gave_from_where_it_began()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("+++++");
        Assert.StartsWith(
            "Glow loading 20 → 25 % gave 25 % more glow at 60 min",
            rig.Model.Foot,
            StringComparison.Ordinal
        );
        rig.Press("u");
        Assert.StartsWith("As the file has it", rig.Model.Foot, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_of_an_older_state_are_never_taken_for_those_of_the_present()
    {
        var rig = new TuneRig(holdsAnswers: true);
        rig.Desk.AnswerAll();
        rig.Hold(Loading);
        rig.Press("+");
        var old = CannedDesk.Answer(rig.Model.Bench.Document, banded: true);
        rig.Press("+");
        rig.Model.Take(old);
        Assert.False(rig.Model.IsFresh);
        Assert.EndsWith("…", rig.Model.Foot, StringComparison.Ordinal);
        rig.Desk.AnswerAll(banded: false);
        Assert.True(rig.Model.IsFresh);
        Assert.False(rig.Model.Now!.HasBands);
    }

    [Fact]
    public void Pins_are_flipped_through_and_the_flip_can_be_undone()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("p+++p--f");
        Assert.Equal("20", rig.Held);
        rig.Press("f");
        Assert.Equal("23", rig.Held);
        rig.Press("uu");
        Assert.Equal("21", rig.Held);
    }

    [Fact]
    public void Saving_writes_what_is_seen_and_quitting_asks_about_what_is_not_saved()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("+s");
        Assert.Equal(rig.Text, rig.Store.Files[TuneRig.Name]);
        rig.Press("+q");
        Assert.False(rig.Model.HasEnded);
        Assert.Contains("d drop", rig.Model.Foot, StringComparison.Ordinal);
        rig.Press(StrokeKey.Escape);
        Assert.Null(rig.Model.Question);
        rig.Press("qd");
        Assert.True(rig.Model.HasEnded);
        Assert.Contains("loading_percent: 21", rig.Store.Files[TuneRig.Name], StringComparison.Ordinal);
    }

    [Fact]
    public void A_save_that_fails_is_told_and_does_not_quit()
    {
        var rig = new TuneRig();
        rig.Store.Refusal = new(TuneRig.Name, null, "no permission");
        rig.Hold(Loading);
        rig.Press("+qs");
        Assert.False(rig.Model.HasEnded);
        Assert.Contains("no permission", rig.Model.Foot, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_changed_by_someone_else_is_opened_anew_where_nothing_is_lost_and_asked_about_where_it_is()
    {
        var rig = new TuneRig();
        string theirs = TuneRig.StairEdge.Replace(
            "loading_percent: 20",
            "loading_percent: 30",
            StringComparison.Ordinal
        );
        rig.Store.Files[TuneRig.Name] = theirs;
        rig.Model.File.LookAtDisk(rig.Model);
        Assert.Equal(theirs, rig.Text);

        rig.Hold(Loading);
        rig.Press("+");
        string mine = rig.Text;
        rig.Store.Files[TuneRig.Name] = TuneRig.StairEdge;
        rig.Model.File.LookAtDisk(rig.Model);
        Assert.NotNull(rig.Model.Question);
        rig.Press("k");
        Assert.Equal(mine, rig.Text);
        rig.Store.Files[TuneRig.Name] = theirs;
        rig.Press("s");
        Assert.NotNull(rig.Model.Question);
        rig.Press("w");
        Assert.Equal(mine, rig.Store.Files[TuneRig.Name]);
    }

    [Fact]
    public void What_a_run_left_behind_is_offered_and_taken_up_as_a_turn()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("+");
        rig.Model.File.Autosave(rig.Model);
        string left = rig.Store.Autosaved!;
        Assert.Equal(rig.Text, left);

        var next = new TuneRig { Store = { Autosaved = left } };
        next.Model.File.OfferAutosave(next.Model);
        next.Press("t");
        Assert.Equal(left, next.Text);
        next.Press("u");
        Assert.Equal(TuneRig.StairEdge, next.Text);
        next.Press("rs");
        Assert.Null(next.Store.Autosaved);
    }

    [Fact]
    public void Turns_that_were_dropped_when_leaving_are_not_left_beside_the_file_again()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("+");
        rig.Model.File.Autosave(rig.Model);
        rig.Press("qd");
        Assert.True(rig.Model.HasEnded);
        // As the run does at its end, whatever ended it.
        rig.Model.File.Autosave(rig.Model);
        Assert.Null(rig.Store.Autosaved);
    }

    [Fact]
    public void What_was_saved_and_then_written_over_by_someone_is_left_beside_the_file_again()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("+");
        string mine = rig.Text;
        rig.Model.File.Autosave(rig.Model);
        rig.Press("s");
        Assert.Null(rig.Store.Autosaved);
        rig.Press("+");
        rig.Store.Files[TuneRig.Name] = TuneRig.StairEdge;
        rig.Model.File.LookAtDisk(rig.Model);
        rig.Press("ku");
        Assert.Equal(mine, rig.Text);
        rig.Model.File.Autosave(rig.Model);
        Assert.Equal(mine, rig.Store.Autosaved);
    }

    [Fact]
    public void Saving_under_another_name_goes_on_with_that_file_and_asks_before_writing_over_one()
    {
        var rig = new TuneRig();
        rig.Hold(Loading);
        rig.Press("+S");
        for (int i = 0; i < TuneRig.Name.Length; i++)
        {
            rig.Press(StrokeKey.Backspace);
        }
        rig.Store.Files["other.yaml"] = "theirs";
        rig.Press("other.yaml");
        rig.Press(StrokeKey.Enter);
        Assert.Equal("theirs", rig.Store.Files["other.yaml"]);
        rig.Press("w");
        Assert.Equal(rig.Text, rig.Store.Files["other.yaml"]);
        Assert.Equal("other.yaml", rig.Model.File.Name);
        Assert.Equal(TuneRig.StairEdge, rig.Store.Files[TuneRig.Name]);
    }

    [Fact]
    public void A_broken_recipe_opens_with_its_errors_and_comes_to_life_when_mended()
    {
        var rig = new TuneRig(
            "format: 1\nresin: nonesuch\nled:\n  material: warm-white-3000\nlayers:\n  - depth_mm: -1\n"
        );
        Assert.Null(rig.Model.Bench.Piece);
        Assert.NotEmpty(rig.Model.Bench.Problems);
        rig.Press("+-xupfm12");
        rig.Press(StrokeKey.Enter);
        rig.Press(StrokeKey.Escape);
        rig.Store.Files[TuneRig.Name] = TuneRig.StairEdge;
        rig.Model.File.LookAtDisk(rig.Model);
        Assert.NotNull(rig.Model.Bench.Piece);
        Assert.True(rig.Model.IsFresh);
    }

    [Fact]
    public void Every_key_of_the_keys_page_does_something_known()
    {
        Assert.Equal(KeyTable.All.Count, KeyTable.All.Select(k => k.Written).Distinct().Count());
        foreach (char sign in "-+[]{}0.xurpfcmgbosS?q")
        {
            Assert.NotNull(KeyTable.Find(Stroke.Of(sign)));
        }
    }

    [Fact]
    public void A_recipe_without_a_charge_gets_one_when_its_time_is_turned()
    {
        string text = File.ReadAllText(Path.Combine(TopFolder.Path, "recipes", "shortest.yaml"));
        var rig = new TuneRig(text);
        rig.Hold("charge.steps.1.minutes");
        rig.Press("+");
        Assert.Equal("490", rig.Held);
        Assert.StartsWith(text, rig.Text, StringComparison.Ordinal);
        rig.Press("u");
        Assert.Equal(text, rig.Text);
    }
}
