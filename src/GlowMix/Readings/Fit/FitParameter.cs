namespace GlowMix.Readings.Fit;

/// <summary>A number that a fit may turn.</summary>
/// <param name="Key">A short stable name: 'led.die_into_green', 'green-aluminate.trap_level'.</param>
/// <param name="Words">What it is, in words.</param>
/// <param name="Start">As the materials have it.</param>
/// <param name="Least">It cannot be less.</param>
/// <param name="Most">It cannot be more.</param>
/// <param name="IsFactor">Turned by its logarithm.</param>
/// <param name="KnownTo">
/// How well it is known without readings, one standard deviation of the number, or of its logarithm where it is a factor.
/// </param>
/// <param name="Put">Puts a value into a draft.</param>
/// <param name="IsAside">
/// Not asked for, but in doubt: turned with the others, held near its start by what it is known to, and not told.
/// </param>
internal sealed record FitParameter(
    string Key,
    string Words,
    double Start,
    double Least,
    double Most,
    bool IsFactor,
    double KnownTo,
    Action<FitDraft, double> Put,
    bool IsAside = false
)
{
    /// <summary>The number in the units that the fit works in: what it is known to without readings is 1.</summary>
    public double Scaled(double value) => (IsFactor ? Math.Log(value) : value) / KnownTo;

    /// <summary>The number itself.</summary>
    public double Value(double scaled) => IsFactor ? Math.Exp(scaled * KnownTo) : scaled * KnownTo;

    /// <summary>A standard error of the scaled number in the number's own unit.</summary>
    public double ErrorAt(double value, double scaledError) => scaledError * KnownTo * (IsFactor ? value : 1);
}
