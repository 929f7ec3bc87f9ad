namespace GlowMix.LitState;

/// <summary>Where the light of the die goes, in shares of its first pass; they add up to 1.</summary>
/// <param name="Escaped">Out of the piece as it is.</param>
/// <param name="Pigment">Absorbed by pigment.</param>
/// <param name="Resin">Absorbed by resin.</param>
/// <param name="Board">Absorbed by the board.</param>
/// <param name="Package">Taken back by the packages: converted to longer bands or lost.</param>
public readonly record struct BlueBudget(
    double Escaped,
    double Pigment,
    double Resin,
    double Board,
    double Package
)
{
    /// <summary>The bare board's: all of it escapes.</summary>
    public static BlueBudget InAir { get; } = new(1, 0, 0, 0, 0);
}
