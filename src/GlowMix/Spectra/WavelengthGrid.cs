namespace GlowMix.Spectra;

/// <summary>The wavelengths the model computes at: 340 to 780 nm in steps of 5 nm, 89 samples.</summary>
public static class WavelengthGrid
{
    /// <summary>First wavelength, nm.</summary>
    public const int FirstNm = 340;

    /// <summary>Last wavelength, nm.</summary>
    public const int LastNm = 780;

    /// <summary>Distance of two neighbours, nm.</summary>
    public const int StepNm = 5;

    /// <summary>Number of samples.</summary>
    public const int Count = ((LastNm - FirstNm) / StepNm) + 1;

    /// <summary>Wavelength of a sample, nm.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    public static int NmAt(int index) => FirstNm + (index * StepNm);
}
