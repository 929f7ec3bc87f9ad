namespace GlowMix.Materials;

/// <summary>The words of a kind of material.</summary>
public static class MaterialKindWords
{
    /// <summary>Those of all kinds.</summary>
    internal static string[] All { get; } =
    [
        MaterialKind.Led.Word(),
        MaterialKind.Resin.Word(),
        MaterialKind.Pigment.Word(),
        MaterialKind.Board.Word(),
        MaterialKind.Lamp.Word(),
        MaterialKind.Criterion.Word(),
    ];

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
