using System.Text.Json;
using System.Text.RegularExpressions;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Tests.Commands;

public sealed class MarkingsCommandTests : IDisposable
{
    private const string Own = """
        material_format: 1
        kind: criterion
        title: What this workshop wants
        document:
          value: Workshop rule 7
          source: own reading
        clause: unknown
        charge:
          lamp:
            value: fl11
            source: own reading
          illuminance_lx:
            value: 100
            source: own reading
          minutes:
            value: 30
            source: own reading
        limits:
          mcd_m2_at_minutes:
            10: 1
          source: own reading

        """;

    private readonly CommandLine line = new();

    public MarkingsCommandTests() =>
        line.Write("door.yaml", File.ReadAllText(Path.Combine(TopFolder.Path, "recipes/door-sign.yaml")));

    public void Dispose() => line.Dispose();

    [Theory]
    [InlineData("door.yaml")]
    [InlineData("door.yaml", "--all")]
    [InlineData("door.yaml", "--criterion", "ul-1994")]
    public void First_and_last_it_says_that_an_estimate_is_no_test(params string[] args)
    {
        Assert.Equal(ExitCode.Done, line.Run(["markings", "--quick", .. args]));
        string notice = string.Join('\n', line.OutLines.Take(4));
        Assert.Equal(notice, string.Join('\n', line.OutLines.TakeLast(4)));
        string words = notice.Replace('\n', ' ');
        Assert.StartsWith(
            "An estimate is no test, and a cast piece is no listed product",
            words,
            StringComparison.Ordinal
        );
        Assert.Contains("cured sample measured by an accredited laboratory", words, StringComparison.Ordinal);
        Assert.Contains("authority having jurisdiction, decide", words, StringComparison.Ordinal);
        Assert.Contains("Local codes and licensed practice come first", words, StringComparison.Ordinal);
        Assert.Contains(
            "Never let this piece be the only marking of an escape route.",
            words,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData]
    [InlineData("--all")]
    [InlineData("--all", "--json")]
    [InlineData("--criterion", "ibc-1025", "din67510-1", "ul-924", "nyc-rs6-1")]
    public void It_never_says_that_anything_has_been_granted(params string[] options)
    {
        line.Run(["markings", "--quick", "door.yaml", .. options]);
        Assert.DoesNotMatch(
            new Regex(
                @"\b(compl(y|ies|iant|iance)|pass(es|ed)?|certif\w*|approved)\b",
                RegexOptions.IgnoreCase
            ),
            line.Out
        );
        line.Run("markings", "--help");
        Assert.DoesNotMatch(
            new Regex(
                @"\b(compl(y|ies|iant|iance)|pass(es|ed)?|certif\w*|approved)\b",
                RegexOptions.IgnoreCase
            ),
            line.Out
        );
    }

    [Fact]
    public void The_band_is_told_as_what_it_is()
    {
        line.Run("markings", "door.yaml");
        Assert.Contains("low to high: 10 to 90 % of ", Joined(), StringComparison.Ordinal);
        Assert.DoesNotContain("half to twice", Joined(), StringComparison.Ordinal);

        line.Run("markings", "--quick", "door.yaml");
        Assert.Contains("low to high: pigment half to twice as strong", Joined(), StringComparison.Ordinal);

        string Joined() => string.Join(' ', line.OutLines.Select(l => l.Trim()));
    }

    [Fact]
    public void The_criteria_of_the_recipe_come_with_document_clause_charge_and_times()
    {
        line.Run("markings", "--quick", "door.yaml");
        foreach (
            string needed in (string[])
                [
                    "ibc-1025, Luminous egress path markings: ",
                    "IBC 2021 and IFC",
                    "IBC 2021 section 1025",
                    "60 min by 10.8 lx of fl11",
                    "10 min",
                    "90 min",
                    "limits from memory: read the code text first",
                    "size, place and layout of the markings",
                    "(not judged)",
                    "The recipe's own room",
                    "above 0.3 mcd/m²",
                    "lux-hours do not",
                    "Cautions",
                ]
        )
        {
            Assert.Contains(needed, line.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_table_has_every_criterion_of_the_shelf_and_the_users_own()
    {
        line.Write("materials/criteria/mine.yaml", Own);
        Assert.Equal(ExitCode.Done, line.Run("markings", "--quick", "door.yaml", "--all"));
        foreach (
            string name in GlowMix.Materials.Shelf.ShippedNames(GlowMix.Materials.MaterialKind.Criterion)
        )
        {
            Assert.Contains(line.OutLines, l => l.StartsWith($"  {name} ", StringComparison.Ordinal));
        }
        Assert.Contains(line.OutLines, l => Regex.IsMatch(l, @"^  mine +above +10 min +1 "));
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void A_criterion_is_found_by_its_path_from_the_current_folder()
    {
        line.Write("sub/door.yaml", line.Read("door.yaml"));
        line.Write("rules/mine.yaml", Own);
        Assert.Equal(
            ExitCode.Done,
            line.Run("markings", "--quick", "sub/door.yaml", "--criterion", "rules/mine.yaml")
        );
        Assert.Contains("What this workshop wants: above", line.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("ibc-1025", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void For_programs_what_is_not_known_is_null()
    {
        Assert.Equal(
            ExitCode.Done,
            line.Run("markings", "--quick", "door.yaml", "--json", "--criterion", "jis9097-i", "ibc-1025")
        );
        using var json = JsonDocument.Parse(line.Out);
        Assert.Equal(MarkingWords.Notice, json.RootElement.GetProperty("notice").GetString());
        var unknown = json.RootElement.GetProperty("criteria")[0];
        Assert.Equal(JsonValueKind.Null, unknown.GetProperty("charge").GetProperty("lamp").ValueKind);
        Assert.Equal("not_judged", unknown.GetProperty("state").GetString());
        Assert.Equal("its test charge is not known", unknown.GetProperty("not_judged_because").GetString());
        Assert.Equal(
            JsonValueKind.Null,
            unknown.GetProperty("limits")[0].GetProperty("luminance_mcd_m2").ValueKind
        );
        var known = json.RootElement.GetProperty("criteria")[1];
        Assert.Equal(10.8, known.GetProperty("charge").GetProperty("illuminance_lx").GetDouble());
        Assert.Equal(2, known.GetProperty("limits").GetArrayLength());
        Assert.True(
            json.RootElement.GetProperty("own_room").GetProperty("daylight_1000_lx_minutes").GetDouble() > 0
        );
    }

    [Fact]
    public void A_recipe_without_criteria_gets_the_room_and_the_names()
    {
        string door = line.Read("door.yaml");
        int start = door.IndexOf("criteria:", StringComparison.Ordinal);
        int end = door.IndexOf("prices:", StringComparison.Ordinal);
        line.Write("bare.yaml", door.Remove(start, end - start));
        Assert.Equal(ExitCode.Done, line.Run("markings", "--quick", "bare.yaml"));
        Assert.Contains("The recipe names no criteria", line.Out, StringComparison.Ordinal);
        Assert.Contains("iso17398-a", line.Out, StringComparison.Ordinal);
        Assert.Contains("The recipe's own room", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clear_piece_does_not_glow()
    {
        line.Write("clear.yaml", File.ReadAllText(Path.Combine(TopFolder.Path, "recipes/clear-tread.yaml")));
        Assert.Equal(ExitCode.Done, line.Run("markings", "--quick", "clear.yaml", "--criterion", "imo-lll"));
        Assert.Contains("imo-lll, Low-location lighting on ships: below", line.Out, StringComparison.Ordinal);
        Assert.Contains("no pigment: it does not glow", line.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ExitCode.Content, "no criterion 'iso17398-z'", "door.yaml", "--criterion", "iso17398-z")]
    [InlineData(ExitCode.FileAccess, "none.yaml", "door.yaml", "--criterion", "none.yaml")]
    [InlineData(ExitCode.FileAccess, "nowhere.yaml", "nowhere.yaml")]
    [InlineData(ExitCode.Usage, "needs a recipe file")]
    [InlineData(ExitCode.Usage, "takes one recipe", "door.yaml", "door.yaml")]
    [InlineData(ExitCode.Usage, "leave out --criterion", "door.yaml", "--all", "--criterion", "imo-lll")]
    [InlineData(ExitCode.Usage, "unknown option '--al'", "door.yaml", "--al")]
    public void What_cannot_be_is_told(int code, string text, params string[] args)
    {
        Assert.Equal(code, line.Run(["markings", "--quick", .. args]));
        Assert.Contains(text, line.Error, StringComparison.Ordinal);
        Assert.Equal("", line.Out);
    }

    [Theory]
    [InlineData(
        "limits:\n  mcd_m2_at_minutes:\n    10: 1\n  source: own reading\n",
        "",
        "limits are not told; write"
    )]
    [InlineData("  mcd_m2_at_minutes:\n    10: 1\n", "", "or 'value: unknown'")]
    [InlineData("  mcd_m2_at_minutes:\n    10: 1\n", "  value: null\n", "allowed: unknown, none")]
    [InlineData("    10: 1\n", "", "mcd_m2_at_minutes")]
    [InlineData("    10: 1\n", "    10: 0\n", "allowed: above 0")]
    [InlineData("value: fl11", "value: no-lamp", "no lamp 'no-lamp'")]
    [InlineData("value: fl11", "value: uv-365", "hardly any visible light")]
    public void A_criterion_file_that_says_too_little_is_an_error_with_its_place(
        string old,
        string changed,
        string text
    )
    {
        Assert.Contains(old, Own, StringComparison.Ordinal);
        line.Write("mine.yaml", Own.Replace(old, changed, StringComparison.Ordinal));
        Assert.Equal(
            ExitCode.Content,
            line.Run("markings", "--quick", "door.yaml", "--criterion", "mine.yaml")
        );
        Assert.StartsWith("mine.yaml:", line.Error, StringComparison.Ordinal);
        Assert.Contains(text, line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void One_bad_file_among_all_is_told_and_the_others_are_shown()
    {
        line.Write("materials/criteria/mine.yaml", "material_format: 1\nkind: criterion\n");
        Assert.Equal(ExitCode.Content, line.Run("markings", "--quick", "door.yaml", "--all"));
        Assert.Contains("materials/criteria/mine.yaml", line.Error, StringComparison.Ordinal);
        Assert.Contains("iso17398-a", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_letters_and_narrow_lines_where_asked_for()
    {
        line.TerminalColumns = 50;
        line.Set("NO_COLOR", "1");
        line.Run("markings", "--quick", "door.yaml", "--ascii");
        Assert.All(line.Out, c => Assert.True(char.IsAscii(c)));
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 50, l));
    }
}
