namespace GlowMix.Materials.Calibrations;

/// <summary>How two numbers that the same readings told go together.</summary>
/// <param name="Of">Key of the first, by <see cref="CalibratedKeys"/>.</param>
/// <param name="With">Key of the second.</param>
/// <param name="Value">Correlation of their errors, -1 to 1; of factors, of their logarithms.</param>
public readonly record struct CalibratedCorrelation(string Of, string With, double Value);
