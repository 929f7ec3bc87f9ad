namespace GlowMix.Documents.Shapes;

/// <summary>A key of a mapping.</summary>
/// <param name="Name">As it stands in the file.</param>
/// <param name="Shape">What its value is.</param>
/// <param name="Description">One line for people.</param>
/// <param name="IsNeeded">It must be there.</param>
public sealed record KeyShape(string Name, Shape Shape, string Description, bool IsNeeded = false);
