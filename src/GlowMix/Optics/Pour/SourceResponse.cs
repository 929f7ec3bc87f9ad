namespace GlowMix.Optics.Pour;

/// <summary>
/// What a unit Lambertian source does at each of the model's 89 wavelengths, over a black floor. Shares are of the source's
/// flux; fluence is per unit flux on unit area.
/// </summary>
internal sealed class SourceResponse(int wavelengths, int cells)
{
    /// <summary>Out into the air; from the sky: back into it.</summary>
    public double[] Escaped { get; } = new double[wavelengths];

    /// <summary>Onto the floor.</summary>
    public double[] Floor { get; } = new double[wavelengths];

    /// <summary>Absorbed by resin.</summary>
    public double[] Resin { get; } = new double[wavelengths];

    /// <summary>Absorbed by pigment.</summary>
    public double[] Pigment { get; } = new double[wavelengths];

    /// <summary>Mean fluence: row = wavelength, column = cell.</summary>
    public double[] CellFluence { get; } = new double[wavelengths * cells];

    /// <summary>Fluence in all cells at one wavelength.</summary>
    public ReadOnlySpan<double> FluenceAt(int wavelength) => CellFluence.AsSpan(wavelength * cells, cells);

    /// <summary>Takes over one wavelength of another pour's response, in the lowest cells as far as either has any.</summary>
    public void CopyFrom(SourceResponse other, int wavelength)
    {
        Escaped[wavelength] = other.Escaped[wavelength];
        Floor[wavelength] = other.Floor[wavelength];
        Resin[wavelength] = other.Resin[wavelength];
        Pigment[wavelength] = other.Pigment[wavelength];
        var from = other.FluenceAt(wavelength);
        var to = CellFluence.AsSpan(wavelength * cells, cells);
        from[..Math.Min(from.Length, to.Length)].CopyTo(to);
    }
}
