using GlowMix.Documents.Shapes;

namespace GlowMix.Documents.Tidying;

/// <summary>What a shape says of the keys of a mapping: which they are, and in which order they stand.</summary>
internal static class TidyShapes
{
    public static MappingShape? KeysOf(Shape? shape, MappingNode mapping) =>
        shape switch
        {
            MappingShape keys => keys,
            EitherShape either => either
                .Shapes.OfType<MappingShape>()
                .FirstOrDefault(s => mapping.Entries.All(e => s.Find(e.Key.Value) is not null)),
            _ => null,
        };

    public static Shape? ShapeOf(MappingShape? keys, Shape? shape, string key) =>
        keys?.Find(key)?.Shape ?? keys?.OtherKeys ?? (shape as TableShape)?.Value;

    // Rows of a table stand by their numbers, keys as the shape has them, unknown ones last.
    public static double OrderOf(MappingShape? keys, Shape? shape, string key)
    {
        if (keys is null)
        {
            return shape is TableShape && NumberText.TryRead(key, out double at) ? at : 0;
        }
        int known = 0;
        while (known < keys.Keys.Length && keys.Keys[known].Name != key)
        {
            known++;
        }
        return known;
    }
}
