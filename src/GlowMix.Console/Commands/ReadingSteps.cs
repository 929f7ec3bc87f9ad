using GlowMix.Documents;
using GlowMix.Readings;
using GlowMix.Readings.Files;
using GlowMix.Readings.Spectral;
using GlowMix.Spectra;

namespace GlowMix.Console.Commands;

/// <summary>
/// What is done to every spectrum of a command, in the order in which the light met it: dark taken off, the instrument's
/// response divided out, then the paper's.
/// </summary>
internal sealed class ReadingSteps
{
    private readonly Surroundings surroundings;

    public ReadingSteps(Surroundings surroundings) => this.surroundings = surroundings;

    /// <summary>A dark reading, or null.</summary>
    public SpectralReading? Dark { get; set; }

    /// <summary>Where no light is expected, or null.</summary>
    public WavelengthRange? DarkWindow { get; set; }

    /// <summary>The response by a known lamp, or null.</summary>
    public InstrumentResponse? Response { get; set; }

    /// <summary>One reflectance for all wavelengths, or null.</summary>
    public double? Reflectance { get; set; }

    /// <summary>Reflectance over wavelength, or null.</summary>
    public TabulatedSpectrum? ReflectanceTable { get; set; }

    /// <summary>Takes dark off a reading; null when the user has been told why not.</summary>
    public SpectralReading? WithoutDark(SpectralReading reading, ref int code)
    {
        SpectralReading? net = reading;
        if (Dark is { } dark)
        {
            net = Done(reading, DarkReading.Subtract(reading, dark), ref code);
        }
        return net is not null && DarkWindow is { } window
            ? Done(net, DarkReading.SubtractWindow(net, window), ref code)
            : net;
    }

    /// <summary>Does all of it; null when the user has been told why not.</summary>
    public SpectralReading? Apply(SpectralReading reading, ref int code)
    {
        SpectralReading? done = WithoutDark(reading, ref code);
        if (done is not null && Response is { } response)
        {
            done = Done(done, response.Correct(done), ref code);
        }
        if (done is not null && Reflectance is { } share)
        {
            done = Done(done, ReflectingSurface.Divide(done, share), ref code);
        }
        if (done is not null && ReflectanceTable is { } table)
        {
            done = Done(done, ReflectingSurface.Divide(done, table), ref code);
        }
        return done;
    }

    /// <summary>Reads a file; null when the user has been told why there is no reading.</summary>
    public ReadingOutcome? Read(string file, ReadingOptions options, ref int code)
    {
        var outcome = ReadingFile.Read(
            UserFile.ReadBytes(file, ReadingFile.LongestBytes, surroundings),
            options
        );
        code = Math.Max(code, Problems.Tell(outcome.Problems, surroundings));
        return outcome.Problems.IsEmpty ? outcome : null;
    }

    /// <summary>Reads a spectrum; null when the user has been told why there is none.</summary>
    public SpectralReading? ReadSpectrum(string file, ReadingOptions options, ref int code)
    {
        var outcome = Read(file, options with { Kind = ReadingKind.Spectrum }, ref code);
        return outcome?.Spectrum;
    }

    private SpectralReading? Done(SpectralReading reading, ReadingStep step, ref int code)
    {
        if (step.Problem is { } problem)
        {
            code = Math.Max(code, Problems.Tell([new Problem(reading.File, null, problem)], surroundings));
        }
        return step.Reading;
    }
}
