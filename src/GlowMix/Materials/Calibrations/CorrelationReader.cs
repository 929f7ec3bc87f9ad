using System.Collections.Immutable;
using GlowMix.Documents;
using static GlowMix.Materials.Calibrations.CalibrationShape;

namespace GlowMix.Materials.Calibrations;

/// <summary>Reads how the errors of a calibration's numbers go together.</summary>
internal static class CorrelationReader
{
    /// <param name="keys">The file's keys.</param>
    /// <param name="told">Keys of the numbers that have a standard error in it.</param>
    public static ImmutableArray<CalibratedCorrelation> Read(MappingReader keys, IReadOnlyList<string> told)
    {
        if (keys.OptionalList("correlations", 0, MostCorrelations) is not { } list)
        {
            return [];
        }
        var correlations = ImmutableArray.CreateBuilder<CalibratedCorrelation>();
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is not { } item)
            {
                continue;
            }
            string? of = item.Text("of");
            string? with = item.Text("with");
            double? value = item.Number("value", Correlation);
            item.Finish();
            foreach (var (key, name) in new[] { ("of", of), ("with", with) })
            {
                if (name is not null && !told.Contains(name))
                {
                    item.Error(key, CalibrationTexts.NotTold(key, name, told));
                }
            }
            if (of is null || with is null || value is not double v)
            {
                continue;
            }
            if (
                of == with
                || correlations.Any(c => (c.Of, c.With) == (of, with) || (c.With, c.Of) == (of, with))
            )
            {
                item.Error("with", CalibrationTexts.PairTwice(of, with));
            }
            correlations.Add(new(of, with, v));
        }
        var all = correlations.ToImmutable();
        if (!keys.Problems.HasErrors && !CorrelationMatrix.IsPossible(told, all))
        {
            keys.Error("correlations", CalibrationTexts.ImpossibleCorrelations);
        }
        return all;
    }
}
