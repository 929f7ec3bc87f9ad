namespace GlowMix.Console.Texts;

/// <summary>What every output reminds of.</summary>
internal static class Cautions
{
    /// <summary>On one line.</summary>
    public const string OneLine = "Gloves, mask, fresh air; local codes, licensed practice come first.";

    /// <summary>In one paragraph.</summary>
    public const string InFull =
        "Gloves and fresh air for resin, a dust mask for powder; thick pours heat up. An estimate is no test: where "
        + "escape routes are marked, local codes and licensed practice come first.";
}
