using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Readings.Fit;

/// <summary>A pigment's numbers as a fit tries them.</summary>
internal sealed class FitPigment(Pigment pigment)
{
    public Pigment Pigment { get; } = pigment;

    public string Name => Pigment.Name;

    /// <summary>On its absorption.</summary>
    public double Strength { get; set; } = 1;

    public double Yield { get; set; } = pigment.PhotoluminescenceYield.Value;

    /// <summary>On the traps of the rungs that the readings see best.</summary>
    public double TrapLevel { get; set; } = 1;

    /// <summary>Decades from the middle of the ladder to its slow end.</summary>
    public double TrapTilt { get; set; }

    /// <summary>On the trapping efficiency.</summary>
    public double Trapping { get; set; } = 1;

    /// <summary>The same with other traps.</summary>
    public FitPigment At(double trapLevel) =>
        new(Pigment)
        {
            Strength = Strength,
            Yield = Yield,
            TrapLevel = trapLevel,
            TrapTilt = TrapTilt,
            Trapping = Trapping,
        };

    /// <summary>The ladder behind the sheet, turned.</summary>
    /// <param name="sheet">As it stands behind the sheet.</param>
    /// <param name="middleMinutes">Time of darkness whose rung the tilt leaves alone, min.</param>
    public TrapLadder LadderOf(TrapLadder sheet, double middleMinutes)
    {
        var rungs = new double[TrapLadder.RungCount];
        for (int k = 0; k < rungs.Length; k++)
        {
            rungs[k] = sheet.TrapsPerMm3[k] * TrapLevel * TrapLadder.Leaning(k, TrapTilt, middleMinutes);
        }
        return new(rungs, Math.Min(1, sheet.TrappingEfficiencyAt20C * Trapping), sheet.Constants);
    }
}
