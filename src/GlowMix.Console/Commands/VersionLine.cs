using System.CommandLine;
using System.CommandLine.Invocation;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix --version`.</summary>
internal sealed class VersionLine(Surroundings surroundings) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var version = typeof(VersionLine).Assembly.GetName().Version ?? new Version(0, 0, 0);
        surroundings.Sheet().Line($"glowmix {version.ToString(3)}");
        return ExitCode.Done;
    }
}
