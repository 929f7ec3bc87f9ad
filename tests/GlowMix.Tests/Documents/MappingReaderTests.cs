using GlowMix.Documents;

namespace GlowMix.Tests.Documents;

public class MappingReaderTests
{
    private static readonly NumberRange Percent = NumberRange.Between(0, 80);

    [Fact]
    public void Numbers_words_lists_and_mappings_are_read_and_ticked_off()
    {
        var reader = Reader(
            "depth_mm: 2.5\ncount: 60\nface: up\ntitle: ' Edge '\nlist:\n  - 1e2\npour:\n  length_mm: .5\n",
            out var problems
        );
        Assert.Equal(2.5, reader.Number("depth_mm", NumberRange.Above(0)));
        Assert.Equal(60, reader.WholeNumber("count", 1, 100));
        Assert.Equal("up", reader.OneOf("face", "up", "down"));
        Assert.Equal("Edge", reader.Text("title"));
        Assert.Equal(100, reader.List("list")!.Number(0, NumberRange.Any));
        var pour = reader.Mapping("pour")!;
        Assert.Equal(0.5, pour.Number("length_mm", NumberRange.Any));
        Assert.Null(reader.OptionalNumber("width_mm", NumberRange.Any));
        pour.Finish();
        reader.Finish();
        Assert.Empty(problems.InLineOrder());
    }

    [Theory]
    [InlineData("-0.1")]
    [InlineData("80.0001")]
    public void A_number_out_of_range_tells_what_is_allowed(string number) =>
        AssertNumber(
            number,
            ProblemTexts.OutOfRange(
                "x",
                double.Parse(number, System.Globalization.CultureInfo.InvariantCulture),
                Percent
            )
        );

