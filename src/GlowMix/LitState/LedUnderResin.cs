using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.LitState;

/// <summary>
/// The light of LEDs under resin, followed until it is out, absorbed, or turned by the packages into a longer band. Powers are of
/// one package; the light spreads evenly over the board.
/// </summary>
public sealed class LedUnderResin
{
    private LedUnderResin(
        Spectrum upwardWPerNm,
        Spectrum besidePackagesWPerNm,
        Spectrum escapedWPerNm,
        BlueBudget? budget
    )
    {
        UpwardWPerNm = upwardWPerNm;
        BesidePackagesWPerNm = besidePackagesWPerNm;
        EscapedWPerNm = escapedWPerNm;
        Budget = budget;
    }

    /// <summary>All light that leaves board and packages upwards, W/nm: the source that the pour sees at its floor.</summary>
    public Spectrum UpwardWPerNm { get; }

    /// <summary>What of it comes down again beside the packages, at the height of their tops, W/nm.</summary>
    public Spectrum BesidePackagesWPerNm { get; }

    /// <summary>What of it leaves the piece, W/nm.</summary>
    public Spectrum EscapedWPerNm { get; }

    /// <summary>Where the die's light goes; null for a package without any.</summary>
    public BlueBudget? Budget { get; }

    /// <summary>Solves the bands one after the other: light is only ever turned into longer ones.</summary>
    /// <param name="led">The package.</param>
    /// <param name="pour">What lies over it.</param>
    /// <param name="boardReflectance">As the resin sees it.</param>
    /// <param name="landsOnPackage">Share of the light from above that lands on packages, 0 to 1.</param>
    /// <remarks>
    /// D_j = 1 − B (w M_jj + (1 − w) ρ), u_j = (s_j + c_j p_j) / D_j, c_i = w Σ_{j≠i} M_ij ∫ B u_j dλ, with B the share of a
    /// unit floor source that the pour sends back down, and ρ that of the board with what lies on it between the packages.
    /// </remarks>
    public static LedUnderResin Of(
        LedBands led,
        PourOptics pour,
        Spectrum boardReflectance,
        double landsOnPackage
    )
    {
        ArgumentNullException.ThrowIfNull(led);
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(boardReflectance);
        var response =
            pour.OverPackages ?? throw new ArgumentException("The packages stay in air.", nameof(pour));
        var beside = BetweenPackages.Of(pour, boardReflectance);
        double w = landsOnPackage;
        var first = FirstPass.Of(led, pour.Stack.Resin.Index);
        var upward = new Spectrum[LedBands.Count];
        var returnedW = new double[LedBands.Count];
        for (int j = 0; j < LedBands.Count; j++)
        {
            double fed = 0;
            for (int shorter = 0; shorter < j; shorter++)
            {
                fed += w * led.Returned[j, shorter] * returnedW[shorter];
            }
            double unchanged = led.Returned[j, j];
            var shape = led.Shapes[j];
            upward[j] = Spectrum.FromIndex(i =>
                (first[j][i] + (fed * shape[i]))
                / (1 - (response.Floor[i] * ((w * unchanged) + ((1 - w) * beside.SentBack[i]))))
            );
            returnedW[j] = Total(upward[j], response.Floor);
        }

        var die = upward[LedBands.Die];
        double sent = first[LedBands.Die].IntegralOverNm();
        double Beside(Spectrum share)
        {
            double sum = 0;
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                sum += share[i] * response.Floor[i] * die[i];
            }
            return (1 - w) * sum * WavelengthGrid.StepNm;
        }
        BlueBudget? budget =
            sent > 0
                ? new BlueBudget(
                    Escaped: Total(die, response.Escaped) / sent,
                    Pigment: (Total(die, response.Pigment) + Beside(beside.Pigment)) / sent,
                    Resin: (Total(die, response.Resin) + Beside(beside.Resin)) / sent,
                    Board: Beside(beside.Board) / sent,
                    Package: w
                        * (1 - led.Returned[LedBands.Die, LedBands.Die])
                        * returnedW[LedBands.Die]
                        / sent
                )
                : null;
        var all = upward[0] + upward[1] + upward[2];
        return new LedUnderResin(
            all,
            Spectrum.FromIndex(i => (1 - w) * response.Floor[i] * all[i]),
            Spectrum.FromIndex(i => response.Escaped[i] * all[i]),
            budget
        );
    }

    private static double Total(Spectrum wPerNm, double[] shares)
    {
        double sum = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            sum += wPerNm[i] * shares[i];
        }
        return sum * WavelengthGrid.StepNm;
    }
}
