using GlowMix.Console.Starts;
using GlowMix.Materials;

namespace GlowMix.Console.Commands;

/// <summary>Asks at a terminal what a new file should say, one thing at a time, and again where an answer will not do.</summary>
internal sealed class Questions(Surroundings surroundings, Shelf shelf)
{
    /// <summary>Asks every field that has a question and applies.</summary>
    /// <returns>False if the user ended the input.</returns>
    public bool Ask(IReadOnlyList<StartField> fields, StartAnswers answers)
    {
        foreach (var field in fields)
        {
            if (field.Question is not null && field.Applies(answers) && !Ask(field, answers))
            {
                return false;
            }
        }
        return true;
    }

    private bool Ask(StartField field, StartAnswers answers)
    {
        while (true)
        {
            string usual = field.Usual is { } value ? $" [{value}]" : "";
            surroundings.Out.Write(
                Texts.Letters.OneLine($"{field.Question}{usual}: ", surroundings.AsciiOnly)
            );
            surroundings.Out.Flush();
            if (surroundings.ReadLine() is not { } line)
            {
                surroundings.Out.Write('\n');
                return false;
            }
            surroundings.Stop.ThrowIfCancellationRequested();
            string answer = line.Trim();
            if (answer.Length == 0)
            {
                if (field.Usual is { } taken)
                {
                    answers.Put(field.Name, [taken]);
                }
                return true;
            }
            string[] parts = field.IsRepeated
                ? answer.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                : [answer];
            var wrong = parts.Select(p => field.ProblemOf(p, shelf)).FirstOrDefault(p => p is not null);
            if (wrong is not { } problem)
            {
                answers.Put(field.Name, parts);
                return true;
            }
            // The answer's name is the option's, which nobody typed here.
            string words = problem.Text.StartsWith($"{field.Option}: ", StringComparison.Ordinal)
                ? problem.Text[(field.Option.Length + 2)..]
                : problem.Text.Replace(field.Option, "it", StringComparison.Ordinal);
            surroundings.Complain("  " + words);
        }
    }
}
