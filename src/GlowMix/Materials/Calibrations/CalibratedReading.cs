namespace GlowMix.Materials.Calibrations;

/// <summary>A reading that a calibration rests on.</summary>
/// <param name="File">Its file, relative to the calibration.</param>
/// <param name="State">What was read, in words: 'bare', 'potted, 3 mm'.</param>
/// <param name="Sha256">SHA-256 of the file (FIPS 180-4), 64 hexadecimal digits.</param>
public sealed record CalibratedReading(string File, string State, string Sha256);
