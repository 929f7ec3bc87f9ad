using System.Collections.Immutable;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>The recipe under the hand: its knobs, the one that is held, and the way back. Refuses what the recipe could not hold.</summary>
internal sealed class Bench
{
    // What is pressed most comes first.
    private static readonly (StepSize Size, bool Up)[] turns =
    [
        (StepSize.Usual, true),
        (StepSize.Usual, false),
        (StepSize.Fine, true),
        (StepSize.Fine, false),
        (StepSize.Large, true),
        (StepSize.Large, false),
    ];

    private readonly KnobBoard board;
    private readonly Func<RecipeDocument, PieceReading> assemble;
    private History history;
    private ImmutableArray<Knob> knobsAtStart = [];
    private (StepSize Size, bool Up) lastTurn = turns[0];

    /// <param name="start">The recipe as it was opened; may be broken.</param>
    /// <param name="board">What can be turned.</param>
    /// <param name="assemble">Puts a piece together; quick.</param>
    public Bench(RecipeDocument start, KnobBoard board, Func<RecipeDocument, PieceReading> assemble)
    {
        (this.board, this.assemble, Start) = (board, assemble, start);
        history = new(start);
        Look();
    }

    /// <summary>The bench of a file's text.</summary>
    /// <param name="text">A recipe; may be broken.</param>
    /// <param name="predictor">Who has the shelf.</param>
    /// <param name="files">Where paths in the recipe lead.</param>
    public static Bench Of(FileText text, Predictor predictor, IMaterialSource files) =>
        new(
            RecipeDocument.Read(text),
            new KnobBoard(predictor.Shelf),
            document => PieceAssembly.Of(document, predictor.Shelf, files)
        );

    /// <summary>As it was opened.</summary>
    public RecipeDocument Start { get; private set; }

    /// <summary>As it is.</summary>
    public RecipeDocument Document => history.Present.Document;

    /// <summary>The last turn, for its sentence.</summary>
    public Revision Present => history.Present;

    /// <summary>The recipe before the last turn; null at the start.</summary>
    public RecipeDocument? Before => history.Before?.Document;

    /// <summary>Put together; null while the recipe is broken.</summary>
    public Piece? Piece { get; private set; }

    /// <summary>What is wrong with a broken recipe.</summary>
    public ImmutableArray<Problem> Problems { get; private set; } = [];

    /// <summary>What can be turned; empty while the recipe is broken.</summary>
    public ImmutableArray<Knob> Knobs { get; private set; } = [];

    /// <summary>Which knob is held.</summary>
    public int Cursor { get; private set; }

    /// <summary>The knob that is held; null if there is none.</summary>
    public Knob? Held => Cursor < Knobs.Length ? Knobs[Cursor] : null;

    /// <summary>Turns that can be undone.</summary>
    public int UndoCount => history.UndoCount;

    /// <summary>Turns that can be done again.</summary>
    public int RedoCount => history.RedoCount;

    /// <summary>How a knob stood at the start; null if it was not there, or stood as it does.</summary>
    public string? AtStart(Knob knob)
    {
        string? then = Start.TryResolve(knob.KeyPath, out _, out _) ? Start.Get(knob.KeyPath) : null;
        then ??= knobsAtStart.FirstOrDefault(k => k.KeyPath == knob.KeyPath)?.Value;
        return then == knob.Value ? null : then;
    }

    /// <summary>Begins anew with another text of the file.</summary>
    public void Reopen(RecipeDocument document)
    {
        Start = document;
        history = new(document);
        knobsAtStart = [];
        Look();
    }

    /// <summary>Holds another knob.</summary>
    public void Hold(int index)
    {
        int before = Cursor;
        Cursor = Math.Clamp(index, 0, Math.Max(0, Knobs.Length - 1));
        if (Cursor != before)
        {
            history.Close();
        }
    }

    /// <summary>Turns the held knob one step.</summary>
    /// <returns>Why it does not turn; null if it did.</returns>
    public string? Turn(StepSize size, bool up)
    {
        lastTurn = (size, up);
        return Held is not { } knob ? null
            : knob.WhyFixed.Length > 0 ? knob.WhyFixed
            : knob.Next(size, up) is { } next ? Set(knob, next)
            : $"{Capital(knob.FullLabel)}: this is the {(up ? "last" : "first")} on the shelf.";
    }

    /// <summary>
    /// Where the next turn of the held knob leads, in usual, fine and large steps up and down, that of the last turn first; put
    /// together when it is asked for, on any thread.
    /// </summary>
    public IEnumerable<RecipeDocument> Ahead() =>
        Held is { WhyFixed: "" } knob ? Neighbours(Document, knob, lastTurn) : [];

    /// <summary>Sets the held knob to what was typed.</summary>
    /// <returns>Why not; null if it did.</returns>
    public string? SetTyped(string text)
    {
        Close();
        string? refusal = Typed(text);
        Close();
        return refusal;
    }

