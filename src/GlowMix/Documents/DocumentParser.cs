using System.Collections.Immutable;
using System.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace GlowMix.Documents;

/// <summary>
/// Builds the tree from the parser's events in one pass. The package's own tree is not used: it overflows the stack on
/// deep nesting, shares nodes through aliases and loads several documents in silence.
/// </summary>
internal sealed class DocumentParser
{
    private readonly string text;
    private readonly ProblemList problems;
    private readonly Parser parser;
    private int depth;
    private long previousIndex;

    private DocumentParser(string text, ProblemList problems)
    {
        this.text = text;
        this.problems = problems;
        parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
    }

    /// <summary>The root, or null with at least one error in the list.</summary>
    public static MappingNode? Parse(string text, ProblemList problems)
    {
        if (Encoding.UTF8.GetByteCount(text) > Document.LongestBytes)
        {
            problems.Error(null, ProblemTexts.TooLong(Document.LongestBytes));
            return null;
        }
        if (!CharactersAreAllowed(text, problems))
        {
            return null;
        }
        try
        {
            return new DocumentParser(text, problems).ParseRoot();
        }
        catch (RefusedException refused)
        {
            problems.Error(refused.Place, refused.Message);
        }
        return null;
    }

    // The scanner stops in silence at a NUL and gives a tab in the indentation no usable place.
    private static bool CharactersAreAllowed(string text, ProblemList problems)
    {
        int line = 1;
        int lineStart = 0;
        bool indenting = true;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (c == '\n' || (c == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                (line, lineStart, indenting) = (line + 1, i + 1, true);
                continue;
            }
            if (c == '\t' && indenting)
            {
                problems.Error(new Place(line, i - lineStart + 1), ProblemTexts.Tab);
                return false;
            }
            bool refused =
                (char.IsControl(c) && c is not ('\t' or '\r')) || c is '\u2028' or '\u2029' or '\uFEFF';
            if (refused)
            {
                problems.Error(new Place(line, i - lineStart + 1), ProblemTexts.Character(c));
                return false;
            }
            indenting &= c is ' ' or '-';
        }
        return true;
    }

    private MappingNode? ParseRoot()
    {
        DocumentNode? root = null;
        while (Next() is not StreamEnd)
        {
            switch (parser.Current)
            {
                case StreamStart or DocumentEnd:
                    break;
                case DocumentStart start when root is null:
                    Refuse(start.Tags?.Any(t => !IsDefaultTag(t)) == true, start, ProblemTexts.Tag);
                    break;
                case DocumentStart start:
                    Refuse(true, start, ProblemTexts.SeveralDocuments);
                    break;
                default:
                    root = ParseNode();
                    break;
            }
        }
        switch (root)
        {
            case MappingNode mapping:
                return mapping;
            case null or ScalarNode { IsEmpty: true }:
                problems.Error(null, ProblemTexts.Empty);
                return null;
            default:
                problems.Error(root.Place, ProblemTexts.RootIsNotAMapping(root.What));
                return null;
        }
    }

    // The parser always knows these two.
    private static bool IsDefaultTag(YamlDotNet.Core.Tokens.TagDirective tag) => tag.Handle is "!" or "!!";

    private DocumentNode ParseNode() =>
        parser.Current switch
        {
            Scalar scalar => ScalarOf(scalar),
            SequenceStart start => ParseList(start),
            MappingStart start => ParseMapping(start),
            var other => throw new RefusedException(
                PlaceOf(other!.Start),
                ProblemTexts.NotYaml("a value is missing")
            ),
        };

    private ListNode ParseList(SequenceStart start)
    {
        bool isFlow = start.Style == SequenceStyle.Flow;
        var items = ImmutableArray.CreateBuilder<DocumentNode>();
        while (Next() is not SequenceEnd)
        {
            items.Add(ParseNode());
        }
        return new(
            items.ToImmutable(),
            isFlow,
            PlaceOf(start.Start)!.Value,
            SpanOf(start, items.Count > 0 ? items[^1] : null)
        );
    }

