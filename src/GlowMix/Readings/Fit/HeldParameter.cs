namespace GlowMix.Readings.Fit;

/// <summary>A number that readings do not tell.</summary>
/// <param name="Index">Its place among the parameters.</param>
/// <param name="Partners">Those it cannot be told apart from; none where no reading tells it at all.</param>
internal sealed record HeldParameter(int Index, int[] Partners);
