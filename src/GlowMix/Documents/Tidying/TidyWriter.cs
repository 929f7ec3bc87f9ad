using GlowMix.Documents.Shapes;

namespace GlowMix.Documents.Tidying;

/// <summary>Writes one document anew, entry by entry, each with the comments that are its own.</summary>
internal sealed class TidyWriter(Document document, TextLines lines, IReadOnlyList<Comment> comments)
{
    private const int Step = 2;

    private readonly string text = document.Text;

    // Comments are handed out in the order of the text.
    private int next;

    public string Write(Shape shape)
    {
        string lineEnd = SourceText.LineEndOf(text);
        var root = document.Root!;
        int first = root.Entries.Length > 0 ? root.Entries[0].Key.Span.Start : text.Length;
        var written = new List<string>();
        foreach (var comment in TakeAlone(first))
        {
            if (comment.IsSetOff && written.Count > 0)
            {
                written.Add("");
            }
            written.Add(comment.Text);
        }
        if (written.Count > 0 && root.Entries.Length > 0 && lines.IsBlankAbove(lines.Of(first)))
        {
            written.Add("");
        }
        written.AddRange(Children(root, 0, shape, parentColumn: -1, limit: text.Length));
        return string.Concat(written.Select(line => line.TrimEnd() + lineEnd));
    }

    // The entries of a mapping or the items of a list, in canonical order, one line each or more.
    private List<string> Children(DocumentNode node, int indent, Shape? shape, int parentColumn, int limit)
    {
        var blocks = new List<TidyBlock>();
        int own = node.Place.Column - 1;
        switch (node)
        {
            case MappingNode mapping:
                var keys = TidyShapes.KeysOf(shape, mapping);
                for (int i = 0; i < mapping.Entries.Length; i++)
                {
                    var entry = mapping.Entries[i];
                    int end = i + 1 < mapping.Entries.Length ? mapping.Entries[i + 1].Key.Span.Start : limit;
                    var block = Begin(blocks, entry.Key.Span.Start, indent);
                    block.Order = TidyShapes.OrderOf(keys, shape, entry.Key.Value);
                    Entry(block, entry, indent, TidyShapes.ShapeOf(keys, shape, entry.Key.Value), end);
                }
                break;
            case ListNode list:
                for (int i = 0; i < list.Items.Length; i++)
                {
                    int end = i + 1 < list.Items.Length ? StartOfItem(list, list.Items[i + 1]) : limit;
                    var block = Begin(blocks, StartOfItem(list, list.Items[i]), indent);
                    Item(block, list.Items[i], indent, (shape as ListShape)?.Item, end);
                }
                break;
        }
        var written = new List<string>();
        foreach (var block in blocks.OrderBy(b => b.Order))
        {
            if (block.IsSetOff && written.Count > 0)
            {
                written.Add("");
            }
            written.AddRange(block.Lines);
        }
        // Comments below the last entry that stand as far in as the entries do.
        while (
            next < comments.Count
            && comments[next] is { IsAlone: true } tail
            && tail.Index < limit
            && tail.Column >= own
            && tail.Column > parentColumn
        )
        {
            if (tail.IsSetOff)
            {
                written.Add("");
            }
            written.Add(TidyLines.Spaces(indent) + tail.Text);
            next++;
        }
        return written;
    }

    // A new block with the comments above its first line; those that stand close below the block before stay with that one.
    private TidyBlock Begin(List<TidyBlock> blocks, int start, int indent)
    {
        var above = TakeAlone(start).ToList();
        bool isSetOff = lines.IsBlankAbove(lines.Of(start));
        if (blocks.Count > 0 && above.Count > 0 && !above[0].IsSetOff)
        {
            int close = above.FindIndex(1, c => c.IsSetOff);
            close = close < 0 && isSetOff ? above.Count : close;
            for (int i = 0; i < close; i++)
            {
                blocks[^1].Lines.Add(TidyLines.Spaces(indent) + above[i].Text);
            }
            above.RemoveRange(0, Math.Max(close, 0));
        }
        var block = new TidyBlock { IsSetOff = above.Count > 0 ? above[0].IsSetOff : isSetOff };
        for (int i = 0; i < above.Count; i++)
        {
            if (i > 0 && above[i].IsSetOff)
            {
                block.Lines.Add("");
            }
            block.Lines.Add(TidyLines.Spaces(indent) + above[i].Text);
        }
        if (above.Count > 0 && isSetOff)
        {
            block.Lines.Add("");
        }
        blocks.Add(block);
        return block;
    }

