using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.LitState;

/// <summary>
/// What becomes of light that comes down beside the packages: the resin and pigment between them, then the board. Shares of it
/// that add up to 1 at every wavelength.
/// </summary>
/// <remarks>
/// The solved pour begins at the packages' tops. Were what lies between them simply the board, a bed that has settled there
/// would stay wholly dark, in many pours nearly all of the pigment. So light goes on into it; in lossless clear resin that is
/// the board again, exactly. Assumed: it comes down Lambertian and as if the board had no packages, what goes up again spreads
/// evenly over the tops, and the packages' sides neither shade nor send light.
/// </remarks>
internal sealed class BetweenPackages
{
    private BetweenPackages(Spectrum sentBack, Spectrum pigment, Spectrum resin, Spectrum board)
    {
        SentBack = sentBack;
        Pigment = pigment;
        Resin = resin;
        Board = board;
    }

    /// <summary>Up again through the plane of the packages' tops.</summary>
    public Spectrum SentBack { get; }

    /// <summary>Absorbed by pigment.</summary>
    public Spectrum Pigment { get; }

    /// <summary>Absorbed by resin.</summary>
    public Spectrum Resin { get; }

    /// <summary>Absorbed by the board.</summary>
    public Spectrum Board { get; }

    /// <param name="pour">The pour.</param>
    /// <param name="boardReflectance">As the resin sees it.</param>
    public static BetweenPackages Of(PourOptics pour, Spectrum boardReflectance)
    {
        if (pour.DownBetween is not { } down || pour.UpBetween is not { } up)
        {
            return new(
                boardReflectance,
                Spectrum.Zero,
                Spectrum.Zero,
                Spectrum.FromIndex(i => 1 - boardReflectance[i])
            );
        }
        // All light that reaches the board, over what comes down: the board and what lies on it send it back and forth.
        double Landing(int i) => down.Floor[i] / (1 - (boardReflectance[i] * up.Floor[i]));
        Spectrum Together(double[] first, double[] again) =>
            Spectrum.FromIndex(i => first[i] + (Landing(i) * boardReflectance[i] * again[i]));
        return new(
            Together(down.Escaped, up.Escaped),
            Together(down.Pigment, up.Pigment),
            Together(down.Resin, up.Resin),
            Spectrum.FromIndex(i => Landing(i) * (1 - boardReflectance[i]))
        );
    }
}
