namespace GlowMix.Documents.Shapes;

/// <summary>What may stand somewhere in a file: for the order of keys, and for the schema that editors read.</summary>
/// <remarks>A reader refuses more than a shape can say, and never what a shape refuses.</remarks>
public abstract record Shape;
