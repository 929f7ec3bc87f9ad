using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using GlowMix.Documents;

namespace GlowMix.Predictions.Kept;

/// <summary>Reads figures files, and tells those that this program made from what somebody wrote.</summary>
public static partial class KeptFiguresReader
{
    /// <summary>
    /// Whether a text may be replaced by figures: it is a figures file, perhaps with a conflict in it, and every line is of a
    /// kind that this program or a merge writes. A remark of somebody's own is not lost this way.
    /// </summary>
    public static bool IsOurs(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        bool hasFormat = false;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (!Ours().IsMatch(line))
            {
                return false;
            }
            hasFormat |= line.StartsWith(KeptFiguresText.FormatKey + ":", StringComparison.Ordinal);
        }
        return hasFormat;
    }

    /// <summary>Reads a text. Never throws for what the text holds.</summary>
    public static KeptFiguresReading Read(FileText file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (ConflictLine(file.Text) is int line)
        {
            return new(null, [new(file.Name, new Place(line, 1), KeptTexts.Conflict)]);
        }
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return new(null, document.Problems);
        }
        var problems = new ProblemList(file.Name);
        var keys = new MappingReader(root, problems);
        if (keys.WholeNumber(KeptFiguresText.FormatKey, KeptFigures.Format, KeptFigures.Format) is null)
        {
            return new(null, problems.InLineOrder());
        }
        string? recipe = keys.Text("recipe");
        int? version = keys.WholeNumber("model_version", 1, int.MaxValue);
        string? bandsOf = keys.Text("bands_of");
        int? draws = bandsOf is null ? null : KeptFiguresText.DrawCountOf(bandsOf);
        if (bandsOf is not null && draws is null)
        {
            keys.Error("bands_of", KeptTexts.BandsOf(bandsOf));
        }
        var inputs = Inputs(keys);
        var figures = Numbers(keys, "figures", isOptional: false);
        var bands = Numbers(keys, "bands", isOptional: true);
        var targets = Targets(keys);
        var warnings = keys.OptionalList("warnings") is { } list
            ? Enumerable.Range(0, list.Count).Select(list.Text).OfType<string>().ToImmutableArray()
            : [];
        string? checksum = keys.Text(KeptFiguresText.ChecksumKey);
        keys.Finish();
        if (checksum is not null && checksum != KeptFiguresText.ChecksumOf(file.Text))
        {
            keys.Error(KeptFiguresText.ChecksumKey, KeptTexts.ByHand);
        }
        return problems.HasErrors
            ? new(null, problems.InLineOrder())
            : new(
                new()
                {
                    Recipe = recipe!,
                    ModelVersion = version!.Value,
                    DrawCount = draws!.Value,
                    Inputs = inputs,
                    Figures = figures,
                    Bands = bands,
                    Targets = targets,
                    Warnings = warnings,
                },
                []
            );
    }

    private static ImmutableArray<PredictionInput> Inputs(MappingReader keys)
    {
        if (keys.Mapping("inputs") is not { } mapping)
        {
            return [];
        }
        var inputs = ImmutableArray.CreateBuilder<PredictionInput>();
        foreach (var (key, _) in mapping.Node.Entries)
        {
            if (mapping.Text(key.Value) is { } hash)
            {
                inputs.Add(new(key.Value, hash));
            }
        }
        return inputs.ToImmutable();
    }

    private static ImmutableArray<KeptFigure> Numbers(MappingReader keys, string section, bool isOptional)
    {
        if ((isOptional ? keys.OptionalMapping(section) : keys.Mapping(section)) is not { } mapping)
        {
            return [];
        }
        var figures = ImmutableArray.CreateBuilder<KeptFigure>();
        foreach (var (key, _) in mapping.Node.Entries)
        {
            if (
                mapping.Number(key.Value, NumberRange.Between(-1e26, 1e26)) is not null
                && decimal.TryParse(
                    ((ScalarNode)mapping.Node[key.Value]!).Value,
                    NumberStyles.Float,
                    CultureInfo.InvariantCulture,
                    out decimal value
                )
            )
            {
                figures.Add(new(key.Value, value));
            }
        }
        return figures.ToImmutable();
    }

    private static ImmutableArray<KeptTarget> Targets(MappingReader keys)
    {
        if (keys.OptionalList("targets") is not { } list)
        {
            return [];
        }
        var targets = ImmutableArray.CreateBuilder<KeptTarget>();
        for (int i = 0; i < list.Count; i++)
        {
            if (
                list.Mapping(i) is { } target
                && target.Node.Entries is [{ Key.Value: var figure }]
                && target.OneOf(figure, TargetStateWords.All) is { } word
            )
            {
                targets.Add(new(figure, (TargetState)TargetStateWords.All.ToList().IndexOf(word)));
            }
        }
        return targets.ToImmutable();
    }

    // Counted from 1; null without a conflict.
    private static int? ConflictLine(string text)
    {
        int number = 0;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            number++;
            if (Conflict().IsMatch(line))
            {
                return number;
            }
        }
        return null;
    }

    [GeneratedRegex(@"^(<{7}|>{7}|\|{7}|={7})( |$)")]
    private static partial Regex Conflict();

    [GeneratedRegex(
        @"^\s*$|^# Made by 'glowmix predict .* --write'|^(<{7}|>{7}|\|{7}|={7})( |$)|^ *(- )?(""[^""]*""|[^\s#:""'][^#:""']*):( [^#]*)?$|^ *- [\w-]+\s*$"
    )]
    private static partial Regex Ours();
}
