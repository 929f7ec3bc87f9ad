using System.Runtime.InteropServices;
using System.Text;
using GlowMix.Console;

using var stop = new CancellationTokenSource();
using var ended = new ManualResetEventSlim();
int? signalled = null;
Surroundings? surroundings = null;
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, c => End(c, ExitCode.Interrupted));
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, c => End(c, ExitCode.Terminated));

using var output = Utf8(System.Console.OpenStandardOutput());
using var error = Utf8(System.Console.OpenStandardError());
surroundings = new Surroundings
{
    Out = output,
    Error = error,
    ReadLine = System.Console.ReadLine,
    InputIsTerminal = !System.Console.IsInputRedirected,
    Folder = Environment.CurrentDirectory,
    Today = () => DateOnly.FromDateTime(DateTime.Now),
    Variable = Environment.GetEnvironmentVariable,
    TerminalColumns = TerminalColumns(),
    ErrorIsTerminal = !System.Console.IsErrorRedirected,
    Stop = stop.Token,
};
int code = Cli.Run(args, surroundings);
ended.Set();
return signalled ?? code;

// A run that does not look at its token in time is ended all the same.
void End(PosixSignalContext context, int withCode)
{
    context.Cancel = true;
    if (withCode == ExitCode.Interrupted && surroundings?.IsEndedByCtrlC == true)
    {
        withCode = ExitCode.Done;
    }
    signalled = withCode;
    stop.Cancel();
    if (!ended.Wait(TimeSpan.FromMilliseconds(300)))
    {
        Environment.Exit(withCode);
    }
}

static StreamWriter Utf8(Stream stream) =>
    new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), 4096) { AutoFlush = false };

static int? TerminalColumns()
{
    if (System.Console.IsOutputRedirected)
    {
        return null;
    }
    try
    {
        return System.Console.WindowWidth is > 0 and int columns ? columns : Surroundings.DefaultColumns;
    }
    catch (IOException)
    {
        return Surroundings.DefaultColumns;
    }
}
