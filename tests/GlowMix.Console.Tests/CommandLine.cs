using GlowMix.Console.Commands;

namespace GlowMix.Console.Tests;

/// <summary>One run of the program in a folder of its own.</summary>
internal sealed class CommandLine : IDisposable
{
    private readonly Dictionary<string, string> variables = [];

    public string Folder { get; } = Directory.CreateTempSubdirectory("glowmix").FullName;

    public int? TerminalColumns { get; set; }

    public IRecipeRunner? Runner { get; set; }

    public CancellationToken Stop { get; set; }

    /// <summary>What is typed at a terminal; null: no terminal.</summary>
    public Queue<string>? Typed { get; set; }

    public string Out { get; private set; } = "";

    public string Error { get; private set; } = "";

    public string[] OutLines => Out.TrimEnd('\n').Split('\n');

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public void Set(string variable, string value) => variables[variable] = value;

    public string Write(string name, string text)
    {
        string path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return name;
    }

    public string Read(string name) => File.ReadAllText(Path.Combine(Folder, name));

    public int Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int code = Run(output, error, args);
        (Out, Error) = (output.ToString(), error.ToString());
        return code;
    }

    public int Run(TextWriter output, TextWriter error, params string[] args) =>
        Cli.Run(
            args,
            new Surroundings
            {
                Out = output,
                Error = error,
                ReadLine = () => Typed is { Count: > 0 } lines ? lines.Dequeue() : null,
                InputIsTerminal = Typed is not null,
                Folder = Folder,
                Variable = name => variables.GetValueOrDefault(name),
                TerminalColumns = TerminalColumns,
                Stop = Stop,
            },
            Runner
        );
}
