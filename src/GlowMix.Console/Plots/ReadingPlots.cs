using GlowMix.Console.Commands;
using GlowMix.Readings;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;
using GlowMix.Spectra;

namespace GlowMix.Console.Plots;

/// <summary>What a reading looks like.</summary>
internal static class ReadingPlots
{
    /// <summary>A spectrum, its ratio to another, or a decay.</summary>
    public static IEnumerable<Plot> Of(ReadingAnswer answer)
    {
        if (answer.Spectrum is { } figures)
        {
            yield return Spectrum(figures, answer.Comparison?.Against);
        }
        if (answer.Comparison is { } compared)
        {
            yield return Ratio(compared);
        }
        if (answer.Decay is { } decay && Decay(decay) is { } plot)
        {
            yield return plot;
        }
    }

    private static Axis Wavelengths { get; } =
        Axis.Linear("nm", WavelengthRange.Visible.FromNm, WavelengthRange.Visible.ToNm);

    private static Plot Spectrum(ReadingFigures figures, ReadingFigures? against)
    {
        var curves = new List<Curve>();
        if (against is not null)
        {
            curves.Add(Relative(against.Reading.File, against.Visible, LineMark.Dotted));
        }
        curves.Add(Relative(figures.Reading.File, figures.Visible, LineMark.Solid));
        double least = Math.Min(0, curves.Min(c => c.Ys.Min()));
        return new("Spectrum", Wavelengths, Axis.Linear("per nm, peak = 100", least, 100), curves);
    }

    private static Curve Relative(string name, TabulatedSpectrum table, LineMark mark)
    {
        double[] values = table.Values.ToArray();
        double peak = values.Max();
        return new(
            name,
            table.WavelengthsNm.ToArray(),
            [.. values.Select(v => peak > 0 ? 100 * v / peak : 0)],
            mark
        );
    }

    private static Plot Ratio(SpectrumComparison compared)
    {
        double[] ratio = compared.Ratio.Values.ToArray();
        double most = Math.Max(1.05, ratio.Max());
        return new(
            $"Ratio to {compared.Against.Reading.File}",
            Wavelengths,
            Axis.Linear("× per nm", Math.Min(0, ratio.Min()), most),
            [new("", compared.Ratio.WavelengthsNm.ToArray(), ratio, LineMark.Solid)]
        );
    }

    private static Plot? Decay(DecayFigures figures)
    {
        var reading = figures.Reading;
        double[] minutes = [.. figures.Usable.Select(i => reading.Minutes[i])];
        double[] values = [.. figures.Usable.Select(i => reading.Values[i])];
        if (minutes.Length < 2 || minutes[0] == minutes[^1])
        {
            return null;
        }
        double least = values.Min();
        double most = values.Max();
        string unit = reading.Unit switch
        {
            DecayUnit.McdPerM2 => "mcd/m²",
            DecayUnit.Lux => "lx",
            _ => "relative",
        };
        return new(
            "Decay",
            Axis.Logarithmic("min in the dark", minutes[0], minutes[^1]),
            Axis.Logarithmic(unit, least < most ? least : least / 2, most),
            [new("", minutes, values, LineMark.Solid)]
        );
    }
}
