using GlowMix.Materials;
using GlowMix.Pieces;

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

    /// <summary>Where escape routes are marked.</summary>
    public const string EscapeRoutes =
        "An estimate is no test: where escape routes are marked, local codes and licensed practice come first.";

    private const string Heat =
        "LEDs run warmer under resin than in air, which is not computed here: drive them low and measure. "
        + "Work on mains is for an electrician.";

    private const string Ultraviolet =
        "Ultraviolet torches harm the eyes unseen: glasses that stop it, never look in.";

    private const string Slip =
        "A cured tread is slippery, wet most of all, and a raised edge trips: slip resistance and nosing "
        + "rules are not judged here.";

    private const string Fire = "Cured resin burns: reaction-to-fire rules of escape routes are not judged.";

    /// <summary>All that a piece calls for: the general ones, then what its materials' own files say.</summary>
    public static IEnumerable<string> Of(Piece piece)
    {
        yield return "The makers' safety sheets come first; this list leaves out much.";
        yield return "Uncured resin and hardener can sensitise skin and lungs for life: nitrile gloves, eye protection, "
            + "fresh air. Never sand, heat or spray them uncured, least of all where isocyanate is in them.";
        yield return piece.HasPigment
            ? "Pigment dust, and the dust of sanding or drilling the cured piece, harm the lungs: dust mask (FFP2 or "
                + "better), wipe up damp."
            : "The dust of sanding or drilling the cured piece harms the lungs: dust mask (FFP2 or better), wipe up damp.";
        yield return "A large or deep mix heats itself until it smokes, cracks or burns: keep to the sheet's mass and "
            + "depth, and stay with it.";
        if (piece.VacuumMin > 0)
        {
            yield return "Only a vessel made for vacuum: others burst inwards. Wear eye protection.";
        }
        yield return Heat;
        if (HasBareUltraviolet(piece))
        {
            yield return Ultraviolet;
        }
        yield return Slip;
        yield return Fire;
        foreach (var material in MaterialsOf(piece).Where(m => !m.Cautions.IsEmpty))
        {
            yield return OfMaterial(material);
        }
    }

    /// <summary>What holds for whoever fixes the cured piece, lives with it and charges it: nothing of resin that is still to be poured.</summary>
    public static IEnumerable<string> OfUse(Piece piece)
    {
        yield return Heat;
        yield return Slip;
        yield return Fire;
        yield return "Drilling or sanding the piece makes dust that harms the lungs: dust mask (FFP2 or better), wipe up damp.";
        if (HasBareUltraviolet(piece))
        {
            yield return Ultraviolet;
        }
        foreach (
            var lamp in piece
                .Steps.Select(s => s.Lamp)
                .OfType<Lamp>()
                .Distinct()
                .Where(l => !l.Cautions.IsEmpty)
        )
        {
            yield return OfMaterial(lamp);
        }
    }

    private static bool HasBareUltraviolet(Piece piece) =>
        piece.Steps.Any(s => s.Lamp is { TakesIlluminance: false, Cautions.IsEmpty: true });

    private static string OfMaterial(Material material) =>
        $"{material.Name}: {string.Join(" ", material.Cautions)}";

    private static IEnumerable<Material> MaterialsOf(Piece piece) =>
        new Material?[] { piece.Resin }
            .Concat(piece.Layers.Where(l => l.HasPigment).Select(l => l.Pigment))
            .Append(piece.Led)
            .Append(piece.Board)
            .Concat(piece.Steps.Select(s => s.Lamp))
            .OfType<Material>()
            .Distinct();
}
