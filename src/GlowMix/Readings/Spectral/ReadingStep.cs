namespace GlowMix.Readings.Spectral;

/// <summary>A reading after something was done to it, or why it could not be done.</summary>
/// <param name="Reading">Null exactly if there is a problem.</param>
/// <param name="Problem">What is wrong, in words; or null.</param>
public sealed record ReadingStep(SpectralReading? Reading, string? Problem)
{
    internal static ReadingStep Done(SpectralReading reading) => new(reading, null);

    internal static ReadingStep Refused(string problem) => new(null, problem);
}
