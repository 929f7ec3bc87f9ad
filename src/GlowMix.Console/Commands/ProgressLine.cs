using System.Globalization;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Commands;

/// <summary>How far a long run is: one line on a terminal, written over itself and wiped at the end; nothing on a pipe.</summary>
internal sealed class ProgressLine : IDisposable
{
    private readonly Lock gate = new();
    private readonly TextWriter? terminal;
    private readonly string what;
    private readonly bool ascii;
    private int shown;
    private int furthest = -1;

    /// <param name="surroundings">Where the line goes, if a terminal shows it.</param>
    /// <param name="what">What is counted: 'predictions'.</param>
    public ProgressLine(Surroundings surroundings, string what)
    {
        terminal = surroundings.ErrorIsTerminal ? surroundings.Error : null;
        this.what = what;
        ascii = surroundings.AsciiOnly;
    }

    /// <summary>Shows a count; from any thread.</summary>
    public void Show(int done, int total)
    {
        if (terminal is null)
        {
            return;
        }
        lock (gate)
        {
            // Threads may arrive here in another order than they counted in.
            if (done <= furthest)
            {
                return;
            }
            furthest = done;
            string line = Letters.OneLine(
                string.Create(CultureInfo.InvariantCulture, $"{done} of {total} {what}"),
                ascii
            );
            terminal.Write('\r' + line.PadRight(shown));
            terminal.Flush();
            shown = line.Length;
        }
    }

    /// <summary>Wipes the line.</summary>
    public void Dispose()
    {
        if (terminal is not null && shown > 0)
        {
            terminal.Write('\r' + new string(' ', shown) + '\r');
            terminal.Flush();
        }
    }
}
