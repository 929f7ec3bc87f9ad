using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>Tells the problems of files.</summary>
internal static class Problems
{
    /// <summary>Writes one line a problem.</summary>
    /// <returns>The exit code they call for.</returns>
    public static int Tell(IReadOnlyList<Problem> problems, Surroundings surroundings)
    {
        foreach (var problem in problems)
        {
            bool isWarning = problem.Severity == Severity.Warning;
            surroundings.Complain(
                (isWarning ? problem with { Text = $"warning: {problem.Text}" } : problem).ToString()
            );
        }
        return CodeOf(problems);
    }

    /// <summary>The exit code that problems call for.</summary>
    public static int CodeOf(IReadOnlyList<Problem> problems)
    {
        int code = ExitCode.Done;
        foreach (var problem in problems)
        {
            if (problem.Severity == Severity.Error)
            {
                int own = problem.Kind == ProblemKind.FileAccess ? ExitCode.FileAccess : ExitCode.Content;
                code = Math.Max(code, own);
            }
        }
        return code;
    }
}
