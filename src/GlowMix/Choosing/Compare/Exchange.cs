using GlowMix.Pieces;

namespace GlowMix.Choosing.Compare;

/// <summary>One thing of a piece that another has otherwise, and the piece with that thing alone taken from the other.</summary>
/// <param name="Key">What it is: 'resin', 'layers.glow.loading_percent', 'charge'.</param>
/// <param name="Apply">Takes it over.</param>
/// <param name="KeepsPour">The layers, as light meets them, stay as they are: their optics need not be solved again.</param>
internal sealed record Exchange(string Key, Func<Piece, Piece> Apply, bool KeepsPour = false);