    [Theory]
    [InlineData(".nan")]
    [InlineData(".inf")]
    [InlineData("-.Inf")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    public void What_is_not_finite_is_refused(string number) =>
        AssertNumber(number, ProblemTexts.NotANumber("x", number, "needed: a finite number", Percent));

    [Fact]
    public void A_decimal_comma_is_refused_with_the_point_written() =>
        AssertNumber("3,5", "x is '3,5'; write it with a point, such as 3.5");

    [Theory]
    [InlineData("1_000", "1000")]
    [InlineData("1,000,000", "1000000")]
    [InlineData("1 000", "1000")]
    public void Separators_between_digits_are_refused(string number, string without) =>
        AssertNumber(number, $"x is '{number}'; write the digits without separators, such as {without}");

    [Theory]
    [InlineData("20 %", "20")]
    [InlineData("2.5mm", "2.5")]
    [InlineData("40 µm", "40")]
    public void A_unit_beside_the_number_is_refused(string number, string alone) =>
        AssertNumber(number, $"x is '{number}'; write the number alone, such as {alone}");

    [Theory]
    [InlineData("\"3\"")]
    [InlineData("'3'")]
    public void A_number_in_quotes_is_refused(string number) =>
        AssertNumber(number, "x is '\"3\"'; write the number without quotes: 3");

    [Theory]
    [InlineData("many")]
    [InlineData("0x10")]
    [InlineData("1e")]
    [InlineData("true")]
    [InlineData("٣")]
    public void A_word_is_no_number(string number) =>
        AssertNumber(number, ProblemTexts.NotANumber("x", number, null, Percent));

    [Theory]
    [InlineData("")]
    [InlineData("~")]
    public void A_key_without_a_value_is_refused(string number) =>
        AssertNumber(number, ProblemTexts.NoValue("x"));

    [Fact]
    public void A_list_is_no_number() =>
        AssertNumber("[1]", ProblemTexts.WrongShape("x", "a list", "a number"));

    [Fact]
    public void A_fraction_is_no_count()
    {
        Assert.Null(Reader("n: 2.5\n", out var problems).WholeNumber("n", 1, 9));
        AssertOnly(problems, new(1, 4), ProblemTexts.NotWhole("n", 2.5, NumberRange.Between(1, 9)));
    }

    [Fact]
    public void Minus_zero_is_zero() =>
        Assert.False(double.IsNegative(Reader("x: -0\n", out _).Number("x", Percent)!.Value));

    [Fact]
    public void A_missing_key_tells_where_it_is_missing()
    {
        var reader = Reader("pour:\n  width_mm: 3\n", out var problems);
        Assert.Null(reader.Text("resin"));
        Assert.Null(reader.Mapping("pour")!.Number("length_mm", Percent));
        Assert.Equal(
            [
                new Problem("a.yaml", null, ProblemTexts.Missing("resin", "")),
                new Problem("a.yaml", new(2, 3), ProblemTexts.Missing("length_mm", "pour")),
            ],
            problems.InLineOrder()
        );
    }

    [Theory]
    [InlineData("dept_mm: 2", "depth_mm")]
    [InlineData("depht_mm: 2", "depth_mm")]
    [InlineData("depth: 2", "depth_mm")]
    [InlineData("Depth_mm: 2", "depth_mm")]
    [InlineData("pigmnt: green", "pigment")]
    public void An_unknown_key_is_refused_with_the_nearest_known_one(string line, string nearest) =>
        AssertUnknown(line, $"unknown key '{line.Split(':')[0]}'; did you mean '{nearest}'?");

    [Fact]
    public void An_unknown_key_near_to_none_is_refused_with_all_that_are_allowed() =>
        AssertUnknown(
            "zebra: 2",
            "unknown key 'zebra'; allowed: depth_mm, pigment, temperature_c, minutes, illuminance_lx, resin_per_kg"
        );

    // Factors typed again by hand: inch 25.4 mm exactly, 1 fc = 1 lm/ft² = 10.7639 lx, pound 0.45359237 kg exactly.
    [Theory]
    [InlineData("depth_in: 0.25", "depth_mm: 6.35")]
    [InlineData("depth_cm: 0.25", "depth_mm: 2.5")]
    [InlineData("depth_m: 0.25", "depth_mm: 250")]
    [InlineData("depth_um: 250", "depth_mm: 0.25")]
    [InlineData("depth_mil: 100", "depth_mm: 2.54")]
    [InlineData("depth_in: thin", "depth_mm: …")]
    [InlineData("temperature_f: 68", "temperature_c: 20")]
    [InlineData("temperature_k: 293.15", "temperature_c: 20")]
    [InlineData("hours: 8", "minutes: 480")]
    [InlineData("h: 8", "minutes: 480")]
    [InlineData("seconds: 90", "minutes: 1.5")]
    [InlineData("illuminance_fc: 1", "illuminance_lx: 10.7639")]
    [InlineData("resin_per_lb: 10", "resin_per_kg: 22.0462")]
    [InlineData("resin_per_g: 0.03", "resin_per_kg: 30")]
    public void A_key_in_another_unit_is_refused_with_the_line_converted(string line, string converted) =>
        AssertUnknown(line, $"unknown key '{line.Split(':')[0]}'; write {converted}");

    [Fact]
    public void A_word_that_is_not_on_the_list_is_refused_with_the_list_and_the_nearest()
    {
        Assert.Null(Reader("face: dwon\n", out var problems).OneOf("face", "up", "down"));
        AssertOnly(problems, new(1, 7), "face is 'dwon'; allowed: up, down; did you mean 'down'?");
    }

    [Fact]
    public void A_list_of_a_thousand_is_one_problem()
    {
        string items = string.Concat(Enumerable.Repeat("  - {}\n", 1000));
        Assert.Null(Reader("layers:\n" + items, out var problems).List("layers", 1, 12));
        AssertOnly(problems, new(2, 3), "layers has 1000 items; allowed: 1 to 12");
    }

    [Fact]
    public void Keys_that_exclude_each_other_are_refused_at_the_second()
    {
        Assert.True(Reader("b: 1\na: 2\n", out var problems).NotBoth("a", "b"));
        AssertOnly(problems, new(2, 1), ProblemTexts.NotBoth("a", "b"));
    }

    [Fact]
    public void Text_with_an_escape_that_a_terminal_obeys_is_refused()
    {
        Assert.Null(Reader("title: \"\\e[31mred\"\n", out var problems).Text("title"));
        AssertOnly(problems, new(1, 8), ProblemTexts.NotPrintable("title"));
    }

    [Fact]
    public void All_problems_are_told_at_once_in_the_order_of_the_lines()
    {
        var reader = Reader("zz: 1\nb: x\na: 99\n", out var problems);
        reader.Number("a", Percent);
        reader.Number("b", Percent);
        reader.Text("c");
        reader.Finish();
        Assert.Equal(
            ["a.yaml: ", "a.yaml:1:1: ", "a.yaml:2:4: ", "a.yaml:3:4: "],
            problems.InLineOrder().Select(p => p.ToString()[..^p.Text.Length])
        );
    }

    private static void AssertNumber(string number, string problem)
    {
        Assert.Null(Reader($"x: {number}\n", out var problems).Number("x", Percent));
        Assert.Equal(problem, Assert.Single(problems.InLineOrder()).Text);
    }

    private static void AssertUnknown(string line, string problem)
    {
        var reader = Reader(line + "\n", out var problems);
        reader.OptionalNumber("depth_mm", NumberRange.Any);
        reader.OptionalText("pigment");
        reader.OptionalNumber("temperature_c", NumberRange.Any);
        reader.OptionalNumber("minutes", NumberRange.Any);
        reader.OptionalNumber("illuminance_lx", NumberRange.Any);
        reader.OptionalNumber("resin_per_kg", NumberRange.Any);
        reader.Finish();
        AssertOnly(problems, new(1, 1), problem);
    }

    private static void AssertOnly(ProblemList problems, Place place, string text) =>
        Assert.Equal([new Problem("a.yaml", place, text)], problems.InLineOrder());

    private static MappingReader Reader(string text, out ProblemList problems)
    {
        problems = new("a.yaml");
        return new(Document.Read(text, "a.yaml").Root!, problems);
    }
}
