using System.Text;
using GlowMix.Documents;
using GlowMix.Readings;
using GlowMix.Readings.Files;

namespace GlowMix.Tests.Readings.Files;

/// <summary>Texts and bytes read as a file would be.</summary>
internal static class ReadText
{
    public const string Name = "f.txt";

    public static ReadingOutcome Outcome(string text, ReadingOptions? options = null) =>
        Outcome(Encoding.UTF8.GetBytes(text), options);

    public static ReadingOutcome Outcome(byte[] bytes, ReadingOptions? options = null) =>
        ReadingFile.Read(new FileBytes(Name, bytes), options);

    public static SpectralReading Spectrum(string text, ReadingOptions? options = null) =>
        Spectrum(Encoding.UTF8.GetBytes(text), options);

    public static SpectralReading Spectrum(byte[] bytes, ReadingOptions? options = null)
    {
        ReadingOutcome outcome = Outcome(bytes, options);
        Assert.Empty(outcome.Problems.Select(p => p.ToString()));
        Assert.NotNull(outcome.Spectrum);
        return outcome.Spectrum;
    }

    public static DecayReading Decay(string text, ReadingOptions? options = null)
    {
        ReadingOutcome outcome = Outcome(text, options);
        Assert.Empty(outcome.Problems.Select(p => p.ToString()));
        Assert.NotNull(outcome.Decay);
        return outcome.Decay;
    }

    /// <summary>The one problem of a text, as it is printed, without the file's name.</summary>
    public static string Problem(string text, ReadingOptions? options = null)
    {
        ReadingOutcome outcome = Outcome(text, options);
        Assert.Null(outcome.Spectrum);
        Assert.Null(outcome.Decay);
        return outcome.Problems[0].ToString()[(Name.Length + 1)..].TrimStart();
    }
}
