using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads the list 'targets'.</summary>
internal static class TargetsReader
{
    private const int MostTargets = 50;

    public static ImmutableArray<RecipeTarget> Read(MappingReader parent)
    {
        if (parent.OptionalList("targets", 0, MostTargets) is not { } list)
        {
            return [];
        }
        var targets = ImmutableArray.CreateBuilder<RecipeTarget>(list.Count);
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is { } reader)
            {
                targets.Add(Target(new RecipeSection(reader, "targets.*")));
            }
        }
        return targets.ToImmutable();
    }

    private static RecipeTarget Target(RecipeSection section)
    {
        var reader = section.Reader;
        var target = new RecipeTarget
        {
            Figure = section.NeededText("figure"),
            AtMinutes = section.Minutes("at_minutes"),
            AtLeast = section.Number("at_least"),
            AtMost = section.Number("at_most"),
        };
        if (target.Figure.Length > 0)
        {
            bool hasMinutes = RecipeTarget.HasMinutes(target.Figure);
            if (hasMinutes && !reader.Has("at_minutes"))
            {
                reader.Error("figure", RecipeTexts.FigureNeedsMinutes(target.Figure));
            }
            if (!hasMinutes && reader.Has("at_minutes"))
            {
                reader.Error("at_minutes", RecipeTexts.FigureHasNoMinutes(target.Figure));
            }
            if (!reader.Has("at_least") && !reader.Has("at_most"))
            {
                reader.Error("figure", RecipeTexts.TargetNeedsABound(target.Figure));
            }
        }
        if (target.AtLeast > target.AtMost)
        {
            reader.Error("at_most", RecipeTexts.BoundsCross(target.AtLeast.Value, target.AtMost.Value));
        }
        section.Finish();
        return target;
    }
}
