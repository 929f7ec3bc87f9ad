using System.Text.RegularExpressions;
using GlowMix.Console.Files;

namespace GlowMix.Console.Tests.Files;

public sealed class AtomicFileTests : IDisposable
{
    private readonly CommandLine line = new();
    private readonly Surroundings surroundings;

    public AtomicFileTests() =>
        surroundings = new()
        {
            Out = TextWriter.Null,
            Error = TextWriter.Null,
            Folder = line.Folder,
        };

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_file_is_written_and_replaced_in_UTF8_without_a_mark_and_nothing_else_is_left()
    {
        Assert.Null(AtomicFile.Write("a.yaml", "title: Tür\n", surroundings));
        Assert.Null(AtomicFile.Write("a.yaml", "title: Tüll\n", surroundings));
        Assert.Equal("title: Tüll\n"u8, File.ReadAllBytes(PathOf("a.yaml")));
        Assert.Equal(["a.yaml"], Names());
    }

    [Fact]
    public void A_file_to_be_kept_is_kept()
    {
        line.Write("a.yaml", "mine");
        var problem = AtomicFile.Write("a.yaml", "new", surroundings, IfThere.Keep);
        Assert.Equal("a.yaml: is there already", problem?.ToString());
        Assert.Equal("mine", line.Read("a.yaml"));
        Assert.Null(AtomicFile.Write("b.yaml", "new", surroundings, IfThere.Keep));
        Assert.Equal("new", line.Read("b.yaml"));
        Assert.Equal(["a.yaml", "b.yaml"], Names());
    }

    [Fact]
    public void A_file_that_comes_between_look_and_step_is_kept_too()
    {
        using var pending = PendingFile.Write(PathOf("a.yaml"), "new", IfThere.Keep);
        line.Write("a.yaml", "mine");
        Assert.Equal(FileTexts.IsThere, Assert.Throws<IOException>(pending.Commit).Message);
        Assert.Equal("mine", line.Read("a.yaml"));
    }

    [Fact]
    public void A_file_changed_since_it_was_read_is_kept()
    {
        line.Write("a.yaml", "theirs");
        Assert.Equal(
            "a.yaml: has changed since it was read; kept as it is now",
            AtomicFile.Write("a.yaml", "new", surroundings, asRead: "old")?.ToString()
        );
        Assert.Equal("theirs", line.Read("a.yaml"));
        Assert.Null(AtomicFile.Write("a.yaml", "new", surroundings, asRead: "theirs"));
        Assert.Equal("new", line.Read("a.yaml"));
    }

    [Fact]
    public void Until_the_last_step_the_old_file_is_whole_and_giving_up_leaves_it()
    {
        line.Write("a.yaml", "old");
        using (PendingFile.Write(PathOf("a.yaml"), "new", IfThere.Replace))
        {
            Assert.Equal("old", line.Read("a.yaml"));
        }
        Assert.Equal("old", line.Read("a.yaml"));
        Assert.Equal(["a.yaml"], Names());
    }

    [Fact]
    public void What_a_killed_run_left_behind_is_swept_away_later_and_not_at_once()
    {
        line.Write(".glowmix-1.tmp", "half");
        line.Write(".glowmix-2.tmp", "half");
        line.Write("notes.tmp", "mine");
        File.SetLastWriteTimeUtc(PathOf(".glowmix-1.tmp"), DateTime.UtcNow.AddHours(-2));
        File.SetLastWriteTimeUtc(PathOf("notes.tmp"), DateTime.UtcNow.AddHours(-2));
        Assert.Null(AtomicFile.Write("a.yaml", "new", surroundings));
        Assert.Equal([".glowmix-2.tmp", "a.yaml", "notes.tmp"], Names());
    }

