namespace GlowMix.Readings.Files;

/// <summary>A row of a table that is used.</summary>
/// <param name="Row">Row of the table.</param>
/// <param name="Along">Wavelength or time as written.</param>
/// <param name="Light">Value as written.</param>
/// <param name="Dark">Dark value, 0 without a dark column.</param>
internal readonly record struct ReadRow(int Row, double Along, double Light, double Dark);
