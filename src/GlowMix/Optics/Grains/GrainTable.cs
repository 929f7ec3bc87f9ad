using System.Globalization;
using GlowMix.Spectra;

namespace GlowMix.Optics.Grains;

/// <summary>
/// What one pigment in one resin does to light, per volume of pigment and averaged over its grain sizes, on the model's 89
/// wavelengths. Depends on neither loading nor depth. Immutable.
/// </summary>
/// <remarks>
/// Cross-section per volume of grain, mm²/mm³ = 1/mm. A layer with the volume fraction φ of pigment has the coefficients φ times
/// the values here; the same as φ ρ times a cross-section per mass.
/// </remarks>
public sealed class GrainTable
{
    /// <summary>Sizes that a distribution is averaged over unless told otherwise.</summary>
    /// <remarks>
    /// Weakly absorbing grains have narrow resonances: single sizes scatter by percent, the average over 40 sizes still by some
    /// 0.1 % from that over 160.
    /// </remarks>
    public const int DefaultSizeCount = 40;

    /// <summary>Highest Legendre moment kept unless told otherwise: enough for 16 + 16 streams with delta-M.</summary>
    public const int DefaultHighestMoment = 32;

    private readonly double[][] moments;

    private GrainTable(
        Spectrum absorptionPerMm,
        Spectrum scatteringPerMm,
        Spectrum asymmetry,
        double[][] moments
    )
    {
        AbsorptionPerMm = absorptionPerMm;
        ScatteringPerMm = scatteringPerMm;
        Asymmetry = asymmetry;
        this.moments = moments;
    }

    /// <summary>Absorption cross-section over grain volume, ⟨C_abs⟩/⟨V⟩, 1/mm.</summary>
    public Spectrum AbsorptionPerMm { get; }

    /// <summary>Scattering cross-section over grain volume, ⟨C_sca⟩/⟨V⟩, 1/mm, the diffraction peak included.</summary>
    public Spectrum ScatteringPerMm { get; }

    /// <summary>Mean cosine of the scattering angle, the moment of order 1.</summary>
    public Spectrum Asymmetry { get; }

    /// <summary>Highest order that <see cref="Moments"/> holds.</summary>
    public int HighestMoment => moments[0].Length - 1;

    /// <summary>Legendre moments χ_0 = 1, χ_1 = g, … of the phase function: χ_l = ½∫ p(μ) P_l(μ) dμ with ½∫ p dμ = 1.</summary>
    /// <param name="wavelengthIndex">0 to 88.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public ReadOnlyMemory<double> Moments(int wavelengthIndex)
    {
        RequireBetween(wavelengthIndex, 0, moments.Length - 1, nameof(wavelengthIndex));
        return moments[wavelengthIndex];
    }

    /// <summary>Averages the Lorenz–Mie series over the grains' sizes.</summary>
    /// <param name="pigmentIndex">Real refractive index of the pigment, 1 to 4.</param>
    /// <param name="pigmentAbsorptionPerMm">
    /// Absorption coefficient α of the pigment's bulk, 1/mm, 0 to 10⁶; the imaginary index is αλ/4π with the wavelength in vacuum.
    /// </param>
    /// <param name="resinIndex">Refractive index of the resin, 1 to 2.</param>
    /// <param name="sizes">Grain diameters.</param>
    /// <param name="sizeCount">Number of sizes that the whole distribution is averaged over, 1 to 400; a class takes those within it.</param>
    /// <param name="highestMoment">Highest Legendre moment kept, 1 to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value outside those ranges, or grains so large that the largest passes a size parameter of 20000.
    /// </exception>
    public static GrainTable Of(
        Spectrum pigmentIndex,
        Spectrum pigmentAbsorptionPerMm,
        Spectrum resinIndex,
        GrainSizes sizes,
        int sizeCount = DefaultSizeCount,
        int highestMoment = DefaultHighestMoment
    ) =>
        Of(
            AveragesOf(
                pigmentIndex,
                pigmentAbsorptionPerMm,
                resinIndex,
                sizes,
                sizeCount,
                highestMoment,
                every: 1
            )
        );

