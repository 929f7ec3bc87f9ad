namespace GlowMix.Colour;

/// <summary>Edition of ANSI C78.377, which names whites by a nominal CCT and draws a quadrangle round each.</summary>
public enum NominalWhiteEdition
{
    /// <summary>ANSI C78.377-2008.</summary>
    Ansi2008,

    /// <summary>ANSI C78.377-2015.</summary>
    Ansi2015,
}
