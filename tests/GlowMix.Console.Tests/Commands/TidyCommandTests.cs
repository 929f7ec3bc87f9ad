namespace GlowMix.Console.Tests.Commands;

public sealed class TidyCommandTests : IDisposable
{
    private const string Untidy =
        "format: 1\nled:   {material: warm-white-3000}  # reel\nresin: epoxy-clear-slow\nlayers: [{depth_mm: +2}]\n";
    private const string Tidy =
        "format: 1\nresin: epoxy-clear-slow\nled:                                # reel\n  material: warm-white-3000\nlayers:\n  - depth_mm: 2\n";

    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_file_is_tidied_once()
    {
        line.Write("a.yaml", Untidy);
        Assert.Equal(ExitCode.Content, line.Run("tidy", "a.yaml", "--only-say"));
        Assert.Equal("a.yaml: not tidy\n", line.Out);
        Assert.Equal(Untidy, line.Read("a.yaml"));
        Assert.Equal(ExitCode.Done, line.Run("tidy", "a.yaml"));
        Assert.Equal("a.yaml: tidied\n", line.Out);
        Assert.Equal(Tidy, line.Read("a.yaml"));
        Assert.Equal(ExitCode.Done, line.Run("tidy", "a.yaml"));
        Assert.Equal("1 file is tidy\n", line.Out);
        Assert.Equal(ExitCode.Done, line.Run("tidy", "a.yaml", "--only-say"));
        Assert.Equal("", line.Error);
    }

    [Fact]
    public void A_tidied_recipe_keeps_its_figures_fresh()
    {
        line.Write("a.yaml", Untidy);
        line.Run("predict", "a.yaml", "--write");
        Assert.Equal(ExitCode.Done, line.Run("tidy", "a.yaml"));
        Assert.Equal(ExitCode.Done, line.Run("check", "a.yaml"));
        Assert.Equal("", line.Error);
    }

    [Fact]
    public void Each_kind_of_file_is_tidied_or_told()
    {
        line.Write("m.yaml", "title: X\nkind: board\nmaterial_format: 1\n");
        line.Write("r.yaml", "readings:\n- {state: bare, file: b.txt}\nreadings_format:   1\n");
        line.Write("a.figures.yaml", "figures_format: 1\n");
        line.Write("x.yaml", "what: 1\n");
        line.Write("broken.yaml", "format: [\n");
        line.Write("plus.yaml", "title: |+\n  a\n\n\nformat: 1\n");
        Assert.Equal(ExitCode.Done, line.Run("tidy", "m.yaml", "r.yaml", "a.figures.yaml"));
        Assert.Equal("material_format: 1\nkind: board\ntitle: X\n", line.Read("m.yaml"));
        Assert.Equal(
            "readings_format: 1\nreadings:\n  - file: b.txt\n    state: bare\n",
            line.Read("r.yaml")
        );
        Assert.Equal("a.figures.yaml: a figures file, written by the program; skipped\n", line.Error);
        Assert.Equal(ExitCode.Content, line.Run("tidy", "x.yaml"));
        Assert.StartsWith("x.yaml:1:1: the first key is 'what'", line.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Content, line.Run("tidy", "broken.yaml"));
        Assert.Equal(ExitCode.Content, line.Run("tidy", "plus.yaml"));
        Assert.Equal("plus.yaml: kept as it is, for it cannot be tidied without a loss\n", line.Error);
        Assert.Equal(ExitCode.FileAccess, line.Run("tidy", "missing.yaml"));
        Assert.Equal(ExitCode.Usage, line.Run("tidy"));
        Assert.Equal(ExitCode.Usage, line.Run("tidy", "m.yaml", "--only"));
    }

    [Fact]
    public void A_file_for_reading_only_is_told_and_kept()
    {
        line.Write("a.yaml", Untidy);
        string path = Path.Combine(line.Folder, "a.yaml");
        File.SetAttributes(path, FileAttributes.ReadOnly);
        Assert.Equal(ExitCode.FileAccess, line.Run("tidy", "a.yaml"));
        Assert.Equal("a.yaml: cannot be written: the file is for reading only\n", line.Error);
        File.SetAttributes(path, FileAttributes.Normal);
        Assert.Equal(Untidy, line.Read("a.yaml"));
    }
}
