using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>The surface of an LED board between the packages, Lambertian.</summary>
public sealed record Board : Material
{
    /// <summary>As its file tells it: under resin, or in air if <see cref="IsInAir"/>; 0 to 1.</summary>
    public required Sourced<Spectrum> Reflectance { get; init; }

    /// <summary>The file's reflectance was measured in air.</summary>
    public bool IsInAir { get; init; }

    /// <summary>Reflectance as a resin sees it, 0 to 1.</summary>
    /// <param name="resinIndex">Refractive index of the resin.</param>
    /// <remarks>A value taken in air is converted as if the coat had the resin's index (<see cref="Saunderson"/>).</remarks>
    public Spectrum ReflectanceIn(Spectrum resinIndex) =>
        IsInAir
            ? Spectrum.FromIndex(i => Saunderson.UnderMedium(Reflectance.Value[i], resinIndex[i]))
            : Reflectance.Value;
}
