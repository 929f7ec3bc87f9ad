using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace GlowMix.Console.Tests.Commands;

public class WatchTests
{
    private const string Recipe = """
        format: 1
        title: NAME
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2.5
        """;

    // Waiting ends with what is waited for; this is only for a test that would never end.
    private static readonly TimeSpan longest = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task A_watched_recipe_is_predicted_again_at_each_save_and_ends_well()
    {
        using var program = new CommandLine();
        using var stop = new CancellationTokenSource();
        using var output = new StringWriter();
        using var error = new StringWriter();
        var (shown, told) = (TextWriter.Synchronized(output), TextWriter.Synchronized(error));
        program.Stop = stop.Token;
        Save("first");
        var run = Task.Run(
            () => program.Run(shown, told, "predict", "a.yaml", "--watch"),
            TestContext.Current.CancellationToken
        );
        await Until(() => Shows("first"));

        Save("second, in place");
        await Until(() => Shows("second, in place"));

        // Many editors write another file and give it the old name.
        program.Write("a.tmp", Named("third, replaced"));
        File.Move(In("a.tmp"), In("a.yaml"), overwrite: true);
        await Until(() => Shows("third, replaced"));

        program.Write("a.yaml", "format: 1\nled: [");
        await Until(() => Tells("not YAML"));

        File.Delete(In("a.yaml"));
        await Until(() => Tells("no such file"));

        Save("fourth, back again");
        await Until(() => Shows("fourth, back again"));

        await stop.CancelAsync();
        Assert.Equal(0, await run.WaitAsync(longest, TestContext.Current.CancellationToken));

        string In(string name) => Path.Combine(program.Folder, name);
        void Save(string title) => program.Write("a.yaml", Named(title));
        bool Shows(string title) =>
            Text(shown, output).Contains($"{title} (a.yaml)", StringComparison.Ordinal);
        bool Tells(string words) => Text(told, error).Contains(words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_material_of_ones_own_is_watched_with_the_recipe()
    {
        using var program = new CommandLine();
        using var stop = new CancellationTokenSource();
        using var output = new StringWriter();
        var shown = TextWriter.Synchronized(output);
        program.Run("new", "board", "card", "--colour", "white");
        program.Stop = stop.Token;
        program.Write("a.yaml", Named("strip") + "\nboard:\n  material: card\n");
        var run = Task.Run(
            () => program.Run(shown, TextWriter.Null, "predict", "a.yaml", "--watch"),
            TestContext.Current.CancellationToken
        );
        await Until(() => Text(shown, output).Contains("strip (a.yaml)", StringComparison.Ordinal));
        string board = program.Read("materials/boards/card.yaml");
        program.Write("materials/boards/card.yaml", board.Replace("0.88", "0.5", StringComparison.Ordinal));
        await Until(() => Text(shown, output).Split("strip (a.yaml)").Length == 3);
        string[] lights =
        [
            .. Text(shown, output).Split('\n').Where(l => l.StartsWith("Light ", StringComparison.Ordinal)),
        ];
        Assert.NotEqual(lights[0], lights[1]);
        await stop.CancelAsync();
        Assert.Equal(0, await run.WaitAsync(longest, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Watching_has_no_end_to_print_for_programs()
    {
        using var program = new CommandLine();
        Assert.Equal(2, program.Run("predict", "a.yaml", "--watch", "--json"));
        Assert.Contains("leave out --json", program.Error, StringComparison.Ordinal);
    }

    private static string Named(string title) => Recipe.Replace("NAME", title, StringComparison.Ordinal);

    // A synchronised writer and its text share one lock.
    private static string Text(TextWriter synchronised, StringWriter text)
    {
        lock (synchronised)
        {
            return text.ToString();
        }
    }

    private static async Task Until(
        Func<bool> condition,
        [CallerArgumentExpression(nameof(condition))] string what = ""
    )
    {
        var since = Stopwatch.StartNew();
        while (!condition())
        {
            Assert.True(since.Elapsed < longest, $"never came: {what}");
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }
    }
}
