using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>A lit piece as a spectrometer saw it.</summary>
/// <param name="Name">Its file.</param>
/// <param name="State">What was read, in words: 'potted, 3 mm'.</param>
/// <param name="Piece">The piece as it was poured, of the materials as they stand.</param>
/// <param name="Table">The reading, in the unit of the bare one; its level counts only where readings are comparable.</param>
public sealed record LitReading(string Name, string State, Piece Piece, TabulatedSpectrum Table);
