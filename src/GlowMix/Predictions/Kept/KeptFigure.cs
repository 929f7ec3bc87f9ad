namespace GlowMix.Predictions.Kept;

/// <summary>One number of a figures file.</summary>
/// <param name="Name">A figure's name, with '.low' or '.high' behind it in a band.</param>
/// <param name="Value">As written: its scale says how many decimals.</param>
public sealed record KeptFigure(string Name, decimal Value);
