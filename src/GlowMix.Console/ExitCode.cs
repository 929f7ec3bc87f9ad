namespace GlowMix.Console;

/// <summary>What the program tells the shell; with several files the highest.</summary>
internal static class ExitCode
{
    /// <summary>Done, also when a target is missed.</summary>
    public const int Done = 0;

    /// <summary>The content of a file, or an option's value that parses but is not allowed.</summary>
    public const int Content = 1;

    /// <summary>The command line cannot be understood.</summary>
    public const int Usage = 2;

    /// <summary>A file cannot be read or written.</summary>
    public const int FileAccess = 3;

    /// <summary>Only where asked for: a target is missed.</summary>
    public const int TargetMissed = 4;

    /// <summary>Ctrl-C: 128 and the number of SIGINT, as shells count.</summary>
    public const int Interrupted = 130;

    /// <summary>128 and the number of SIGTERM.</summary>
    public const int Terminated = 143;

    /// <summary>All of them for the help, in order.</summary>
    public static IReadOnlyList<(int Code, string Meaning)> Meanings { get; } =
    [
        (Done, "done, also when a target is missed"),
        (Content, "something in a file is wrong, or a value is not allowed"),
        (Usage, "the command line cannot be understood"),
        (FileAccess, "a file cannot be read or written"),
        (TargetMissed, "a target is missed (only where asked for)"),
        (Interrupted, "interrupted (Ctrl-C)"),
        (Terminated, "asked to end (SIGTERM)"),
    ];
}
