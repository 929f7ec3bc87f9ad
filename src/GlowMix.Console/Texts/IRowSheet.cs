namespace GlowMix.Console.Texts;

/// <summary>Takes labels, each with what it says.</summary>
internal interface IRowSheet
{
    /// <summary>A label and what it says; an empty label continues the row above.</summary>
    void Row(string label, string text);
}
