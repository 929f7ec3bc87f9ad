using System.Text;
using GlowMix.Documents;

namespace GlowMix.Console.Tests;

/// <summary>What goes wrong with files: each is told in plain lines with its place, and nothing else happens.</summary>
public sealed class BadInputTests : IDisposable
{
    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    public static TheoryData<string, string, string> SpoiltRecipes =>
        new()
        {
            // What is written, what stands there instead, what is told.
            { "format: 1", "format: [1", "a.yaml:" },
            {
                "resin: epoxy-clear-slow",
                "resin: epoxy-clear-slow\nresin: epoxy-clear-fast",
                "a.yaml:3:1: key 'resin' stands twice; first on line 2"
            },
            { "depth_mm: 2", "dept_mm: 2", "a.yaml:6:5: unknown key 'dept_mm'; did you mean 'depth_mm'?" },
            { "depth_mm: 2", "depth_in: 0.25", "a.yaml:6:5: unknown key 'depth_in'; write depth_mm: 6.35" },
            { "resin: epoxy-clear-slow\n", "", "a.yaml: 'resin' is missing" },
            {
                "depth_mm: 2",
                "depth_mm: deep",
                "a.yaml:6:15: depth_mm is 'deep'; needed: a number, 0.01 to 200"
            },
            { "depth_mm: 2", "depth_mm: .nan", "a.yaml:6:15: depth_mm is '.nan'" },
            { "depth_mm: 2", "depth_mm: Infinity", "a.yaml:6:15: depth_mm is 'Infinity'" },
            { "depth_mm: 2", "depth_mm: 1e999", "a.yaml:6:15: depth_mm is '1e999'" },
            { "depth_mm: 2", "depth_mm: 2,5", "a.yaml:6:15: depth_mm is '2,5'" },
            { "depth_mm: 2", "depth_mm: -2", "a.yaml:6:15: depth_mm is -2; allowed: 0.01 to 200" },
            { "depth_mm: 2", "depth_mm: 0", "a.yaml:6:15: depth_mm is 0; allowed: 0.01 to 200" },
            { "depth_mm: 2", "depth_mm: [2, 3]", "a.yaml:6:15: depth_mm is a list; needed: a number" },
            {
                "loading_percent: 20",
                "loading_percent: 85",
                "a.yaml:8:22: loading_percent is 85; allowed: 0 to 80"
            },
            {
                "loading_percent: 20",
                "loading_percent: 100",
                "a.yaml:8:22: loading_percent is 100; allowed: 0 to 80"
            },
            {
                "loading_percent: 20",
                "loading_percent: 20\n    loading_g_per_100g_resin: 25",
                "a.yaml:9:5: loading_g_per_100g_resin and loading_percent exclude each other"
            },
            {
                "layers:",
                "charge:\n  steps:\n    - light: own-leds\n      minutes: 0\nlayers:",
                "a.yaml:8:16: minutes is 0; allowed: above 0"
            },
            {
                "layers:",
                "charge:\n  steps:\n    - light: uv-365\n      illuminance_lx: 50\n      minutes: 5\nlayers:",
                "a.yaml:8:23: "
            },
            {
                "material: warm-white-3000",
                "material: warm-white-3000\n  drive_ma: 400",
                "a.yaml:5:13: drive_ma is 400"
            },
            {
                "pigment: green-aluminate",
                "pigment: green-aluminat",
                "a.yaml:7:14: no pigment 'green-aluminat' in materials/pigments or on the shelf; did you mean 'green-aluminate'?"
            },
            {
                "resin: epoxy-clear-slow",
                "resin: own",
                "materials/resins/own.yaml:2:7: kind is 'led'; needed here: resin"
            },
            {
                "material: warm-white-3000",
                "spectrum: column.csv\n  flux_lm: 20\n  at_ma: 60",
                "column.csv:1:1: "
            },
            {
                "material: warm-white-3000",
                "spectrum: unsorted.csv\n  flux_lm: 20\n  at_ma: 60",
                "unsorted.csv:3:1: "
            },
            {
                "material: warm-white-3000",
                "spectrum: twice.csv\n  flux_lm: 20\n  at_ma: 60",
                "twice.csv:3:1: "
            },
            { "layers:", "x: &a [1]\nlayers:", "a.yaml:5:4: anchors (&) and aliases (*) are not allowed" },
        };

