namespace GlowMix.Recipes;

/// <summary>Where the viewer's side of a piece points while the resin gels; grains settle away from it or onto it.</summary>
public enum Face
{
    /// <summary>Upwards: grains settle on the board.</summary>
    Up,

    /// <summary>Downwards: grains settle at the viewing face.</summary>
    Down,
}
