namespace GlowMix.Documents;

/// <summary>How bad a problem is.</summary>
public enum Severity
{
    /// <summary>The content cannot be used.</summary>
    Error,

    /// <summary>The content is used as it stands, and is likely not what was meant.</summary>
    Warning,
}
