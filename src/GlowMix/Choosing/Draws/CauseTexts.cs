namespace GlowMix.Choosing.Draws;

/// <summary>The causes of doubt in words, and the reading that would settle each.</summary>
internal static class CauseTexts
{
    public static Cause Depths { get; } =
        new("depths", "depth of the layers", "the depth of each layer, with a calliper, at both ends");

    public static Cause Loadings { get; } =
        new("loadings", "loading of the layers", "the masses of pigment and resin, on a finer scale");

    public static Cause Grains { get; } =
        new("grains", "size of the grains", "the grain sizes, by sieve or under a microscope");

    public static Cause Pouring { get; } =
        new("pouring", "how far grains settle", "the clear resin left over the grains in a cured test tile");

    public static Cause Size { get; } = new("size", "length and width", "length and width of the channel");

    public static Cause Lamps { get; } =
        new("lamps", "strength of the charging light", "the light at the surface, with a light meter");

    public static Cause PigmentAbsorption(string pigment) =>
        new(
            $"pigment_absorption:{pigment}",
            $"grain absorption of {pigment}",
            "a potted piece's spectrum with and without pigment"
        );

    public static Cause PigmentIndex(string pigment) =>
        new(
            $"pigment_index:{pigment}",
            $"grain index of {pigment}",
            "a potted piece's spectrum with and without pigment"
        );

    public static Cause PigmentYield(string pigment) =>
        new(
            $"pigment_yield:{pigment}",
            $"yield of {pigment}",
            "a potted piece's spectrum with and without pigment"
        );

    public static Cause Traps(string pigment) =>
        new(
            $"traps:{pigment}",
            $"traps of {pigment}",
            "a decay reading of a known layer after a known charge"
        );

    public static Cause PackageReturn(string led) =>
        new($"package_return:{led}", $"package return of {led}", "a bare and a potted reading of the LED");

    public static Cause LedLight(string led) =>
        new($"led_light:{led}", $"light of {led}", "the bare board's lumens at the working current");

    public static Cause Board(string board) =>
        new($"board:{board}", $"reflectance of {board}", "a reading of the wetted board");

    public static Cause ResinAbsorption(string resin) =>
        new($"resin_absorption:{resin}", $"absorption of {resin}", "a reading through cured resin");

    public static Cause ResinIndex(string resin) =>
        new($"resin_index:{resin}", $"index of {resin}", "the cured resin's index, with a refractometer");

    public static Cause NearUltraviolet(string lamp) =>
        new($"near_ultraviolet:{lamp}", $"near ultraviolet of {lamp}", "the lamp's spectrum, from 340 nm on");
}
