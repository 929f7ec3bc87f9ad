using System.Text;

namespace GlowMix.Console.Tune;

/// <summary>
/// Gives the terminal back if the process is ended before the toolkit could do so: off the second screen, no mouse reports, no pasting
/// marks, the cursor seen.
/// </summary>
internal sealed class TerminalRescue : IDisposable
{
    // In the order in which xterm's control sequences name them: DECSET 1003, 1006, 1015, 2004, 1049; SGR 0; DECTCEM.
    private const string GiveBack = "\e[?1003l\e[?1006l\e[?1015l\e[?2004l\e[0m\e[?1049l\e[?25h";

    public TerminalRescue() => AppDomain.CurrentDomain.ProcessExit += Rescue;

    /// <summary>The toolkit has done it.</summary>
    public void Dispose() => AppDomain.CurrentDomain.ProcessExit -= Rescue;

    private static void Rescue(object? sender, EventArgs e)
    {
        try
        {
            using var output = System.Console.OpenStandardOutput();
            output.Write(Encoding.ASCII.GetBytes(GiveBack));
            output.Flush();
        }
        catch (IOException)
        {
            // The terminal is gone.
        }
    }
}
