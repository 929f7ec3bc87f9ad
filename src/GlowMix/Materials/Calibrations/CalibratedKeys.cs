namespace GlowMix.Materials.Calibrations;

/// <summary>Short names of numbers that readings tell, under which their correlations are kept.</summary>
public static class CalibratedKeys
{
    /// <summary>All conversion of light that the package gets back.</summary>
    public const string Conversion = "led.conversion";

    /// <summary>Absorption of the resin over that of its file.</summary>
    public const string ResinAbsorption = "resin.absorption_factor";

    /// <summary>Absorption of a pigment's grains over that of its file.</summary>
    public static string Absorption(string pigment) => $"{pigment}.absorption_factor";

    /// <summary>Yield of a pigment.</summary>
    public static string Yield(string pigment) => $"{pigment}.photoluminescence_yield";

    /// <summary>All traps of a pigment.</summary>
    public static string TrapLevel(string pigment) => $"{pigment}.trap_level";

    /// <summary>Lean of a pigment's trap ladder.</summary>
    public static string TrapTilt(string pigment) => $"{pigment}.trap_tilt";

    /// <summary>Keys of the numbers that have a standard error, in order.</summary>
    internal static IEnumerable<string> ToldBy(
        CalibratedLed? led,
        CalibratedResin? resin,
        IEnumerable<CalibratedPigment> pigments
    ) =>
        new (string Key, CalibratedNumber? Number)[]
        {
            (Conversion, led?.Conversion),
            (ResinAbsorption, resin?.AbsorptionFactor),
        }
            .Concat(
                pigments.SelectMany(p =>
                    new (string Key, CalibratedNumber? Number)[]
                    {
                        (Absorption(p.Material), p.AbsorptionFactor),
                        (Yield(p.Material), p.PhotoluminescenceYield),
                        (TrapLevel(p.Material), p.TrapLevel),
                        (TrapTilt(p.Material), p.TrapTilt),
                        (TrappingFactor(p.Material), p.TrappingFactor),
                    }
                )
            )
            .Where(n => n.Number?.StandardError is not null)
            .Select(n => n.Key);

    /// <summary>Trapping efficiency of a pigment.</summary>
    public static string TrappingFactor(string pigment) => $"{pigment}.trapping_factor";
}