    private void Entry(TidyBlock block, MappingEntry entry, int indent, Shape? shape, int limit)
    {
        string head = TidyLines.Spaces(indent) + SourceText.Slice(text, entry.Key.Span) + ":";
        int column = entry.Key.Place.Column - 1;
        switch (entry.Value)
        {
            case ScalarNode scalar:
                Scalar(block, head, scalar, shape, column, indent, entry.Key.Span.End);
                break;
            case var flow when IsFlow(flow) && (IsEmpty(flow) || HasComments(flow.Span)):
                Raw(block, head, flow.Span, column, indent);
                break;
            case var flow when IsFlow(flow):
                Line(block, head, flow.Span.End);
                block.Lines.AddRange(Opened(flow, indent + Step, shape));
                break;
            case var nested:
                Line(block, head, entry.Key.Span.End);
                block.Lines.AddRange(Children(nested, indent + Step, shape, column, limit));
                break;
        }
    }

    private void Item(TidyBlock block, DocumentNode item, int indent, Shape? shape, int limit)
    {
        string dash = TidyLines.Spaces(indent) + "-";
        int column = item.Place.Column - 1;
        switch (item)
        {
            case ScalarNode scalar:
                Scalar(block, dash, scalar, shape, column, indent, scalar.Span.Start);
                break;
            case var flow when IsFlow(flow) && (IsEmpty(flow) || HasComments(flow.Span)):
                Raw(block, dash, flow.Span, column, indent);
                break;
            default:
                var inner = IsFlow(item)
                    ? Opened(item, indent + Step, shape)
                    : Children(item, indent + Step, shape, column - 1, limit);
                if (IsFlow(item) && inner.Count > 0)
                {
                    var trailing = new TidyBlock();
                    Line(trailing, inner[0], item.Span.End);
                    inner[0] = trailing.Lines[^1];
                }
                // What stands above the first line of the item stands above its dash.
                int first = inner.FindIndex(line => !TidyLines.IsCommentOrBlank(line));
                for (int i = 0; i < first; i++)
                {
                    block.Lines.Add(
                        inner[i].Length == 0 ? "" : TidyLines.Spaces(indent) + inner[i].TrimStart()
                    );
                }
                block.Lines.Add(dash + " " + inner[first].TrimStart());
                block.Lines.AddRange(inner.Skip(first + 1));
                break;
        }
    }

    // In brackets no comments stand, so that nothing but the nodes themselves is to be written.
    private List<string> Opened(DocumentNode flow, int indent, Shape? shape)
    {
        var written = new List<string>();
        switch (flow)
        {
            case MappingNode mapping:
                var keys = TidyShapes.KeysOf(shape, mapping);
                foreach (
                    var entry in mapping.Entries.OrderBy(e => TidyShapes.OrderOf(keys, shape, e.Key.Value))
                )
                {
                    string head = TidyLines.Spaces(indent) + SourceText.Slice(text, entry.Key.Span) + ":";
                    AddOpened(
                        written,
                        head,
                        entry.Value,
                        indent,
                        TidyShapes.ShapeOf(keys, shape, entry.Key.Value)
                    );
                }
                break;
            case ListNode list:
                foreach (var item in list.Items)
                {
                    var inner = new List<string>();
                    AddOpened(
                        inner,
                        TidyLines.Spaces(indent) + "-",
                        item,
                        indent,
                        (shape as ListShape)?.Item
                    );
                    if (inner.Count > 1)
                    {
                        inner[1] = $"{inner[0]} {inner[1].TrimStart()}";
                        inner.RemoveAt(0);
                    }
                    written.AddRange(inner);
                }
                break;
        }
        return written;
    }

