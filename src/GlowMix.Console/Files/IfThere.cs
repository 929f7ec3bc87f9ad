namespace GlowMix.Console.Files;

/// <summary>What becomes of a file that is there already.</summary>
internal enum IfThere
{
    /// <summary>The new one takes its place.</summary>
    Replace,

    /// <summary>It stays, and nothing is written.</summary>
    Keep,
}
