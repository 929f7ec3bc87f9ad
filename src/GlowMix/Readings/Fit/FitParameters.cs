using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;

namespace GlowMix.Readings.Fit;

/// <summary>What readings of some kinds may tell of a piece's materials.</summary>
internal static class FitParameters
{
    private const double MostFactor = 10;
    private const double LeastYield = 0.01;
    private const double MostTilt = 2;
    private const double MostShareErrors = 10;

    // Where a material states no doubt of its own. Assumed.
    private const double EntryKnownTo = 0.1;
    private const double FactorKnownTo = 0.35;
    private const double YieldKnownTo = 0.1;
    private const double TrapsKnownTo = 0.5;

    private static readonly ImmutableArray<string> EntryWords =
    [
        "blue that the package sends back as blue",
        "blue that the package turns green",
        "blue that the package turns red",
        "green that the package sends back as green",
        "green that the package turns red",
        "red that the package sends back as red",
    ];

    /// <summary>In the order in which they are kept where two cannot be told apart: the first stays.</summary>
    public static ImmutableArray<FitParameter> Of(FitReadings readings, Led led)
    {
        var parameters = ImmutableArray.CreateBuilder<FitParameter>();
        bool isPotted = readings.Lit.Any(r => r.Piece.DepthOverPackagesMm > 0);
        var pigments = PigmentsOf(readings);
        for (int i = 0; i < pigments.Length; i++)
        {
            AddPigment(parameters, pigments[i], i, [.. readings.Glows.Where(g => g.IsOf(pigments[i]))]);
        }
        if (isPotted)
        {
            parameters.Add(
                new(
                    "led.conversion_factor",
                    "light that the package turns into longer bands",
                    1,
                    1 / MostFactor,
                    MostFactor,
                    IsFactor: true,
                    KnownTo(led.ReturnMatrix.Doubt),
                    (draft, v) => draft.Conversion = v
                )
            );
            var resin = readings.Piece.Resin;
            parameters.Add(
                new(
                    CalibratedKeys.ResinAbsorption,
                    $"absorption of {resin.Name}",
                    1,
                    1 / MostFactor,
                    MostFactor,
                    IsFactor: true,
                    KnownTo(resin.AbsorptionPerMm.Doubt),
                    (draft, v) => draft.ResinFactor = v
                )
            );
            // By themselves last: of one potted depth a reading tells two or three numbers, not six.
            double[] start = new FitDraft(led, []).ReturnEntries;
            foreach (int entry in (int[])[5, 3, 0, 4, 1, 2])
            {
                parameters.Add(
                    new(
                        $"led.{CalibratedLed.EntryKeys[entry]}",
                        EntryWords[entry],
                        start[entry],
                        0,
                        1,
                        IsFactor: false,
                        EntryKnownTo,
                        (draft, v) => draft.ReturnEntries[entry] = v
                    )
                );
            }
        }
        if (isPotted && readings is { IsCorrected: true, Bare: { } bare })
        {
            AddShares(parameters, BareLed.ShareErrors(bare, readings.Piece.Led), led);
        }
        return parameters.ToImmutable();
    }

    // The bands are split from a noisy reading, and what a package converts is told against them.
    private static void AddShares(ImmutableArray<FitParameter>.Builder parameters, double[] errors, Led led)
    {
        for (int i = 0; i < 2; i++)
        {
            int band = i;
            double knownTo = errors[band] / led.Bands[band].Share.Value;
            if (knownTo > 0)
            {
                parameters.Add(
                    new(
                        $"bare.share_{band}",
                        "bands of the bare LED",
                        0,
                        -MostShareErrors * knownTo,
                        MostShareErrors * knownTo,
                        IsFactor: false,
                        knownTo,
                        (draft, v) => draft.ShareShifts[band] = v,
                        IsAside: true
                    )
                );
            }
        }
    }

    /// <summary>Pigments in the pieces that were read, each once.</summary>
    public static ImmutableArray<Pigment> PigmentsOf(FitReadings readings) =>
        [
            .. readings
                .Lit.Select(r => r.Piece)
                .Concat(readings.Glows.Select(r => r.Piece))
                .SelectMany(p => p.Layers)
                .Where(l => l.HasPigment)
                .Select(l => l.Pigment!)
                .DistinctBy(p => p.Name),
        ];

    private static void AddPigment(
        ImmutableArray<FitParameter>.Builder parameters,
        Pigment pigment,
        int index,
        ImmutableArray<GlowReading> glows
    )
    {
        string name = pigment.Name;
        parameters.Add(
            new(
                CalibratedKeys.Absorption(name),
                $"grain absorption of {name}",
                1,
                1 / MostFactor,
                MostFactor,
                IsFactor: true,
                KnownTo(pigment.AbsorptionPerMm.Doubt),
                (draft, v) => draft.Pigments[index].Strength = v
            )
        );
        double yield = pigment.PhotoluminescenceYield.Value;
        var doubt = pigment.PhotoluminescenceYield.Doubt;
        parameters.Add(
            new(
                CalibratedKeys.Yield(name),
                $"yield of {name}",
                yield,
                LeastYield,
                1,
                IsFactor: false,
                doubt.IsNone ? YieldKnownTo : (doubt.HighOf(yield) - doubt.LowOf(yield)) / 4,
                (draft, v) => draft.Pigments[index].Yield = v
            )
        );
        if (glows.IsEmpty)
        {
            return;
        }
        parameters.Add(
            new(
                CalibratedKeys.TrapLevel(name),
                $"traps of {name}",
                1,
                1 / (MostFactor * MostFactor),
                MostFactor * MostFactor,
                IsFactor: true,
                TrapsKnownTo,
                (draft, v) => draft.Pigments[index].TrapLevel = v,
                // How full a charge makes them shows in the course too, but too little to say how many there are.
                IsAside: glows.All(g => g.IsRelative)
            )
        );
        parameters.Add(
            new(
                CalibratedKeys.TrapTilt(name),
                $"lean of the trap ladder of {name}",
                0,
                -MostTilt,
                MostTilt,
                IsFactor: false,
                TrapsKnownTo,
                (draft, v) => draft.Pigments[index].TrapTilt = v
            )
        );
        parameters.Add(
            new(
                CalibratedKeys.TrappingFactor(name),
                $"trapping efficiency of {name}",
                1,
                1 / (MostFactor * MostFactor),
                MostFactor * MostFactor,
                IsFactor: true,
                TrapsKnownTo,
                (draft, v) => draft.Pigments[index].Trapping = v
            )
        );
    }

    // A stated doubt is two standard deviations.
    private static double KnownTo(Doubt doubt) =>
        doubt.IsNone ? FactorKnownTo : Math.Log(doubt.HighOf(1) / doubt.LowOf(1)) / 4;
}
