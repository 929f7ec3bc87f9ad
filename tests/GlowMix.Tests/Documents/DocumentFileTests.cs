using GlowMix.Documents;

namespace GlowMix.Tests.Documents;

public sealed class DocumentFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("glowmix").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_missing_file_is_a_problem_of_access() =>
        AssertAccess(Path.Combine(folder, "none.yaml"), ProblemTexts.NotFound);

    [Fact]
    public void A_missing_folder_is_a_problem_of_access() =>
        AssertAccess(Path.Combine(folder, "none", "none.yaml"), ProblemTexts.NotFound);

    [Fact]
    public void A_directory_is_a_problem_of_access() => AssertAccess(folder, ProblemTexts.IsADirectory);

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    public void A_path_that_cannot_be_is_a_problem_of_access(string path) =>
        Assert.Equal(ProblemKind.FileAccess, DocumentFile.Read(path).Problem!.Kind);

    [Fact]
    public void A_hundred_megabytes_are_refused_as_content_without_reading_them()
    {
        string path = Path.Combine(folder, "huge.yaml");
        using (var stream = File.Create(path))
        {
            stream.SetLength(100_000_000);
        }
        long before = GC.GetAllocatedBytesForCurrentThread();
        var file = DocumentFile.Read(path);
        Assert.Equal(new Problem(path, null, ProblemTexts.TooLong(Document.LongestBytes)), file.Problem);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 3_000_000);
    }

    [Fact]
    public void A_file_as_long_as_the_limit_is_read()
    {
        string path = Path.Combine(folder, "long.yaml");
        File.WriteAllText(path, "a: 1\n#" + new string('x', Document.LongestBytes - 6));
        Assert.Empty(Document.Read(DocumentFile.Read(path)).Problems);
    }

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_refused_where_they_stand()
    {
        byte[] bytes = [.. "a: 1\nbé: "u8, 0xE9, .. "t\n"u8];
        Assert.Equal(
            new Problem("a.yaml", new(2, 5), ProblemTexts.NotUtf8(0xE9)),
            DocumentFile.Decode(bytes, "a.yaml").Problem
        );
    }

    [Fact]
    public void A_character_cut_off_at_the_end_is_not_UTF_8() =>
        Assert.Equal(
            new Problem("a.yaml", new(1, 4), ProblemTexts.NotUtf8(0xC3)),
            DocumentFile.Decode([.. "a: "u8, 0xC3], "a.yaml").Problem
        );

    [Fact]
    public void A_byte_order_mark_is_left_out() =>
        Assert.Equal("a: é", DocumentFile.Decode([0xEF, 0xBB, 0xBF, .. "a: é"u8], "a.yaml").Text);

    [Fact]
    public void The_problem_of_a_file_is_that_of_its_document()
    {
        var file = DocumentFile.Read(Path.Combine(folder, "none.yaml"));
        Assert.Equal([file.Problem!], Document.Read(file).Problems);
    }

    private static void AssertAccess(string path, string text) =>
        Assert.Equal(
            new Problem(path, null, text, Kind: ProblemKind.FileAccess),
            DocumentFile.Read(path).Problem
        );
}
