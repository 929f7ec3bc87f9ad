namespace GlowMix.Console.Tests.Commands;

public class NewCommandTests
{
    [Fact]
    public void A_first_recipe_is_commented_and_can_be_predicted()
    {
        using var program = new CommandLine();
        Assert.Equal(
            0,
            program.Run("new", "recipe", "first", "--count", "60", "--length-mm", "500", "--width-mm", "12")
        );
        Assert.Contains("# from the board", program.Read("first.yaml"), StringComparison.Ordinal);
        Assert.Contains("escape routes", program.Out, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("predict", "first.yaml", "--quick"));
        Assert.Empty(program.Error);
        Assert.Contains("pigment", program.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--depth-mm", "1.25", "--pigment", "none")]
    [InlineData("--led", "4000", "--flux-lm", "20", "--at-ma", "60")]
    [InlineData("--cover-mm", "0.5", "--loading-percent", "12", "--title", "# a 'title': with signs")]
    public void What_is_told_of_a_recipe_is_in_it(params string[] told)
    {
        using var program = new CommandLine();
        Assert.Equal(0, program.Run(["new", "recipe", "a.yaml", .. told]));
        Assert.Equal(0, program.Run("check", "a.yaml"));
        Assert.Contains(told[1], program.Read("a.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_borrowed_doubt_holds_nothing_that_cannot_be()
    {
        using var program = new CommandLine();
        Assert.Equal(0, program.Run("new", "pigment", "bag", "--glow-colour", "green"));
        string text = program.Read("materials/pigments/bag.yaml");
        // Half as wide again 0.95 would be 1.05: more photons out than in.
        Assert.Contains(
            "photoluminescence_yield:\n  value: 0.75\n  low: 0.45\n  high: 1\n",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_file_that_is_there_is_kept()
    {
        using var program = new CommandLine();
        program.Write("first.yaml", "mine");
        Assert.Equal(3, program.Run("new", "recipe", "first"));
        Assert.Equal("mine", program.Read("first.yaml"));
        Assert.Contains("is kept", program.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        "pigment",
        "pigments",
        "--glow-colour",
        "green",
        "--grain-from-um",
        "25",
        "--grain-to-um",
        "65"
    )]
    [InlineData("pigment", "pigments", "--glow-colour", "495", "--luminance", "60=30")]
    [InlineData(
        "resin",
        "resins",
        "--family",
        "epoxy",
        "--mix-ratio",
        "2:1",
        "--by",
        "volume",
        "--index",
        "1.53"
    )]
    [InlineData("resin", "resins", "--family", "silicone", "--density-g-cm3", "1.0", "--pot-life-min", "60")]
    [InlineData("led", "leds", "--cct-k", "3500", "--ra", "90", "--flux-lm", "25", "--at-ma", "60")]
    [InlineData("board", "boards", "--colour", "green")]
    [InlineData("board", "boards", "--reflectance-percent", "85")]
    [InlineData("lamp", "lamps", "--cct-k", "4200")]
    [InlineData("lamp", "lamps", "--peak-nm", "400")]
    public void A_material_from_its_label_loads_and_says_what_is_assumed(
        string kind,
        string folder,
        params string[] told
    )
    {
        using var program = new CommandLine();
        Assert.Equal(0, program.Run(["new", kind, "mine", .. told]));
        string file = $"materials/{folder}/mine.yaml";
        Assert.Contains("assumed", program.Read(file), StringComparison.Ordinal);
        Assert.Equal(0, program.Run("check", file));
        Assert.EndsWith("no errors", program.Out.TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(0, program.Run("materials", "mine"));
    }

    [Fact]
    public void A_recipe_of_labels_alone_is_predicted()
    {
        using var program = new CommandLine();
        program.Run(
            "new",
            "pigment",
            "bag",
            "--glow-colour",
            "green",
            "--luminance",
            "10=300",
            "--hours",
            "12"
        );
        program.Run("new", "resin", "can", "--family", "epoxy");
        program.Run("new", "led", "reel", "--cct-k", "3500", "--flux-lm", "25", "--at-ma", "60");
        program.Run("new", "board", "card", "--colour", "white");
        Assert.Equal(
            0,
            program.Run(
                "new",
                "recipe",
                "all",
                "--pigment",
                "bag",
                "--resin",
                "can",
                "--led",
                "reel",
                "--board",
                "card"
            )
        );
        Assert.Equal(0, program.Run("predict", "all.yaml", "--quick"));
        Assert.Contains("of bag", program.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_of_a_bag_are_a_comment_and_change_no_figure()
    {
        using var program = new CommandLine();
        program.Run("new", "pigment", "a", "--glow-colour", "green");
        program.Run(
            "new",
            "pigment",
            "b",
            "--glow-colour",
            "green",
            "--hours",
            "12",
            "--title",
            "Afterglow pigment a, from its label"
        );
        Assert.Contains("do not compare", program.Out, StringComparison.Ordinal);
        string[] without = Uncommented(program.Read("materials/pigments/a.yaml"));
        string[] with = Uncommented(program.Read("materials/pigments/b.yaml"));
        Assert.Equal(without, with);
        Assert.Contains("12 hours", program.Read("materials/pigments/b.yaml"), StringComparison.Ordinal);

        static string[] Uncommented(string text) => [.. text.Split('\n').Where(l => !l.StartsWith('#'))];
    }

    [Fact]
    public void Grain_and_luminance_of_a_sheet_are_kept_as_told()
    {
        using var program = new CommandLine();
        program.Run(
            "new",
            "pigment",
            "bag",
            "--glow-colour",
            "green",
            "--grain-from-um",
            "25",
            "--grain-to-um",
            "65",
            "--luminance",
            "60=45",
            "--luminance",
            "10=300",
            "--charge-lx",
            "200",
            "--charge-minutes",
            "20"
        );
        string text = program.Read("materials/pigments/bag.yaml");
        // sqrt(25 × 65) = 40.3; ln(65 / 25) / (2 × 1.28155) = 0.3728, e to that 1.452.
        Assert.Contains("value: 40.3\n", text, StringComparison.Ordinal);
        Assert.Contains("value: 1.452\n", text, StringComparison.Ordinal);
        Assert.Contains("    10: 300\n    60: 45\n  source: label\n", text, StringComparison.Ordinal);
        Assert.Contains("value: 200\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_sheet_is_silent_of_is_wider_than_on_the_shelf()
    {
        using var program = new CommandLine();
        program.Run("new", "pigment", "bag", "--glow-colour", "green");
        // The shelf says a factor of 2; half as wide again in its logarithm is 2 to the power of 1.5.
        Assert.Contains(
            "factor: 2.8284",
            program.Read("materials/pigments/bag.yaml"),
            StringComparison.Ordinal
        );
        program.Run("new", "led", "reel", "--cct-k", "3000", "--flux-lm", "23", "--at-ma", "60");
        Assert.Contains("factor: 2.8284", program.Read("materials/leds/reel.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_no_sample_could_give_is_refused_and_nothing_written()
    {
        using var program = new CommandLine();
        Assert.Equal(
            1,
            program.Run("new", "pigment", "x", "--glow-colour", "green", "--luminance", "60=90000")
        );
        Assert.Contains("not written", program.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(program.Folder, "materials/pigments/x.yaml")));
    }

    [Fact]
    public void A_strong_sheet_is_taken_as_of_a_deeper_sample()
    {
        using var program = new CommandLine();
        program.Run(
            "new",
            "pigment",
            "x",
            "--glow-colour",
            "green",
            "--luminance",
            "10=400",
            "--luminance",
            "60=60"
        );
        Assert.Contains(
            "sheet_depth_mm:\n  value: 1.5\n  source: assumed; enough for the traps",
            program.Read("materials/pigments/x.yaml"),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(2, "needs a name", "recipe")]
    [InlineData(2, "takes one name", "recipe", "a", "b")]
    [InlineData(2, "did you mean '--depth-mm'", "recipe", "a", "--dept-mm", "3")]
    [InlineData(2, "such as 3.5", "recipe", "a", "--depth-mm", "3,5")]
    [InlineData(1, "allowed: 0.01 to 200", "recipe", "a", "--depth-mm", "900")]
    [InlineData(1, "did you mean 'epoxy-clear-slow'", "recipe", "a", "--resin", "epoxy-clear-slov")]
    [InlineData(2, "--flux-lm and --at-ma", "recipe", "a", "--led", "3000")]
    [InlineData(3, "no such folder", "recipe", "nowhere/a")]
    [InlineData(2, "did you mean 'recipe'", "reciep", "a")]
    [InlineData(2, "--glow-colour", "pigment", "a")]
    [InlineData(1, "green, blue-green", "pigment", "a", "--glow-colour", "pink")]
    [InlineData(1, "minutes=mcd", "pigment", "a", "--glow-colour", "green", "--luminance", "300")]
    [InlineData(
        2,
        "the same minutes",
        "pigment",
        "a",
        "--glow-colour",
        "green",
        "--luminance",
        "10=3",
        "--luminance",
        "10=4"
    )]
    [InlineData(2, "belong together", "pigment", "a", "--glow-colour", "green", "--grain-from-um", "20")]
    [InlineData(1, "no material's name", "pigment", "My Bag", "--glow-colour", "green")]
    [InlineData(3, "no such file", "led", "a", "--spectrum", "none.csv", "--flux-lm", "2", "--at-ma", "3")]
    [InlineData(2, "one of them", "led", "a", "--flux-lm", "2", "--at-ma", "3")]
    [InlineData(2, "one of --spectrum", "lamp", "a")]
    public void A_wrong_word_is_told_and_nothing_written(int code, string says, params string[] told)
    {
        using var program = new CommandLine();
        Assert.Equal(code, program.Run(["new", .. told]));
        Assert.Contains(says, program.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(program.Folder));
    }

    [Fact]
    public void A_terminal_is_asked_and_a_wrong_answer_asked_again()
    {
        using var program = new CommandLine
        {
            TerminalColumns = 80,
            Typed = new(["Door sign", "", "", "lots", "24", "", "", "", "", "3", "", ""]),
        };
        Assert.Equal(0, program.Run("new", "recipe", "sign"));
        string text = program.Read("sign.yaml");
        Assert.Contains("title: Door sign\n", text, StringComparison.Ordinal);
        Assert.Contains("  count: 24 ", text, StringComparison.Ordinal);
        Assert.Contains("depth_mm: 3 ", text, StringComparison.Ordinal);
        Assert.Contains("it is 'lots'", program.Error, StringComparison.Ordinal);
        program.Typed = null;
        Assert.Equal(0, program.Run("check", "sign.yaml"));
    }

    [Fact]
    public void An_input_that_ends_writes_nothing()
    {
        using var program = new CommandLine { TerminalColumns = 80, Typed = new(["Door sign"]) };
        Assert.Equal(130, program.Run("new", "recipe", "sign"));
        Assert.Empty(Directory.GetFiles(program.Folder));
    }
}
