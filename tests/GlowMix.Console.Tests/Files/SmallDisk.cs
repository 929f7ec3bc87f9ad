using System.Diagnostics;

namespace GlowMix.Console.Tests.Files;

/// <summary>A disk of a few kilobytes in memory, where the system lets a test make one.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly string folder;

    public SmallDisk(string folder, int kilobytes)
    {
        this.folder = folder;
        Directory.CreateDirectory(folder);
        IsThere =
            OperatingSystem.IsLinux()
            && Environment.IsPrivilegedProcess
            && Run("mount", "-t", "tmpfs", "-o", $"size={kilobytes}k", "tmpfs", folder);
    }

    public bool IsThere { get; }

    public void MakeReadOnly() => Assert.True(Run("mount", "-o", "remount,ro", folder));

    public void Dispose()
    {
        if (IsThere)
        {
            Run("umount", "-l", folder);
        }
    }

    private static bool Run(string command, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(
                new ProcessStartInfo(command, arguments)
                {
                    RedirectStandardError = true,
                    RedirectStandardOutput = true,
                }
            )!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