    /// <summary>
    /// The same at half the cost: averages at every second wavelength from the first on, and each of these again at the next one.
    /// For those who take ratios where there is one, and know that they are smooth.
    /// </summary>
    internal static GrainTable OfEverySecond(
        Spectrum pigmentIndex,
        Spectrum pigmentAbsorptionPerMm,
        Spectrum resinIndex,
        GrainSizes sizes,
        int sizeCount,
        int highestMoment
    )
    {
        GrainAverage[] averages = AveragesOf(
            pigmentIndex,
            pigmentAbsorptionPerMm,
            resinIndex,
            sizes,
            sizeCount,
            highestMoment,
            every: 2
        );
        return Of([.. Enumerable.Range(0, WavelengthGrid.Count).Select(i => averages[i / 2])]);
    }

    private static GrainAverage[] AveragesOf(
        Spectrum pigmentIndex,
        Spectrum pigmentAbsorptionPerMm,
        Spectrum resinIndex,
        GrainSizes sizes,
        int sizeCount,
        int highestMoment,
        int every
    )
    {
        RequireBetween(pigmentIndex, 1, 4, "refractive index of the pigment", nameof(pigmentIndex));
        RequireBetween(
            pigmentAbsorptionPerMm,
            0,
            1e6,
            "absorption of the pigment per mm",
            nameof(pigmentAbsorptionPerMm)
        );
        RequireBetween(resinIndex, 1, 2, "refractive index of the resin", nameof(resinIndex));
        RequireBetween(sizeCount, 1, 400, nameof(sizeCount));
        RequireBetween(highestMoment, 1, 64, nameof(highestMoment));
        if (sizes == default)
        {
            throw new ArgumentOutOfRangeException(nameof(sizes), "The grain sizes are not set.");
        }
        SizeNodes nodes = sizes.Nodes(sizeCount);
        double largest = GrainAverage.LargestSizeParameter(nodes, resinIndex);
        if (largest > LorenzMie.LargestSizeParameter)
        {
            throw new ArgumentOutOfRangeException(
                nameof(sizes),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The largest grains, {nodes.DiametersUm[^1]:0} µm, have a size parameter of {largest:0}; at most {LorenzMie.LargestSizeParameter} is computed. Take a smaller median or a narrower distribution."
                )
            );
        }
        return GrainAverage.OverWavelengths(
            pigmentIndex,
            pigmentAbsorptionPerMm,
            resinIndex,
            nodes,
            highestMoment,
            every
        );
    }

    /// <summary>Grains with the phase function of Henyey &amp; Greenstein (1941), moments g^l: for tests and comparisons.</summary>
    /// <param name="absorptionPerMm">Absorption per volume of grain, 1/mm, not negative.</param>
    /// <param name="scatteringPerMm">Scattering per volume of grain, 1/mm, not negative.</param>
    /// <param name="asymmetry">g, −1 to 1.</param>
    /// <param name="highestMoment">Highest Legendre moment kept, 1 to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static GrainTable HenyeyGreenstein(
        Spectrum absorptionPerMm,
        Spectrum scatteringPerMm,
        Spectrum asymmetry,
        int highestMoment = DefaultHighestMoment
    )
    {
        const double Any = double.MaxValue;
        RequireBetween(absorptionPerMm, 0, Any, "absorption per mm", nameof(absorptionPerMm));
        RequireBetween(scatteringPerMm, 0, Any, "scattering per mm", nameof(scatteringPerMm));
        RequireBetween(asymmetry, -1, 1, "asymmetry", nameof(asymmetry));
        RequireBetween(highestMoment, 1, 64, nameof(highestMoment));
        var moments = new double[WavelengthGrid.Count][];
        for (int i = 0; i < moments.Length; i++)
        {
            moments[i] = new double[highestMoment + 1];
            moments[i][0] = 1;
            for (int l = 1; l <= highestMoment; l++)
            {
                moments[i][l] = moments[i][l - 1] * asymmetry[i];
            }
        }
        return new GrainTable(absorptionPerMm, scatteringPerMm, asymmetry, moments);
    }

    /// <summary>
    /// The same grains with every absorption times a factor, scattering and phase function kept: pigment strength turned without a
    /// new average.
    /// </summary>
    /// <remarks>
    /// Close as long as single grains stay nearly clear, α d ≪ 1. Grains that are opaque absorb no more when they are made darker.
    /// </remarks>
    /// <param name="factor">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public GrainTable WithAbsorptionScaled(double factor) =>
        double.IsFinite(factor) && factor >= 0
            ? new GrainTable(factor * AbsorptionPerMm, ScatteringPerMm, Asymmetry, moments)
            : throw new ArgumentOutOfRangeException(
                nameof(factor),
                factor,
                "The factor on absorption must be finite and not negative."
            );

    /// <summary>Grains of several tables together in one resin: classes of size, or two pigments in one layer.</summary>
    /// <param name="tables">At least one, all with the same highest moment.</param>
    /// <param name="volumeShares">Share of the grains' volume in each, 0 to 1; together 1.</param>
    /// <exception cref="ArgumentException">Not as many shares as tables, shares that do not add up, or unlike moments.</exception>
    public static GrainTable Mixture(IReadOnlyList<GrainTable> tables, ReadOnlySpan<double> volumeShares)
    {
        ArgumentNullException.ThrowIfNull(tables);
        if (tables.Count == 0 || tables.Count != volumeShares.Length)
        {
            throw new ArgumentException(
                $"A mixture takes one share a table; there are {volumeShares.Length} for {tables.Count}.",
                nameof(volumeShares)
            );
        }
        double whole = 0;
        foreach (double share in volumeShares)
        {
            whole += share is >= 0 and <= 1 ? share : double.NaN;
        }
        if (!(Math.Abs(whole - 1) <= 1e-9))
        {
            throw new ArgumentException(
                "The volume shares of a mixture must be 0 to 1 and add up to 1.",
                nameof(volumeShares)
            );
        }
        if (tables.Any(table => table.HighestMoment != tables[0].HighestMoment))
        {
            throw new ArgumentException(
                "All tables of a mixture must hold the same number of moments.",
                nameof(tables)
            );
        }
        Spectrum absorption = Spectrum.Zero;
        Spectrum scattering = Spectrum.Zero;
        for (int t = 0; t < tables.Count; t++)
        {
            absorption += volumeShares[t] * tables[t].AbsorptionPerMm;
            scattering += volumeShares[t] * tables[t].ScatteringPerMm;
        }
        var moments = new double[WavelengthGrid.Count][];
        for (int i = 0; i < moments.Length; i++)
        {
            var sums = new double[tables[0].moments[i].Length];
            for (int t = 0; t < tables.Count; t++)
            {
                double weight = volumeShares[t] * tables[t].ScatteringPerMm[i];
                for (int l = 0; l < sums.Length; l++)
                {
                    sums[l] += weight * tables[t].moments[i][l];
                }
            }
            moments[i] = PhaseMoments.Normalised(sums);
        }
        return new GrainTable(absorption, scattering, Spectrum.FromIndex(i => moments[i][1]), moments);
    }

    /// <summary>A table from its numbers, taken as they are: one average a wavelength.</summary>
    internal static GrainTable Of(GrainAverage[] averages) =>
        new(
            Spectrum.FromIndex(i => averages[i].AbsorptionPerMm),
            Spectrum.FromIndex(i => averages[i].ScatteringPerMm),
            Spectrum.FromIndex(i => averages[i].Moments[1]),
            Array.ConvertAll(averages, a => a.Moments)
        );

    private static void RequireBetween(int value, int least, int most, string parameter)
    {
        if (value < least || value > most)
        {
            throw new ArgumentOutOfRangeException(
                parameter,
                value,
                $"{parameter} must be {least} to {most}."
            );
        }
    }

    private static void RequireBetween(
        Spectrum spectrum,
        double least,
        double most,
        string what,
        string parameter
    )
    {
        ArgumentNullException.ThrowIfNull(spectrum, parameter);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            if (!(spectrum[i] >= least && spectrum[i] <= most))
            {
                string range =
                    most == double.MaxValue
                        ? string.Create(CultureInfo.InvariantCulture, $"{least} or more")
                        : string.Create(CultureInfo.InvariantCulture, $"{least} to {most}");
                throw new ArgumentOutOfRangeException(
                    parameter,
                    spectrum[i],
                    $"The {what} at {WavelengthGrid.NmAt(i)} nm must be {range}."
                );
            }
        }
    }
}
