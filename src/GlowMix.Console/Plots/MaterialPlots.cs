using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Console.Plots;

/// <summary>What a material does along the wavelengths.</summary>
internal static class MaterialPlots
{
    /// <summary>The plot of a material; null for one without a spectrum.</summary>
    public static Plot? Of(Material material) =>
        material switch
        {
            Led led => Relative("Spectrum in air", [("LED", led.BareShapePerNm, LineMark.Solid)]),
            Lamp lamp => Relative("Spectrum", [("lamp", lamp.RelativeSpectrum.Value, LineMark.Solid)]),
            Pigment pigment => Relative(
                "Absorption and emission",
                [
                    ("absorption of the solid grain", pigment.AbsorptionPerMm.Value, LineMark.Dotted),
                    ("emission", pigment.EmissionPerNm, LineMark.Solid),
                ]
            ),
            Board board => Absolute(
                "Reflectance",
                board.IsInAir ? "share, in air" : "share, under resin",
                board.Reflectance.Value,
                1
            ),
            Resin resin => Absolute(
                "Absorption of the cured resin",
                "per mm",
                resin.AbsorptionPerMm.Value,
                SpectrumCurves.Largest(resin.AbsorptionPerMm.Value)
            ),
            _ => null,
        };

    private static Plot? Relative(string title, (string Name, Spectrum Spectrum, LineMark Mark)[] spectra)
    {
        var curves = new List<Curve>();
        foreach (var (name, spectrum, mark) in spectra)
        {
            double peak = SpectrumCurves.Largest(spectrum);
            if (peak > 0)
            {
                curves.Add(SpectrumCurves.Of(name, spectrum, 100 / peak, mark));
            }
        }
        return new(title, SpectrumCurves.Wavelengths, Axis.Linear("peak = 100", 0, 100), curves);
    }

    private static Plot? Absolute(string title, string unit, Spectrum spectrum, double highest) =>
        highest > 0
            ? new(
                title,
                SpectrumCurves.Wavelengths,
                Axis.Linear(unit, 0, highest),
                [SpectrumCurves.Of("", spectrum, 1, LineMark.Solid)]
            )
            : null;
}
