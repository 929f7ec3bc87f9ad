using System.Diagnostics;
using System.Globalization;

namespace GlowMix.Console.Tests.Files;

/// <summary>The program killed while it writes file after file.</summary>
public sealed class KilledRunTests : IDisposable
{
    private const int FewKills = 6;
    private const int ManyKills = 200;

    // Later than the last file of a run would be too late to hit it.
    private const int LatestMs = 60;
    private const int FileCount = 80;

    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_kill_at_any_moment_leaves_each_file_old_or_new_and_whole() => Kill(FewKills, stepMs: 2);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void So_do_two_hundred_kills() => Kill(ManyKills, stepMs: 0.3);

    private void Kill(int kills, double stepMs)
    {
        string[] names =
        [
            .. Enumerable
                .Range(0, FileCount)
                .Select(i => string.Create(CultureInfo.InvariantCulture, $"{i:000}.yaml")),
        ];
        string untidy =
            "format: 1\nresin:   epoxy-clear-slow\n" + string.Concat(Enumerable.Repeat("# remark\n", 500));
        line.Write("one.yaml", untidy);
        Assert.Equal(ExitCode.Done, line.Run("tidy", "one.yaml"));
        string tidy = line.Read("one.yaml");
        Assert.NotEqual(untidy, tidy);
        int during = 0;
        for (int kill = 0; kill < kills; kill++)
        {
            Array.ForEach(names, name => line.Write(name, untidy));
            using (var process = Start(["tidy", .. names]))
            {
                // From the first file written on, a little later each time.
                while (!process.HasExited && line.Read(names[0]) == untidy)
                {
                    Thread.Sleep(1);
                }
                Thread.Sleep((int)Math.Min(LatestMs, stepMs * kill));
                process.Kill();
                process.WaitForExit();
            }
            string[] texts = [.. names.Select(line.Read)];
            Assert.All(
                texts,
                text => Assert.True(text == untidy || text == tidy, "a file is neither old nor new")
            );
            during += texts.Contains(untidy) && texts.Contains(tidy) ? 1 : 0;
            string[] others =
            [
                .. Directory
                    .GetFiles(line.Folder)
                    .Select(f => Path.GetFileName(f))
                    .Except([.. names, "one.yaml"]),
            ];
            Assert.All(others, name => Assert.Matches(@"^\.glowmix-.*\.tmp$", name));
        }
        Assert.True(during > 0, "no kill fell between the first file and the last");
    }

    private Process Start(string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Cli).Assembly.Location, .. args])
        {
            WorkingDirectory = line.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        return Process.Start(start)!;
    }
}
