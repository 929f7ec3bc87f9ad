namespace GlowMix.Materials.Calibrations;

/// <summary>Materials with the numbers that readings told, their doubt two standard errors.</summary>
internal static class CalibratedCopies
{
    public static Led Of(Led led, CalibratedLed told, string name)
    {
        var note = NoteOf(name);
        if (told.BareSpectrum is { } bare && LedFromSpectrum.BandsOf(bare, led, note).Bands is { } bands)
        {
            led = led with { Die = bands[0], Green = bands[1], Red = bands[2] };
        }
        if (told.Matrix is { } matrix)
        {
            double percent = told.Conversion is { StandardError: double error, Value: > 0 and var sum }
                ? 200 * error / sum
                : 0;
            led = led with
            {
                ReturnMatrix = new(
                    matrix,
                    note,
                    percent is > 0 and <= 100 ? Doubt.OfPercent(percent) : led.ReturnMatrix.Doubt
                ),
            };
        }
        return led;
    }

    public static Resin Of(Resin resin, CalibratedResin told, string name) =>
        resin with
        {
            AbsorptionPerMm = new(
                told.AbsorptionFactor.Value * resin.AbsorptionPerMm.Value,
                NoteOf(name),
                told.AbsorptionFactor.AsFactor()
            ),
        };

    public static Pigment Of(Pigment pigment, CalibratedPigment told, string name)
    {
        var note = NoteOf(name);
        var copy = pigment with { AsOnTheShelf = pigment };
        if (told.AbsorptionFactor is { } factor)
        {
            copy = copy with
            {
                AbsorptionPerMm = new(factor.Value * pigment.AbsorptionPerMm.Value, note, factor.AsFactor()),
            };
        }
        if (told.PhotoluminescenceYield is { } yield)
        {
            copy = copy with { PhotoluminescenceYield = new(yield.Value, note, yield.Within(0, 1)) };
        }
        if (told.Traps is { } traps)
        {
            copy = copy with
            {
                Traps = traps with
                {
                    LeanError = told.TrapTilt?.StandardError,
                    TrappingLogError = told.TrappingFactor
                        is { StandardError: double error, Value: var factorOn }
                        ? error / factorOn
                        : null,
                },
                TrapCapacityPerG = new(traps.PerG.Sum(), note, CapacityDoubt(pigment, told)),
            };
        }
        return copy;
    }

    // Where no reading told how many traps there are, that is as doubtful as on the shelf.
    private static Doubt CapacityDoubt(Pigment pigment, CalibratedPigment told) =>
        told.TrapLevel is { StandardError: not null } level ? level.AsFactor()
        : pigment.TrapCapacityPerG is { Doubt: { IsNone: false } doubt, Value: var own }
            ? Doubt.OfFactor(Math.Sqrt(doubt.HighOf(own) / doubt.LowOf(own)))
        : default;

    private static SourceNote NoteOf(string name) => new(SourceMark.Users, $"own reading; {name}");
}
