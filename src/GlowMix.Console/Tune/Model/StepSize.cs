namespace GlowMix.Console.Tune.Model;

/// <summary>How far one key press turns a number.</summary>
internal enum StepSize
{
    /// <summary>For the last touch.</summary>
    Fine,

    /// <summary>What one would try next.</summary>
    Usual,

    /// <summary>To get somewhere.</summary>
    Large,
}
