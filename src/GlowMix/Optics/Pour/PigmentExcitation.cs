using GlowMix.Spectra;

namespace GlowMix.Optics.Pour;

/// <summary>How fast pigment takes photons in, per cell of a pour.</summary>
public static class PigmentExcitation
{
    /// <summary>Photons absorbed per second and mm³ of pigment from LEDs in the pour.</summary>
    /// <param name="pour">The pour.</param>
    /// <param name="upwardWPerMm2Nm">Light up at the packages' tops, W per mm² and nm, evenly spread.</param>
    /// <returns>One rate a cell; 0 below the packages' tops, and everywhere if they stay in air.</returns>
    public static double[] FromLeds(PourOptics pour, Spectrum upwardWPerMm2Nm)
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(upwardWPerMm2Nm);
        var rates = new double[pour.Cells.Count];
        if (pour.OverPackages is { } response)
        {
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                Add(rates, pour, i, upwardWPerMm2Nm[i], response.FluenceAt(i));
            }
        }
        return rates;
    }

    /// <summary>Photons absorbed per second and mm³ of pigment from light that comes down between the packages.</summary>
    /// <param name="pour">The pour.</param>
    /// <param name="downwardWPerMm2Nm">Light down at the packages' tops and beside them, W per mm² and nm, evenly spread.</param>
    /// <param name="boardReflectance">As the resin sees it.</param>
    /// <returns>One rate a cell; 0 above the packages' tops.</returns>
    public static double[] BetweenPackages(
        PourOptics pour,
        Spectrum downwardWPerMm2Nm,
        Spectrum boardReflectance
    )
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(downwardWPerMm2Nm);
        ArgumentNullException.ThrowIfNull(boardReflectance);
        var rates = new double[pour.Cells.Count];
        if (pour.DownBetween is { } down && pour.UpBetween is { } up)
        {
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                double again =
                    down.Floor[i] * boardReflectance[i] / (1 - (boardReflectance[i] * up.Floor[i]));
                Add(rates, pour, i, downwardWPerMm2Nm[i], down.FluenceAt(i));
                Add(rates, pour, i, downwardWPerMm2Nm[i] * again, up.FluenceAt(i));
            }
        }
        return rates;
    }

    /// <summary>Photons absorbed per second and mm³ of pigment from Lambertian light on the face.</summary>
    /// <param name="pour">The pour.</param>
    /// <param name="irradianceWPerMm2Nm">On the face, W per mm² and nm.</param>
    /// <param name="floorReflectance">Of board and packages together, as the resin sees them.</param>
    public static double[] FromSky(PourOptics pour, Spectrum irradianceWPerMm2Nm, Spectrum floorReflectance)
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(irradianceWPerMm2Nm);
        ArgumentNullException.ThrowIfNull(floorReflectance);
        var rates = new double[pour.Cells.Count];
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            double up =
                pour.Sky.Floor[i]
                * floorReflectance[i]
                / (1 - (floorReflectance[i] * pour.WholeFloor.Floor[i]));
            Add(rates, pour, i, irradianceWPerMm2Nm[i], pour.Sky.FluenceAt(i));
            Add(rates, pour, i, irradianceWPerMm2Nm[i] * up, pour.WholeFloor.FluenceAt(i));
        }
        return rates;
    }

    private static void Add(
        double[] rates,
        PourOptics pour,
        int wavelength,
        double wPerMm2Nm,
        ReadOnlySpan<double> fluence
    )
    {
        if (wPerMm2Nm == 0)
        {
            return;
        }
        double photons = wPerMm2Nm * WavelengthGrid.StepNm * Photon.PerJoule(WavelengthGrid.NmAt(wavelength));
        for (int c = 0; c < rates.Length; c++)
        {
            var grains = pour.Stack.Layers[pour.Cells[c].Layer].Grains!;
            rates[c] += photons * fluence[c] * grains.AbsorptionPerMm[wavelength];
        }
    }
}
