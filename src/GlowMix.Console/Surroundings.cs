using System.Globalization;
using GlowMix.Console.Texts;

namespace GlowMix.Console;

/// <summary>All the program knows of the world outside: handed in, so that a test is a run like any other.</summary>
internal sealed class Surroundings
{
    /// <summary>Narrower terminals get lines of this width; they break where they must.</summary>
    public const int NarrowestColumns = 40;

    /// <summary>Width of a text where no terminal says another.</summary>
    public const int DefaultColumns = 80;

    /// <summary>A plot gains nothing beyond.</summary>
    private const int WidestPlotColumns = 120;

    /// <summary>Results.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Problems.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>The next line of the input, or null at its end.</summary>
    public Func<string?> ReadLine { get; init; } = () => null;

    /// <summary>Whether the input is a terminal: only there questions are asked.</summary>
    public bool InputIsTerminal { get; init; }

    /// <summary>The folder that relative paths start from.</summary>
    public required string Folder { get; init; }

    /// <summary>The day, as the clock on the wall has it.</summary>
    public Func<DateOnly> Today { get; init; } = () => default;

    /// <summary>An environment variable, or null.</summary>
    public Func<string, string?> Variable { get; init; } = _ => null;

    /// <summary>Width of the terminal that shows <see cref="Out"/>; null if none does.</summary>
    public int? TerminalColumns { get; init; }

    /// <summary>Whether a terminal shows <see cref="Error"/>: only there progress is told.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Told each file of the user's before it is read, for those who watch them; may be null.</summary>
    public Action<string>? Opened { get; set; }

    /// <summary>Ctrl-C is the way to end what runs, and no failure.</summary>
    public bool IsEndedByCtrlC { get; set; }

    /// <summary>Asks a long run to end.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Bold and faint letters: on a terminal only, and not where the user asks for none.</summary>
    public bool Emphasis =>
        TerminalColumns is not null
        && string.IsNullOrEmpty(Variable("NO_COLOR"))
        && Variable("TERM") is not ("dumb" or "");

    /// <summary>The locale says it shows other characters than those of UTF-8; a locale that says nothing shows all.</summary>
    public bool AsciiOnly
    {
        get
        {
            foreach (string name in (ReadOnlySpan<string>)["LC_ALL", "LC_CTYPE", "LANG"])
            {
                if (Variable(name) is { Length: > 0 } locale)
                {
                    return !locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase)
                        && !locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
                }
            }
            return false;
        }
    }

    /// <summary>Columns there are: what the user says in COLUMNS, else the terminal's, else the usual.</summary>
    private int Columns =>
        int.TryParse(Variable("COLUMNS"), NumberStyles.None, CultureInfo.InvariantCulture, out int asked)
        && asked > 0
            ? asked
            : TerminalColumns ?? DefaultColumns;

    /// <summary>How a text for people is set.</summary>
    /// <param name="ascii">The user asks for plain ASCII.</param>
    public TextStyle Style(bool ascii = false) =>
        new(Math.Clamp(Columns, NarrowestColumns, DefaultColumns), Emphasis, ascii || AsciiOnly);

    /// <summary>Columns for a plot, which may be wider than a text.</summary>
    public int PlotColumns => Math.Clamp(Columns, NarrowestColumns, WidestPlotColumns);

    /// <summary>A sheet that writes to <see cref="Out"/>.</summary>
    public Sheet Sheet(bool ascii = false) => new(Out, Style(ascii));

    /// <summary>The full path of a file or folder as the user named it.</summary>
    public string FullPath(string path) => Path.GetFullPath(path, Folder);

    /// <summary>One line about a problem, behind whatever stands on <see cref="Out"/> by now.</summary>
    public void Complain(string line)
    {
        Out.Flush();
        Error.Write(Letters.OneLine(line, AsciiOnly));
        Error.Write('\n');
        Error.Flush();
    }
}
