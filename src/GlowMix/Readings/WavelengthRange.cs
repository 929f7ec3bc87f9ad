namespace GlowMix.Readings;

/// <summary>Wavelengths from one to another, nm, both included.</summary>
/// <param name="FromNm">The shorter.</param>
/// <param name="ToNm">The longer.</param>
public readonly record struct WavelengthRange(double FromNm, double ToNm)
{
    /// <summary>380 to 780 nm, over which the CIE sums and all figures of a reading are taken.</summary>
    // Made at each call: a loop that used a static field of this type read it before it was set (.NET 10.0 without quick
    // compilation of loops).
    public static WavelengthRange Visible => new(380, 780);

    /// <summary>The wavelength lies within.</summary>
    public bool Contains(double nm) => nm >= FromNm && nm <= ToNm;
}