    /// <summary>A further turn of the held knob is one of its own.</summary>
    public void Close() => history.Close();

    private static IEnumerable<RecipeDocument> Neighbours(
        RecipeDocument document,
        Knob knob,
        (StepSize Size, bool Up) first
    )
    {
        var values = turns.Prepend(first).Select(t => knob.Next(t.Size, t.Up));
        foreach (string value in values.OfType<string>().Distinct())
        {
            var next = KnobBoard.Turned(document, knob, value);
            if (next.Recipe is not null)
            {
                yield return next;
            }
        }
    }

    private string? Typed(string text)
    {
        if (Held is not { } knob)
        {
            return null;
        }
        if (knob.WhyFixed.Length > 0)
        {
            return knob.WhyFixed;
        }
        string word = text.Trim();
        if (knob.IsNumber)
        {
            string? hint = NumberText.Hint(word);
            return NumberText.TryRead(word, out double number) ? Set(knob, NumberText.Write(number))
                : hint is not null ? hint
                : $"'{Letters.OneLine(word, false)}' is no number; allowed: {knob.Allowed}";
        }
        string[] fitting = [.. knob.Words.Where(w => w.StartsWith(word, StringComparison.OrdinalIgnoreCase))];
        return knob.Words.Contains(word) ? Set(knob, word)
            : fitting.Length == 1 ? Set(knob, fitting[0])
            : fitting.Length > 1 ? $"'{word}' begins several: {string.Join(", ", fitting)}"
            : $"not on the shelf; allowed: {string.Join(", ", knob.Words)}";
    }

    /// <summary>Puts the held knob back to where it stood at the start.</summary>
    public string? PutBack()
    {
        history.Close();
        return Held is not { } knob || AtStart(knob) is not { } then
                ? "It stands where it stood at the start."
            : then == KnobBoard.NoPigment
                ? "The layer was clear at the start: u takes the pigment out again, a loading of 0 leaves it clear."
            : Set(knob, then);
    }

    /// <summary>Sets several keys at once, as one turn.</summary>
    /// <returns>Why not; null if it did.</returns>
    public string? Take(RecipeDocument document, string what)
    {
        if (document.Text == Document.Text)
        {
            return null;
        }
        if (WhyNot(document) is { } refusal)
        {
            return refusal;
        }
        history.Close();
        history.Add(new(document, "", what, ""));
        history.Close();
        Look();
        return null;
    }

    /// <summary>One turn back.</summary>
    public bool Undo() => After(history.Undo());

    /// <summary>One turn forth.</summary>
    public bool Redo() => After(history.Redo());

    private bool After(bool moved)
    {
        if (moved)
        {
            Look();
        }
        return moved;
    }

    private string? Set(Knob knob, string value)
    {
        if (knob.IsNumber && NumberText.TryRead(value, out double number) && !knob.Allowed.Contains(number))
        {
            return $"{Capital(knob.FullLabel)} {value} {knob.Unit} is not allowed; allowed: {knob.Allowed}";
        }
        if (value == knob.Value)
        {
            return null;
        }
        var document = KnobBoard.Turned(Document, knob, value);
        if (WhyNot(document) is { } refusal)
        {
            return $"{Capital(knob.FullLabel)} {value} is not allowed: {refusal}";
        }
        string from = Present.KeyPath == knob.KeyPath ? Present.From : "";
        bool goesOn = from.Length > 0 && history.IsOpen;
        from = goesOn ? from : knob.Value;
        string unit = knob.Unit.Length > 0 ? " " + knob.Unit : "";
        history.Add(
            new(
                document,
                knob.KeyPath,
                $"{Capital(knob.FullLabel)} {from} → {value}{unit}{KnobBoard.Besides(knob)}",
                from
            )
        );
        Look();
        return null;
    }

    private string? WhyNot(RecipeDocument document)
    {
        var reading = assemble(document);
        return reading.Piece is not null
            ? null
            : reading.Problems.FirstOrDefault(p => p.Severity == Severity.Error)?.Text
                ?? "the recipe would be broken";
    }

    private void Look()
    {
        var reading = assemble(Document);
        string? held = Held?.KeyPath;
        Piece = reading.Piece;
        Problems = reading.Piece is null ? reading.Problems : [];
        Knobs = reading.Piece is { } piece ? board.Of(Document, piece) : [];
        if (knobsAtStart.IsEmpty && Document.Text == Start.Text)
        {
            knobsAtStart = Knobs;
        }
        int same = 0;
        while (same < Knobs.Length && Knobs[same].KeyPath != held)
        {
            same++;
        }
        Cursor =
            same < Knobs.Length ? same
            : held is null ? FirstNumber()
            : Math.Clamp(Cursor, 0, Math.Max(0, Knobs.Length - 1));
    }

    // The first that arrows turn little by little.
    private int FirstNumber() => Math.Max(0, Knobs.IndexOf(Knobs.FirstOrDefault(k => k.IsNumber)!));

    private static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