    [Theory]
    [InlineData(0x180)] // rw-------
    [InlineData(0x1B6)] // rw-rw-rw-: more than the process's mask allows
    [InlineData(0x1ED)] // rwxr-xr-x
    public void Permissions_stay_as_they_were(int mode)
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("there are no such permissions");
            return;
        }
        line.Write("a.yaml", "old");
        File.SetUnixFileMode(PathOf("a.yaml"), (UnixFileMode)mode);
        Assert.Null(AtomicFile.Write("a.yaml", "new", surroundings));
        Assert.Equal((UnixFileMode)mode, File.GetUnixFileMode(PathOf("a.yaml")));
        Assert.Equal("new", line.Read("a.yaml"));
    }

    [Fact]
    public void A_file_for_reading_only_stays_though_its_folder_would_let_it_be_replaced()
    {
        line.Write("a.yaml", "old");
        File.SetAttributes(PathOf("a.yaml"), FileAttributes.ReadOnly);
        Assert.Equal(
            "a.yaml: cannot be written: the file is for reading only",
            AtomicFile.Write("a.yaml", "new", surroundings)?.ToString()
        );
        Assert.Equal("old", line.Read("a.yaml"));
        File.SetAttributes(PathOf("a.yaml"), FileAttributes.Normal);
    }

    [Fact]
    public void A_link_stays_a_link_and_the_file_it_leads_to_is_replaced()
    {
        // A link through a linked folder: '..' is meant from where that folder really is.
        line.Write("far/away/deep/x", "");
        line.Write("far/away/a.yaml", "old");
        Directory.CreateSymbolicLink(PathOf("near"), Path.Combine("far", "away", "deep"));
        File.CreateSymbolicLink(PathOf("near/b.yaml"), Path.Combine("..", "a.yaml"));
        File.CreateSymbolicLink(PathOf("c.yaml"), Path.Combine("near", "b.yaml"));
        Assert.Null(AtomicFile.Write("c.yaml", "new", surroundings));
        Assert.Equal("new", line.Read("far/away/a.yaml"));
        Assert.Equal(Path.Combine("near", "b.yaml"), new FileInfo(PathOf("c.yaml")).LinkTarget);
        Assert.Equal(Path.Combine("..", "a.yaml"), new FileInfo(PathOf("near/b.yaml")).LinkTarget);
        Assert.Equal(["c.yaml"], Names());
    }

    [Fact]
    public void A_link_to_nothing_yet_makes_the_file_and_a_circle_is_told()
    {
        File.CreateSymbolicLink(PathOf("a.yaml"), "b.yaml");
        Assert.Null(AtomicFile.Write("a.yaml", "new", surroundings));
        Assert.Equal("new", line.Read("b.yaml"));
        File.CreateSymbolicLink(PathOf("c.yaml"), "d.yaml");
        File.CreateSymbolicLink(PathOf("d.yaml"), "c.yaml");
        Assert.Equal(
            "c.yaml: cannot be written: its symbolic links lead in a circle",
            AtomicFile.Write("c.yaml", "new", surroundings)?.ToString()
        );
    }

    [Theory]
    [InlineData("", "'': needed: the name of a file")]
    [InlineData("folder/", "folder/: needed: the name of a file")]
    [InlineData("folder", "folder: cannot be written: this is a folder; needed: a file")]
    [InlineData("missing/a.yaml", "missing/a.yaml: cannot be written: there is no such folder")]
    [InlineData("file/a.yaml", "file/a.yaml: cannot be written: there is no such folder")]
    public void What_is_no_place_for_a_file_is_told_with_exit_code_3(string path, string words)
    {
        line.Write("folder/x", "");
        line.Write("file", "mine");
        var problem = AtomicFile.Write(path, "new", surroundings);
        Assert.Equal(words, problem?.ToString());
        Assert.Equal(problem, AtomicFile.Rehearse(path, surroundings));
        Assert.Equal(ExitCode.FileAccess, Console.Commands.Problems.CodeOf([problem!]));
        Assert.Equal("mine", line.Read("file"));
        Assert.Equal(["file"], Names());
    }

    [Theory]
    [InlineData("/dev/null")]
    [InlineData("/dev/stdout")]
    [InlineData("/proc/self/comm")]
    public void A_device_is_not_replaced(string path)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "there are no such paths");
        Assert.Equal(
            $"{path}: cannot be written: this is a device or a pipe; needed: a file",
            AtomicFile.Write(path, "new", surroundings)?.ToString()
        );
    }

    [Fact]
    public void On_a_full_disk_the_old_file_stays_whole_and_nothing_else_is_left()
    {
        using var disk = new SmallDisk(PathOf("disk"), kilobytes: 16);
        Assert.SkipUnless(disk.IsThere, "only the system's administrator can make a disk of 16 kB");
        Assert.Null(AtomicFile.Write("disk/a.yaml", "old", surroundings));
        string large = new('x', 40_000);
        Assert.Equal(
            "disk/a.yaml: cannot be written: the disk is full",
            AtomicFile.Write("disk/a.yaml", large, surroundings)?.ToString()
        );
        Assert.Equal(
            "disk: b.csv cannot be written: the disk is full",
            AtomicFile.WriteAll("disk", [("a.yaml", "new"), ("b.csv", large)], surroundings)?.ToString()
        );
        Assert.Equal("old", line.Read("disk/a.yaml"));
        Assert.Equal([PathOf("disk/a.yaml")], Directory.GetFiles(PathOf("disk")));
        disk.MakeReadOnly();
        Assert.Equal(
            "disk/a.yaml: cannot be written: the disk is for reading only",
            AtomicFile.Write("disk/a.yaml", "new", surroundings)?.ToString()
        );
        Assert.Equal("old", line.Read("disk/a.yaml"));
    }

    [Fact]
    public void A_rehearsal_leaves_everything_as_it_was()
    {
        line.Write("a.yaml", "old");
        Assert.Null(AtomicFile.Rehearse("a.yaml", surroundings));
        Assert.Null(AtomicFile.Rehearse("b.yaml", surroundings));
        Assert.Equal("old", line.Read("a.yaml"));
        Assert.Equal(["a.yaml"], Names());
    }

    [Fact]
    public void Nothing_else_in_the_program_writes_files()
    {
        string src = Path.Combine(TopFolder.Path, "src");
        var writing = new Regex(
            @"(?<!\w)(File\.(Write|Append|Create|Copy|Move|Replace)\w*|FileAccess\.\w*Write|new StreamWriter\()"
        );
        var others =
            from file in Directory.GetFiles(src, "*.cs", SearchOption.AllDirectories)
            let path = Path.GetRelativePath(src, file).Replace('\\', '/')
            where
                path != "GlowMix.Console/Files/PendingFile.cs"
                && !path.Contains("/obj/", StringComparison.Ordinal)
            from Match match in writing.Matches(File.ReadAllText(file))
            select $"{path}: {match.Value}";
        Assert.Empty(others);
    }

    [Fact]
    public async Task Several_writers_at_once_never_mix_and_a_reader_never_sees_half()
    {
        string[] texts = [.. Enumerable.Range(0, 4).Select(i => new string((char)('a' + i), 20_000 + i))];
        AtomicFile.Write("a.yaml", texts[0], surroundings);
        using var done = new CancellationTokenSource();
        var reader = Task.Run(() =>
        {
            int seen = 0;
            while (!done.IsCancellationRequested)
            {
                Assert.Contains(line.Read("a.yaml"), texts);
                seen++;
            }
            return seen;
        });
        Parallel.For(
            0,
            4,
            i =>
            {
                for (int n = 0; n < 25; n++)
                {
                    Assert.Null(AtomicFile.Write("a.yaml", texts[i], surroundings));
                }
            }
        );
        await done.CancelAsync();
        Assert.True(await reader > 0);
        Assert.Contains(line.Read("a.yaml"), texts);
        Assert.Equal(["a.yaml"], Names());
    }

    private string PathOf(string name) => Path.Combine(line.Folder, name);

    private string[] Names() =>
        [.. Directory.GetFiles(line.Folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];
}
