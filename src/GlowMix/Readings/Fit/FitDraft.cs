using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Pieces;

namespace GlowMix.Readings.Fit;

/// <summary>A piece's numbers as a fit tries them.</summary>
internal sealed class FitDraft
{
    /// <param name="led">The LED that the fit starts from.</param>
    /// <param name="pigments">Its pigments.</param>
    public FitDraft(Led led, IEnumerable<Pigment> pigments)
    {
        var m = led.ReturnMatrix.Value;
        ReturnEntries = [m[0, 0], m[1, 0], m[2, 0], m[1, 1], m[2, 1], m[2, 2]];
        Pigments = [.. pigments.Select(p => new FitPigment(p))];
    }

    /// <summary>In the order of <see cref="CalibratedLed.EntryKeys"/>.</summary>
    public double[] ReturnEntries { get; }

    /// <summary>On all entries that turn light into a longer band.</summary>
    public double Conversion { get; set; } = 1;

    /// <summary>
    /// By how much the bands' shares in the bare LED may differ from those that its noisy reading was split into: logarithms for die
    /// and green, against red.
    /// </summary>
    public double[] ShareShifts { get; } = [0, 0];

    public double ResinFactor { get; set; } = 1;

    public FitPigment[] Pigments { get; }

    public FitPigment Of(Pigment pigment) => Pigments.First(p => p.Name == pigment.Name);

    /// <summary>
    /// The matrix, held to what is possible: a fit's trial may ask for more light out of a package than went in.
    /// </summary>
    public ReturnMatrix Matrix()
    {
        double[] m =
        [
            .. ReturnEntries.Select((e, i) => Math.Clamp(i is 1 or 2 or 4 ? Conversion * e : e, 0, 1)),
        ];
        double die = Math.Max(1, m[0] + m[1] + m[2]);
        double green = Math.Max(1, m[3] + m[4]);
        return ReturnMatrix.From(m[0] / die, m[1] / die, m[2] / die, m[3] / green, m[4] / green, m[5]);
    }

    /// <summary>A piece with the LED and the yields of this draft; absorption and traps are put in elsewhere.</summary>
    public Piece Applied(Piece piece, Led led) =>
        piece with
        {
            Led = Shifted(led) with { ReturnMatrix = led.ReturnMatrix.Select(_ => Matrix()) },
        };

    private Led Shifted(Led led)
    {
        if (ShareShifts[0] == 0 && ShareShifts[1] == 0)
        {
            return led;
        }
        double die = led.Die.Share.Value * Math.Exp(ShareShifts[0]);
        double green = led.Green.Share.Value * Math.Exp(ShareShifts[1]);
        double sum = die + green + led.Red.Share.Value;
        return led with
        {
            Die = led.Die with { Share = led.Die.Share.Select(_ => die / sum) },
            Green = led.Green with { Share = led.Green.Share.Select(_ => green / sum) },
            Red = led.Red with { Share = led.Red.Share.Select(red => red / sum) },
        };
    }
}
