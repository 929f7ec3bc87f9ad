using GlowMix.Documents;

namespace GlowMix.Tests.Documents;

public class DocumentTests
{
    [Fact]
    public void A_small_document_becomes_a_tree_with_places_and_spans()
    {
        const string Text = "title: 'Stair edge'   # invented\nlayers:\n  - depth_mm: 2.5\n    name: glow\n";
        var document = Document.Read(Text, "a.yaml");

        Assert.Empty(document.Problems);
        var title = Assert.IsType<ScalarNode>(document.Root!["title"]);
        Assert.Equal(("Stair edge", false, new Place(1, 8)), (title.Value, title.IsPlain, title.Place));
        Assert.Equal("'Stair edge'", SourceText.Slice(Text, title.Span));
        var layers = Assert.IsType<ListNode>(document.Root["layers"]);
        var layer = Assert.IsType<MappingNode>(Assert.Single(layers.Items));
        Assert.Equal(new Place(3, 5), layer.Place);
        Assert.Equal("depth_mm: 2.5\n    name: glow", SourceText.Slice(Text, layer.Span));
        Assert.Null(document.Root["board"]);
    }

    [Theory]
    [InlineData("a: {b: 1}  # x\n", "{b: 1}")]
    [InlineData("a: [ [1], [] ]\n", "[ [1], [] ]")]
    [InlineData("a: {}", "{}")]
    [InlineData("a:\n  - 1\n  - {b: 2}   # x\n\n\nc: 1", "- 1\n  - {b: 2}")]
    [InlineData("a: |\n  b\n\n  c\n\nd: 1", "|\n  b\n\n  c")]
    public void The_span_of_a_value_is_what_is_written(string text, string written) =>
        Assert.Equal(written, SourceText.Slice(text, Document.Read(text, "a.yaml").Root!["a"]!.Span));

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# only a comment\n")]
    [InlineData("---\n")]
    public void An_empty_file_is_refused(string text) => AssertOnly(text, null, ProblemTexts.Empty);

    [Theory]
    [InlineData("- a\n- b\n", 1, 1, "a list")]
    [InlineData("\njust words\n", 2, 1, "one value")]
    public void A_file_without_keys_is_refused(string text, int line, int column, string what) =>
        AssertOnly(text, new(line, column), ProblemTexts.RootIsNotAMapping(what));

    [Theory]
    [InlineData("a: b: c\n")]
    [InlineData("a: [1, 2\nb: 3")] // the package throws InvalidOperationException here
    [InlineData("a: 'open\n")]
    [InlineData("a: {b: 1\n")]
    [InlineData("%YAML 9.9\n---\na: 1\n")]
    [InlineData("a: 1\n b: 2\n")]
    [InlineData("@a: 1\n")]
    [InlineData("PK\u0003\u0004")]
    public void What_is_not_YAML_is_one_problem_and_no_exception(string text)
    {
        var document = Document.Read(text, "a.yaml");
        Assert.Null(document.Root);
        Assert.Single(document.Problems);
    }

