namespace GlowMix.Materials;

/// <summary>What the shelf holds.</summary>
public enum MaterialKind
{
    /// <summary>White LED packages.</summary>
    Led,

    /// <summary>Clear casting resins.</summary>
    Resin,

    /// <summary>Afterglow pigments.</summary>
    Pigment,

    /// <summary>Surfaces of LED boards.</summary>
    Board,

    /// <summary>Lights that charge from above.</summary>
    Lamp,

    /// <summary>Published marking criteria.</summary>
    Criterion,
}
