namespace GlowMix.Afterglow;

/// <summary>Numbers that every trap ladder shares. The defaults are assumed for every pigment.</summary>
public sealed record TrapConstants
{
    /// <summary>Boltzmann constant in eV/K: 1.380649e-23 J/K over 1.602176634e-19 C, both exact (SI 2019).</summary>
    internal const double BoltzmannEvPerK = 1.380649e-23 / 1.602176634e-19;

    /// <summary>0 °C in K.</summary>
    internal const double ZeroCelsiusK = 273.15;

    /// <summary>Temperature at which the rates of the rungs are round numbers, °C.</summary>
    public const double ReferenceTemperatureC = 20;

    /// <summary>The design's defaults: frequency factor 1e10 /s, activation 0.17 eV, bleaching ratio 0.3.</summary>
    public static TrapConstants Assumed { get; } = new();

    /// <summary>Frequency factor s of thermal detrapping, 1/s. Assumed.</summary>
    public double FrequencyFactorPerS
    {
        get;
        init => field = Demand.Within(value, 1e2, 1e16, nameof(FrequencyFactorPerS), "1/s");
    } = 1e10;

    /// <summary>
    /// Activation energy of trapping, eV. Read in one pigment by Chernov et al. 2007 (Radiat. Meas. 42, 668, abstract);
    /// carrying it over to every pigment is assumed.
    /// </summary>
    public double TrappingActivationEv
    {
        get;
        init => field = Demand.Within(value, 0, 1, nameof(TrappingActivationEv), "eV");
    } = 0.17;

    /// <summary>
    /// Traps emptied by an absorbed photon over traps filled by one, O/B. Assumed; that light empties traps in proportion to
    /// its strength was shown for another phosphor (Tydtgat et al. 2016, Opt. Mater. Express 6, 844).
    /// </summary>
    public double BleachingRatio
    {
        get;
        init => field = Demand.Within(value, 0, 100, nameof(BleachingRatio), "");
    } = 0.3;
}