    [Theory]
    [InlineData("a: 1\nb: c: d\n", "a.yaml:2:5: not YAML: a second colon in the line")]
    [InlineData("a: [1, 2\nb: 3\n", "a.yaml: not YAML: a bracket is not closed")]
    [InlineData("a: {b: 1\n", "a.yaml:2:1: not YAML: a bracket is not closed")]
    [InlineData("a: 'open\n", "a.yaml:1:4: not YAML: a quote is not closed")]
    [InlineData("a: @b\n", "a.yaml:1:4: not YAML: a value cannot begin with this sign")]
    [InlineData("a: 1\nb\nc: 2\n", "a.yaml:2:1: not YAML: no 'key: value' in this line")]
    [InlineData("a:\n  - 1\n  b: 2\n", "a.yaml:3:3: not YAML: a key beside the items of a list")]
    [InlineData("a: \"C:\\q\"\n", "a.yaml:1:4: not YAML: in double quotes a backslash is written twice")]
    public void The_usual_slips_are_told_in_plain_words(string text, string begin) =>
        Assert.StartsWith(
            begin,
            Assert.Single(Document.Read(text, "a.yaml").Problems).ToString(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Mutated_documents_never_throw()
    {
        const string Text =
            "a: &x [1, {b: 'c'}]\nd:\n  - e: \"f\\u0041\"\n    g: |\n      h\n---\ni: *x\n!!t j: ? k\n";
        const string Alphabet = " \t\n\r:-[]{}&*!|>'\"%@`,?#\\aé😀0.~<";
        var random = new Random(7);
        for (int i = 0; i < 20_000; i++)
        {
            var mutated = Text.ToCharArray();
            for (int change = random.Next(1, 5); change > 0; change--)
            {
                mutated[random.Next(mutated.Length)] = Alphabet[random.Next(Alphabet.Length)];
            }
            var document = Document.Read(new string(mutated)[..random.Next(mutated.Length)], "a.yaml");
            Assert.Equal(document.Root is null, document.Problems.Length > 0);
        }
    }

    [Fact]
    public void A_second_document_is_refused() =>
        AssertOnly("a: 1\n---\nb: 2\n", new(2, 1), ProblemTexts.SeveralDocuments);

    [Theory]
    [InlineData("a: &x 1\nb: *x\n")]
    [InlineData("a: *x\n")]
    [InlineData("a: &x [*x]\n")]
    public void Anchors_and_aliases_are_refused_on_their_line(string text) =>
        AssertOnly(text, new(1, 4), ProblemTexts.Anchor);

    [Fact]
    public void An_alias_bomb_is_refused_at_its_first_anchor()
    {
        string bomb = "a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n";
        for (int i = 1; i < 10; i++)
        {
            bomb += $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n";
        }
        AssertOnly(bomb, new(1, 5), ProblemTexts.Anchor);
    }

    [Theory]
    [InlineData("a: !!str 1\n")]
    [InlineData("a: !secret x\n")]
    [InlineData("a: !<tag:yaml.org,2002:int> 1\n")]
    public void Tags_are_refused(string text) => AssertOnly(text, new(1, 4), ProblemTexts.Tag);

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    public void A_hundred_thousand_open_brackets_are_refused(char bracket) =>
        AssertOnly(
            "a: " + new string(bracket, 100_000),
            new(1, 23),
            ProblemTexts.TooDeep(Document.DeepestNesting)
        );

    [Fact]
    public void A_hundred_thousand_dashes_are_refused() =>
        AssertOnly(
            string.Concat(Enumerable.Repeat("- ", 100_000)),
            new(1, 41),
            ProblemTexts.TooDeep(Document.DeepestNesting)
        );

    [Fact]
    public void Twenty_levels_are_read() =>
        Assert.Empty(Document.Read("a: " + new string('[', 19) + new string(']', 19), "a.yaml").Problems);

    [Fact]
    public void Each_duplicate_key_is_told_with_the_line_of_the_first()
    {
        var document = Document.Read("a: 1\nb:\n  c: 1\n  \"c\": 2\na: 3\n", "a.yaml");
        Assert.Null(document.Root);
        Assert.Equal(
            [
                new Problem("a.yaml", new(4, 3), ProblemTexts.DuplicateKey("c", new(3, 3))),
                new Problem("a.yaml", new(5, 1), ProblemTexts.DuplicateKey("a", new(1, 1))),
            ],
            document.Problems
        );
    }

    [Theory]
    [InlineData("a:\n\tb: 1\n", 2, 1)]
    [InlineData("a:\r\n  \tb: 1\r\n", 2, 3)]
    [InlineData("a:\n  -\tb\n", 2, 4)]
    public void A_tab_in_the_indentation_is_refused_where_it_stands(string text, int line, int column) =>
        AssertOnly(text, new(line, column), ProblemTexts.Tab);

    [Fact]
    public void Tabs_before_a_comment_do_no_harm()
    {
        var document = Document.Read("a: 1\t\t# one\n", "a.yaml");
        Assert.Empty(document.Problems);
        Assert.Equal("1", Assert.IsType<ScalarNode>(document.Root!["a"]).Value);
    }

    [Theory]
    [InlineData('\0')]
    [InlineData('\u001b')]
    [InlineData('\u0085')]
    [InlineData('\u2028')]
    public void A_character_that_does_not_print_is_refused(char character) =>
        AssertOnly($"a: 1\nb: x{character}y\n", new(2, 5), ProblemTexts.Character(character));

    [Theory]
    [InlineData("a: [b: 1]\n", 5)]
    [InlineData("{a: [{b: 1}, c: 2]}\n", 14)]
    public void A_key_in_square_brackets_is_refused(string text, int column) =>
        AssertOnly(text, new(1, column), ProblemTexts.BarePair);

    [Theory]
    [InlineData("? [a]\n: 1\n")]
    [InlineData(": 1\n")]
    public void A_key_that_is_no_word_is_refused(string text) =>
        Assert.Equal(ProblemTexts.KeyIsNotAWord, Assert.Single(Document.Read(text, "a.yaml").Problems).Text);

    [Fact]
    public void A_text_longer_than_the_limit_is_refused_with_the_limit() =>
        AssertOnly(
            "a: " + new string('x', Document.LongestBytes),
            null,
            ProblemTexts.TooLong(Document.LongestBytes)
        );

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_first_key() =>
        Assert.Equal("1", ((ScalarNode)Document.Read("\uFEFFa: 1\n", "a.yaml").Root!["a"]!).Value);

    [Fact]
    public void Places_and_spans_are_right_with_CRLF_and_characters_outside_the_basic_plane()
    {
        const string Text = "title: 😀 edge\r\nb:\r\n  c: 2.5   # here\r\n";
        var document = Document.Read(Text, "a.yaml");
        var c = Assert.IsType<ScalarNode>(Assert.IsType<MappingNode>(document.Root!["b"])["c"]);
        Assert.Equal(new Place(3, 6), c.Place);
        Assert.Equal("2.5", SourceText.Slice(Text, c.Span));
    }

    private static void AssertOnly(string text, Place? place, string problem) =>
        Assert.Equal([new Problem("a.yaml", place, problem)], Document.Read(text, "a.yaml").Problems);
}
