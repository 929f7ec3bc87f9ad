namespace GlowMix.Materials;

/// <summary>The charge a criterion tests with. A value of null is not known.</summary>
public sealed record CriterionCharge
{
    /// <summary>A lamp of the shelf, perhaps a stand-in.</summary>
    public required Sourced<string?> Lamp { get; init; }

    /// <summary>Illuminance, lx.</summary>
    public required Sourced<double?> IlluminanceLx { get; init; }

    /// <summary>Time of charge, min.</summary>
    public required Sourced<double?> Minutes { get; init; }

    /// <summary>All of it is known, so that the test can be computed.</summary>
    public bool IsKnown =>
        Lamp.Value is not null && IlluminanceLx.Value is not null && Minutes.Value is not null;
}
