namespace GlowMix.Materials;

/// <summary>The words of a kind of material.</summary>
public static class MaterialKindWords
{
    private static readonly MaterialKind[] kinds =
    [
        MaterialKind.Led,
        MaterialKind.Resin,
        MaterialKind.Pigment,
        MaterialKind.Board,
        MaterialKind.Lamp,
        MaterialKind.Criterion,
    ];

    /// <summary>All kinds in the order of the light.</summary>
    public static IReadOnlyList<MaterialKind> Kinds => kinds;

    /// <summary>The words of all of them.</summary>
    internal static string[] All { get; } = Array.ConvertAll(kinds, Word);

    /// <summary>As in the 'kind' key and in messages: 'led', 'resin' …</summary>
    public static string Word(this MaterialKind kind) =>
        kind switch
        {
            MaterialKind.Led => "led",
            MaterialKind.Resin => "resin",
            MaterialKind.Pigment => "pigment",
            MaterialKind.Board => "board",
            MaterialKind.Lamp => "lamp",
            MaterialKind.Criterion => "criterion",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    /// <summary>The folder, under data/ and under materials/ beside a recipe: 'leds', 'resins' …</summary>
    public static string Folder(this MaterialKind kind) =>
        kind == MaterialKind.Criterion ? "criteria" : kind.Word() + "s";
}
