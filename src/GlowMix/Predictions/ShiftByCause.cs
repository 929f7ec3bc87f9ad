using GlowMix.Colour;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>The shift from bare to lit, one cause switched on after the other, so that the parts add up to the whole.</summary>
internal static class ShiftByCause
{
    public static void Set(FigureValues.Builder figures, PieceLight light)
    {
        var states = new List<ColourPoint>();
        foreach (var spectrum in StatesOf(light))
        {
            states.Add(ColourPoint.Of(spectrum));
        }
        for (int i = 0; i < FigureCatalogue.Causes.Count; i++)
        {
            string cause = FigureCatalogue.Causes[i];
            var (before, after) = (states[i], states[i + 1]);
            figures.Set($"lit.shift_by_cause_k.{cause}", after.CctK - before.CctK);
            figures.Set(
                $"lit.shift_by_cause_u_prime.{cause}",
                after.Chromaticity?.UPrime - before.Chromaticity?.UPrime
            );
            figures.Set(
                $"lit.shift_by_cause_v_prime.{cause}",
                after.Chromaticity?.VPrime - before.Chromaticity?.VPrime
            );
        }
    }

    /// <summary>Bare, then with clear lossless resin, with its absorption, with pigment in it, with the pigment's light.</summary>
    private static IEnumerable<Spectrum> StatesOf(PieceLight light)
    {
        yield return light.BareWPerNm;
        if (light.Under is null)
        {
            for (int i = 0; i < FigureCatalogue.Causes.Count; i++)
            {
                yield return light.BareWPerNm;
            }
            yield break;
        }
        var stack = light.Pour.Stack;
        var clear = stack with { Layers = [PourLayer.Clear(stack.DepthMm)] };
        yield return PieceLight
            .Of(light.Piece, clear with { Resin = stack.Resin.Lossless }, withGlow: false)
            .LitWPerNm;
        yield return light.Pour.Cells.Count == 0
            ? light.Under.EscapedWPerNm
            : PieceLight.Of(light.Piece, clear, withGlow: false).LitWPerNm;
        yield return light.Under.EscapedWPerNm;
        yield return light.LitWPerNm;
    }
}
