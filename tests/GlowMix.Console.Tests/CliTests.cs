namespace GlowMix.Console.Tests;

public sealed class CliTests : IDisposable
{
    private readonly CommandLine line = new() { Runner = new SampleRunner(SamplePredictions.StairEdge) };

    public void Dispose() => line.Dispose();

    [Fact]
    public void Alone_it_says_what_it_does_and_where_to_begin()
    {
        line.Write("recipes/door-sign.yaml", "# a comment\nformat: 1\n");
        line.Write("recipes/not-one.yaml", "material_format: 1\n");
        Assert.Equal(ExitCode.Done, line.Run());
        Assert.Contains("glowmix predict recipes/door-sign.yaml", line.Out, StringComparison.Ordinal);
        Assert.Contains("Caution", line.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("not-one", line.Out, StringComparison.Ordinal);
        Assert.Empty(line.Error);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    [InlineData("help")]
    public void Help_names_the_commands_and_the_exit_codes(string word)
    {
        Assert.Equal(ExitCode.Done, line.Run(word));
        Assert.StartsWith("glowmix COMMAND", line.Out, StringComparison.Ordinal);
        foreach (string part in new[] { "predict", "check", "materials", "130", "143" })
        {
            Assert.Contains(part, line.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Help_of_a_command_names_its_options()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", "--help"));
        Assert.StartsWith("glowmix predict FILE… [options]\n", line.Out, StringComparison.Ordinal);
        Assert.Contains("--csv DIR", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_command_that_help_names_is_known_by_that_name()
    {
        line.Run("--help");
        string[] names =
        [
            .. line
                .OutLines.TakeWhile(l => !l.StartsWith("Exit codes", StringComparison.Ordinal))
                .Where(l =>
                    l.Length > 2
                    && l.StartsWith("  ", StringComparison.Ordinal)
                    && char.IsAsciiLetterLower(l[2])
                )
                .Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)[0]),
        ];
        Assert.Contains("predict", names);
        foreach (string name in names)
        {
            Assert.StartsWith(
                $"glowmix {name}",
                Output(ExitCode.Done, name, "--help"),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void Version_is_one_line() =>
        Assert.Matches(@"^glowmix \d+\.\d+\.\d+\n$", Output(ExitCode.Done, "--version"));

    [Theory]
    [InlineData("unknown command 'predcit'; did you mean 'predict'?", "glowmix", "predcit")]
    [InlineData(
        "'stair.yaml' is no command; did you mean 'glowmix predict stair.yaml'?",
        "glowmix",
        "stair.yaml"
    )]
    [InlineData("unknown option '--verison'; did you mean '--version'?", "glowmix", "--verison")]
    [InlineData(
        "unknown option '--jsno'; did you mean '--json'?",
        "glowmix predict",
        "predict",
        "a.yaml",
        "--jsno"
    )]
    [InlineData("unknown option '--depth'", "glowmix predict", "predict", "a.yaml", "--depth=2")]
    [InlineData(
        "Required argument missing for option: '--csv'",
        "glowmix predict",
        "predict",
        "a.yaml",
        "--csv"
    )]
    [InlineData(
        "--csv needs the name of a folder",
        "glowmix predict",
        "predict",
        "a.yaml",
        "--csv",
        "--fulll"
    )]
    [InlineData(
        "--json prints every figure and nothing else; leave out --full and --plot",
        "glowmix predict",
        "predict",
        "a.yaml",
        "--json",
        "--plot"
    )]
    public void What_it_cannot_understand_it_says_in_two_lines(
        string first,
        string command,
        params string[] args
    )
    {
        line.Write("a.yaml", "format: 1\n");
        Assert.Equal(ExitCode.Usage, line.Run(args));
        Assert.Equal($"{first}\nTry '{command} --help'.\n", line.Error);
        Assert.Empty(line.Out);
    }

    [Fact]
    public void Behind_two_hyphens_a_file_may_begin_with_one()
    {
        line.Write("-a.yaml", "format: 1\n");
        Assert.Equal(ExitCode.Done, line.Run("predict", "--", "-a.yaml"));
    }

    [Fact]
    public void A_file_may_begin_with_an_at_sign()
    {
        line.Write("@a.yaml", "format: 1\n");
        Assert.Equal(ExitCode.Done, line.Run("predict", "@a.yaml"));
    }

    [Fact]
    public void Predict_without_a_file_names_the_recipes_here()
    {
        line.Write("b.yaml", "format: 1\n");
        line.Write("recipes/a.yaml", "format: 1\n");
        Assert.Equal(ExitCode.Usage, line.Run("predict"));
        Assert.Contains("  b.yaml\n  recipes/a.yaml\n", line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_of_the_program_is_one_line()
    {
        line.Write("a.yaml", "format: 1\n");
        line.Runner = new SampleRunner(SamplePredictions.StairEdge)
        {
            Fault = new InvalidOperationException("Broken."),
        };
        Assert.Equal(ExitCode.Content, line.Run("predict", "a.yaml"));
        Assert.StartsWith(
            "an error in the program: InvalidOperationException: Broken.",
            line.Error,
            StringComparison.Ordinal
        );
        Assert.Single(line.Error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void An_interrupted_run_says_so_by_its_exit_code()
    {
        line.Write("a.yaml", "format: 1\n");
        line.Stop = new CancellationToken(canceled: true);
        Assert.Equal(ExitCode.Interrupted, line.Run("predict", "a.yaml"));
    }

    [Fact]
    public void An_output_that_takes_no_more_is_a_file_that_cannot_be_written()
    {
        line.Write("a.yaml", "format: 1\n");
        using var full = new FullWriter();
        using var error = new StringWriter();
        Assert.Equal(ExitCode.FileAccess, line.Run(full, error, "predict", "a.yaml"));
        Assert.Contains("No space left", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_output_that_was_closed_is_told_and_a_closed_error_output_is_borne()
    {
        line.Write("a.yaml", "format: 1\n");
        using var closed = new ClosedWriter();
        using var error = new StringWriter();
        Assert.Equal(ExitCode.FileAccess, line.Run(closed, error, "predict", "a.yaml"));
        Assert.StartsWith("the output cannot be written", error.ToString(), StringComparison.Ordinal);
        Assert.Equal(ExitCode.FileAccess, line.Run(closed, closed, "predict", "a.yaml"));
    }

    [Fact]
    public void A_file_without_a_name_is_no_folder()
    {
        Assert.Equal(ExitCode.FileAccess, line.Run("predict", ""));
        Assert.Equal($"'': {Documents.ProblemTexts.NotFound}\n", line.Error);
    }

    [Fact]
    public void Words_of_the_command_line_cannot_steer_the_terminal()
    {
        Assert.Equal(ExitCode.Usage, line.Run("pre\e[31m"));
        Assert.DoesNotContain('\e', line.Error);
        Assert.Equal(ExitCode.FileAccess, line.Run("predict", "no\e[31m.yaml"));
        Assert.DoesNotContain('\e', line.Error);
    }

    [Fact]
    public void Another_locale_gets_ascii_letters()
    {
        line.Set("LC_ALL", "C");
        Assert.True(Output(ExitCode.Done, "--help").All(char.IsAscii));
    }

    private string Output(int code, params string[] args)
    {
        Assert.Equal(code, line.Run(args));
        return line.Out;
    }

    private sealed class ClosedWriter : StringWriter
    {
        public override void Write(string? value) => throw new UnauthorizedAccessException();

        public override void WriteLine(string? value) => throw new UnauthorizedAccessException();
    }

    private sealed class FullWriter : StringWriter
    {
        public override void Write(string? value) => throw new IOException("No space left on device");
    }
}
