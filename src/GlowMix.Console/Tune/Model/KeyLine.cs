namespace GlowMix.Console.Tune.Model;

/// <summary>What some keys do.</summary>
/// <param name="Written">The keys as people write them.</param>
/// <param name="Meaning">What they do, in a few words.</param>
/// <param name="IsPressed">Whether a key is one of them.</param>
/// <param name="Do">Does it.</param>
internal sealed record KeyLine(
    string Written,
    string Meaning,
    Func<Stroke, bool> IsPressed,
    Action<TuneModel, Stroke> Do
);