    private void AddOpened(List<string> written, string head, DocumentNode value, int indent, Shape? shape)
    {
        if (value is ScalarNode scalar)
        {
            string slice = ValueText(scalar, shape);
            // A text over several lines is one line with blanks where it broke.
            written.Add(
                slice.Length == 0
                    ? head
                    : $"{head} {string.Join(' ', slice.Split('\n').Select(l => l.Trim()))}"
            );
        }
        else if (IsEmpty(value))
        {
            written.Add($"{head} {SourceText.Slice(text, value.Span)}");
        }
        else
        {
            written.Add(head);
            written.AddRange(Opened(value, indent + Step, shape));
        }
    }

    private void Scalar(
        TidyBlock block,
        string head,
        ScalarNode scalar,
        Shape? shape,
        int column,
        int indent,
        int keyEnd
    )
    {
        if (text.AsSpan(scalar.Span.Start, scalar.Span.Length).ContainsAny('\r', '\n'))
        {
            Raw(block, head, scalar.Span, column, indent);
            return;
        }
        string value = ValueText(scalar, shape);
        Line(
            block,
            value.Length == 0 ? head : $"{head} {value}",
            Math.Max(keyEnd, scalar.Span.Length == 0 ? keyEnd : scalar.Span.End)
        );
    }

    private string ValueText(ScalarNode scalar, Shape? shape)
    {
        string slice = SourceText.Slice(text, scalar.Span);
        bool isNumber =
            shape is NumberShape || (shape is EitherShape either && either.Shapes.Any(s => s is NumberShape));
        return isNumber && scalar.IsPlain ? NumberStyle.Of(slice) : slice;
    }

    // Several lines that belong together are moved, not written anew.
    private void Raw(TidyBlock block, string head, SourceSpan span, int column, int indent)
    {
        int from = next;
        while (next < comments.Count && comments[next].Index < span.End)
        {
            next++;
        }
        // Those in front of it, behind the key or between.
        for (int i = from; i < next && comments[i].Index < span.Start; i++)
        {
            block.Lines.Add(TidyLines.Spaces(indent) + comments[i].Text);
        }
        string[] raw = [.. SourceText.Slice(text, span).Split('\n').Select(l => l.TrimEnd('\r'))];
        int shift = indent - column;
        if (raw.Length == 1)
        {
            Line(block, $"{head} {raw[0]}", span.End);
            return;
        }
        block.Lines.Add($"{head} {raw[0]}");
        foreach (string line in raw.Skip(1).SkipLast(1))
        {
            block.Lines.Add(TidyLines.Shifted(line, shift));
        }
        Line(block, TidyLines.Shifted(raw[^1], shift), span.End);
    }

    // One line with the comment behind it; further ones that stood between key and value go above.
    private void Line(TidyBlock block, string code, int end)
    {
        int endOfLine = SourceText.EndOfLine(text, end);
        var own = new List<Comment>();
        while (next < comments.Count && comments[next].Index < endOfLine)
        {
            own.Add(comments[next++]);
        }
        for (int i = 0; i + 1 < own.Count; i++)
        {
            block.Lines.Add(TidyLines.Spaces(code.Length - code.TrimStart().Length) + own[i].Text);
        }
        block.Lines.Add(
            own.Count == 0 ? code : code.PadRight(Math.Max(own[^1].Column, code.Length + Step)) + own[^1].Text
        );
    }

    private IEnumerable<Comment> TakeAlone(int before)
    {
        while (next < comments.Count && comments[next].Index < before)
        {
            yield return comments[next++];
        }
    }

    private bool HasComments(SourceSpan span) =>
        comments.Any(c => c.Index >= span.Start && c.Index < span.End);

    // An item begins with its dash.
    private int StartOfItem(ListNode list, DocumentNode item)
    {
        int start = Math.Min(item.Span.Start, text.Length - 1);
        if (list.IsFlow)
        {
            return start;
        }
        int dash = text.LastIndexOf(
            '-',
            Math.Max(0, start - (item is ScalarNode { Span.Length: > 0 } ? 1 : 0))
        );
        return dash < 0 ? start : dash;
    }

    private static bool IsFlow(DocumentNode node) =>
        node is MappingNode { IsFlow: true } or ListNode { IsFlow: true };

    private static bool IsEmpty(DocumentNode node) =>
        node is MappingNode { Entries.Length: 0 } or ListNode { Items.Length: 0 };
}
