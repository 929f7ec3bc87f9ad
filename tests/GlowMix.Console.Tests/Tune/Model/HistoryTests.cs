using GlowMix.Console.Tune.Model;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Tune.Model;

public class HistoryTests
{
    private readonly History history = new(Document("start"));

    [Fact]
    public void Turns_of_one_knob_in_a_row_are_one()
    {
        Turn("depth", "1");
        Turn("depth", "2");
        Assert.Equal(1, history.UndoCount);
        Assert.True(history.Undo());
        Assert.Equal("start", history.Present.Document.Text);
        Assert.False(history.Undo());
    }

    [Fact]
    public void Another_knob_or_a_closed_turn_begins_a_new_one()
    {
        Turn("depth", "1");
        Turn("loading", "2");
        history.Close();
        Turn("loading", "3");
        Assert.Equal(3, history.UndoCount);
    }

    [Fact]
    public void A_knob_turned_back_to_where_it_was_leaves_no_turn()
    {
        Turn("depth", "1");
        Turn("depth", "start");
        Assert.Equal(0, history.UndoCount);
    }

    [Fact]
    public void What_was_undone_comes_again_until_something_else_is_done()
    {
        Turn("depth", "1");
        Turn("loading", "2");
        history.Undo();
        Assert.Equal(1, history.RedoCount);
        Assert.True(history.Redo());
        Assert.Equal("2", history.Present.Document.Text);
        history.Undo();
        Turn("grain", "3");
        Assert.False(history.Redo());
    }

    private void Turn(string key, string text) => history.Add(new(Document(text), key, "", ""));

    private static RecipeDocument Document(string text) => RecipeDocument.Read(text, "r.yaml");
}
