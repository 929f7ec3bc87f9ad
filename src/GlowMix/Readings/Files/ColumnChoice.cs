using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>Which columns of a table are read as what.</summary>
/// <param name="Kind">Spectrum or decay.</param>
/// <param name="Along">Wavelengths or times.</param>
/// <param name="Light">The values.</param>
/// <param name="Dark">To be taken off them; or null.</param>
/// <param name="WavelengthUnit">Unit of the wavelengths.</param>
/// <param name="Warnings">Guesses.</param>
internal sealed record ColumnChoice(
    ReadingKind Kind,
    TableColumn Along,
    TableColumn Light,
    TableColumn? Dark,
    LengthUnit WavelengthUnit,
    IReadOnlyList<Warning> Warnings
);
