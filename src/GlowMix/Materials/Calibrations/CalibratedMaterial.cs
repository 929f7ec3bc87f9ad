namespace GlowMix.Materials.Calibrations;

/// <summary>What readings told of one material.</summary>
public abstract record CalibratedMaterial
{
    /// <summary>The material's name, as the recipe has it.</summary>
    public required string Material { get; init; }

    /// <summary>SHA-256 of the text of the material's file at the time; null for one without a file.</summary>
    public string? MaterialSha256 { get; init; }
}