    private MappingNode ParseMapping(MappingStart start)
    {
        bool isFlow = start.Style == MappingStyle.Flow;
        // The start event of a pair without brackets of its own, '[a: 1]', has no place.
        bool isBarePair =
            isFlow && (start.Start.Index < previousIndex || text[(int)start.Start.Index] != '{');
        if (isBarePair)
        {
            throw new RefusedException(PlaceOf(Next().Start), ProblemTexts.BarePair);
        }
        var entries = ImmutableArray.CreateBuilder<MappingEntry>();
        var seen = new Dictionary<string, Place>();
        while (Next() is not MappingEnd)
        {
            var keyNode = ParseNode();
            if (keyNode is not ScalarNode key || key.Value.Length == 0)
            {
                throw new RefusedException(keyNode.Place, ProblemTexts.KeyIsNotAWord);
            }
            Next();
            var value = ParseNode();
            if (seen.TryGetValue(key.Value, out var first))
            {
                problems.Error(key.Place, ProblemTexts.DuplicateKey(key.Value, first));
                continue;
            }
            seen.Add(key.Value, key.Place);
            entries.Add(new(key, value));
        }
        return new(
            entries.ToImmutable(),
            isFlow,
            PlaceOf(start.Start)!.Value,
            SpanOf(start, entries.Count > 0 ? entries[^1].Value : null)
        );
    }

    private ScalarNode ScalarOf(Scalar scalar)
    {
        // Nothing at the end of a text lies one behind it; a block scalar ends on a later line, behind blanks.
        int start = Math.Min((int)scalar.Start.Index, text.Length);
        int end = Math.Clamp((int)scalar.End.Index, start, text.Length);
        end = start + text.AsSpan(start, end - start).TrimEnd().Length;
        return new(
            scalar.Value,
            scalar.Style == ScalarStyle.Plain,
            PlaceOf(scalar.Start)!.Value,
            new(start, end)
        );
    }

    // In brackets the end event stands on the closing one; a block ends where its last value does, as the end event of a
    // block stands where the next key begins.
    private SourceSpan SpanOf(ParsingEvent start, DocumentNode? last)
    {
        int first = (int)start.Start.Index;
        int end = (int)parser.Current!.End.Index;
        bool isInBrackets = first < text.Length && text[first] is '[' or '{';
        return new(first, isInBrackets ? end + 1 : last?.Span.End ?? end);
    }

    private ParsingEvent Next()
    {
        previousIndex = parser.Current?.Start.Index ?? 0;
        if (!Advance())
        {
            throw new RefusedException(null, ProblemTexts.NotYaml("the text ends too early"));
        }
        var current = parser.Current!;
        Refuse(
            current is AnchorAlias || current is NodeEvent { Anchor.IsEmpty: false },
            current,
            ProblemTexts.Anchor
        );
        Refuse(current is NodeEvent { Tag.IsEmpty: false }, current, ProblemTexts.Tag);
        depth += current.NestingIncrease;
        // The stream and the document are levels of the parser's own.
        Refuse(depth - 2 > Document.DeepestNesting, current, TooDeep);
        return current;
    }

    private bool Advance()
    {
        try
        {
            return parser.MoveNext();
        }
        catch (YamlException e)
        {
            string reason = e.InnerException?.Message ?? e.Message;
            throw new RefusedException(PlaceOf(e.Start), ProblemTexts.NotYaml(reason));
        }
        // On malformed text the package also throws these two, without a place.
        catch (Exception e) when (e is InvalidOperationException or ArgumentException)
        {
            throw new RefusedException(null, ProblemTexts.NotYaml(e.Message));
        }
    }

    private static string TooDeep { get; } = ProblemTexts.TooDeep(Document.DeepestNesting);

    private static void Refuse(bool condition, ParsingEvent at, string reason)
    {
        if (condition)
        {
            throw new RefusedException(PlaceOf(at.Start), reason);
        }
    }

    private static Place? PlaceOf(Mark mark) =>
        mark.Line < 1 ? null : new((int)mark.Line, Math.Max(1, (int)mark.Column));

    /// <summary>Leaves the recursion at the first thing that is refused; never leaves this class.</summary>
    private sealed class RefusedException(Place? place, string message) : Exception(message)
    {
        public Place? Place { get; } = place;
    }
}
