using GlowMix.Spectra;

namespace GlowMix.Console.Plots;

/// <summary>Spectra as curves.</summary>
internal static class SpectrumCurves
{
    /// <summary>The model's wavelengths.</summary>
    public static Axis Wavelengths { get; } =
        Axis.Linear("nm", WavelengthGrid.FirstNm, WavelengthGrid.LastNm);

    /// <summary>A spectrum times a factor.</summary>
    public static Curve Of(string name, Spectrum spectrum, double factor, LineMark mark)
    {
        var nm = new double[WavelengthGrid.Count];
        var values = new double[WavelengthGrid.Count];
        for (int i = 0; i < nm.Length; i++)
        {
            nm[i] = WavelengthGrid.NmAt(i);
            values[i] = factor * spectrum[i];
        }
        return new(name, nm, values, mark);
    }

    /// <summary>The largest sample, 0 at least.</summary>
    public static double Largest(Spectrum spectrum)
    {
        double largest = 0;
        foreach (double sample in spectrum.Samples)
        {
            largest = Math.Max(largest, sample);
        }
        return largest;
    }
}