    [Theory, MemberData(nameof(SpoiltRecipes))]
    public void A_spoilt_recipe_is_told_with_its_place(string written, string instead, string problem)
    {
        line.Write("a.yaml", BadRecipes.With(written, instead));
        line.Write("materials/resins/own.yaml", "material_format: 1\nkind: led\n");
        line.Write("column.csv", "400\n410\n420\n");
        line.Write("unsorted.csv", "400,1\n410,2\n405,1\n");
        line.Write("twice.csv", "400,1\n410,2\n410,1\n");
        Refused(ExitCode.Content, problem);
    }

    [Fact]
    public void A_missing_file() => Refused(ExitCode.FileAccess, $"a.yaml: {ProblemTexts.NotFound}");

    [Fact]
    public void A_directory()
    {
        Directory.CreateDirectory(Path.Combine(line.Folder, "a.yaml"));
        Refused(ExitCode.FileAccess, $"a.yaml: {ProblemTexts.IsADirectory}");
    }

    [Fact]
    public void An_empty_file()
    {
        line.Write("a.yaml", "");
        Refused(ExitCode.Content, $"a.yaml: {ProblemTexts.Empty}");
    }

    [Fact]
    public void A_hundred_megabytes()
    {
        using (var stream = File.Create(Path.Combine(line.Folder, "a.yaml")))
        {
            stream.SetLength(100_000_000);
        }
        Refused(ExitCode.Content, $"a.yaml: {ProblemTexts.TooLong(Document.LongestBytes)}");
    }

    [Fact]
    public void A_bomb_of_aliases()
    {
        var text = new StringBuilder("format: 1\na0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++)
        {
            text.Append(
                System.Globalization.CultureInfo.InvariantCulture,
                $"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]\n"
            );
        }
        line.Write("a.yaml", text.ToString());
        Refused(ExitCode.Content, "a.yaml:2:5: ");
    }

    [Fact]
    public void A_hundred_thousand_open_brackets()
    {
        line.Write("a.yaml", "format: " + new string('[', 100_000));
        Refused(ExitCode.Content, "a.yaml:1:");
    }

    [Fact]
    public void A_thousand_layers()
    {
        line.Write("a.yaml", BadRecipes.Good + string.Concat(Enumerable.Repeat("  - depth_mm: 1\n", 1000)));
        Refused(ExitCode.Content, "a.yaml:6:3: layers has 1001 items; allowed: 1 to 12");
    }

    [Fact]
    public void Bytes_that_are_not_UTF_8()
    {
        File.WriteAllBytes(
            Path.Combine(line.Folder, "a.yaml"),
            [.. "format: 1\ntitle: "u8, 0xE9, (byte)'\n']
        );
        Refused(ExitCode.Content, "a.yaml:2:8: not UTF-8 text (byte 0xE9)");
    }

    [Fact]
    public void A_spectrum_that_is_not_there()
    {
        line.Write(
            "a.yaml",
            BadRecipes.With("material: warm-white-3000", "spectrum: none.csv\n  flux_lm: 20\n  at_ma: 60")
        );
        Refused(ExitCode.FileAccess, $"none.csv: {ProblemTexts.NotFound}");
    }

    [Fact]
    public void Pigment_of_no_loading_is_legal()
    {
        line.Write("a.yaml", BadRecipes.With("loading_percent: 20", "loading_percent: 0"));
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml"));
        Assert.Empty(line.Error);
    }

    // Every way of asking tells the same, and none leaves a file or a trace.
    private void Refused(int code, string problem)
    {
        string[][] commands =
        [
            ["check", "a.yaml"],
            ["predict", "a.yaml", "--json"],
            ["predict", "a.yaml", "--csv", "out"],
        ];
        foreach (string[] command in commands)
        {
            Assert.Equal(code, line.Run(command));
            Assert.Contains(problem, line.Error, StringComparison.Ordinal);
            Assert.DoesNotContain("error in the program", line.Error, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", line.Error, StringComparison.Ordinal);
            Assert.Empty(line.Out);
            Assert.False(Directory.Exists(Path.Combine(line.Folder, "out")));
        }
    }
}
