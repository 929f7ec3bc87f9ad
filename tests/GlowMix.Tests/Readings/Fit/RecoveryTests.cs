using System.Collections.Concurrent;
using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Materials.Calibrations;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Readings.Fit;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Readings.Fit;

/// <summary>
/// Synthetic readings with 1 % noise, made on another grid and of another random stream than anything in the fit: the truth has to lie
/// within two standard errors as often as two standard errors say, 95 % of the time.
/// </summary>
public sealed class RecoveryTests
{
    private const double Noise = 0.01;

    private static readonly double[] Minutes = [1, 2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 90, 120];

    private static readonly TestRecipe Recipe = new()
    {
        WindowShare = 0.15,
        Steps = TestRecipe.Lamp("daylight-d65", 1000, 30),
    };

    private static readonly HiddenTruth Truth = new()
    {
        ReturnEntries = [0.25, 1.15 * 0.25, 1.15 * 0.20, 0.57, 1.15 * 0.30, 0.90],
        ResinFactor = 1.3,
        Strength = 1.35,
        Yield = 0.72,
        TrapLevel = 1.4,
        TrapTilt = 0.1,
        Trapping = 0.9,
        MiddleMinutes = Math.Sqrt(120),
    };

    private static readonly ImmutableDictionary<string, double> Expected = new Dictionary<string, double>
    {
        ["led.conversion_factor"] = 1.15,
        ["led.green_into_green"] = 0.57,
        ["resin.absorption_factor"] = 1.3,
        ["green-aluminate.absorption_factor"] = 1.35,
        ["green-aluminate.photoluminescence_yield"] = 0.72,
        ["green-aluminate.trap_level"] = 1.4,
        ["green-aluminate.trap_tilt"] = 0.1,
        ["green-aluminate.trapping_factor"] = 0.9,
    }.ToImmutableDictionary();

    [Fact]
    public void Eight_numbers_come_back_within_two_standard_errors_of_twenty_sets_of_readings()
    {
        var inside = InsideOf(repeats: 20, firstSeed: 1);
        // Of 20 sets 19 on average; fewer than 16 in one of three thousand.
        Assert.All(inside, n => Assert.InRange(n.Value, 16, 20));
        // Errors that were far too wide would let every number in every time.
        Assert.InRange(inside.Values.Sum(), 8 * 16, (8 * 20) - 1);
    }

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void Eight_numbers_come_back_within_two_standard_errors_of_90_to_99_percent_of_200_sets()
    {
        var inside = InsideOf(repeats: 200, firstSeed: 1000);
        foreach (var (key, count) in inside.OrderBy(n => n.Key))
        {
            TestContext.Current.TestOutputHelper?.WriteLine(
                FormattableString.Invariant($"{key}: {count / 2.0} %")
            );
        }
        Assert.All(inside, n => Assert.InRange(n.Value, 180, 198));
    }

    [Fact]
    public void A_relative_decay_tells_how_the_traps_lean_and_leaves_their_number_to_the_sheet()
    {
        var glow = HiddenTruth.PieceOf(Recipe);
        var clear = HiddenTruth.PieceOf(Recipe with { Layers = TestRecipe.Clear(2.5) });
        var deep = HiddenTruth.PieceOf(Recipe with { Layers = TestRecipe.Clear(12) });
        Run[] runs = [.. new[] { glow, clear, deep }.Select(Truth.RunOf)];
        var fitter = new Fitter(TestRecipe.Predictor);
        FitResult FitOf(double factor)
        {
            var readings = ReadingsOf(glow, clear, deep, runs, seed: 7);
            var decay = readings.Glows[0];
            return fitter
                .Fit(
                    readings with
                    {
                        Glows =
                        [
                            decay with
                            {
                                IsRelative = true,
                                Points =
                                [
                                    .. decay.Points.Select(p =>
                                        p with
                                        {
                                            LuminanceMcdM2 = factor * p.LuminanceMcdM2,
                                        }
                                    ),
                                ],
                            },
                        ],
                    }
                )
                .Result!;
        }
        var result = FitOf(1);
        var tilt = result["green-aluminate.trap_tilt"]!;
        Assert.InRange(tilt.Value, 0.1 - (3 * tilt.StandardError), 0.1 + (3 * tilt.StandardError));
        Assert.InRange(tilt.StandardError, 1e-4, 0.1);
        Assert.Null(result["green-aluminate.trap_level"]);

        // The sheet's own sample is as bright in the mean as its sheet has it, though its grains absorb 1.35 times more.
        var told = result.Pigments[0];
        Assert.Null(told.TrapLevel!.Value.StandardError);
        var pigment = glow.Layers[0].Pigment!;
        var sheet = TestRecipe.Predictor.SheetOf(
            pigment,
            told.AbsorptionFactor!.Value.Value,
            told.PhotoluminescenceYield!.Value.Value
        );
        double perMm3 = pigment.DensityGPerCm3.Value / 1000;
        var ladder = new TrapLadder(
            [.. told.Traps!.PerG.Select(n => perMm3 * n)],
            told.Traps.TrappingEfficiencyAt20C,
            TestRecipe.Predictor.LadderOf(pigment).Fit!.Ladder!.Constants
        );
        Assert.Equal(0, LadderFit.MeanLogExcess(sheet, ladder), 1e-6);

        // What a calibration keeps of correlations are those of the fit.
        int strength = result
            .Numbers.Select(n => n.Key)
            .ToList()
            .IndexOf(CalibratedKeys.Absorption("green-aluminate"));
        int yield = result
            .Numbers.Select(n => n.Key)
            .ToList()
            .IndexOf(CalibratedKeys.Yield("green-aluminate"));
        Assert.Equal(
            result.Correlations[strength][yield],
            result
                .CorrelationsTold.Single(c =>
                    c.Of == CalibratedKeys.Absorption("green-aluminate")
                    && c.With == CalibratedKeys.Yield("green-aluminate")
                )
                .Value,
            1e-3
        );

        // In whatever unit.
        Assert.Equal(tilt.Value, FitOf(7)["green-aluminate.trap_tilt"]!.Value, 1e-6);
    }

    /// <summary>How often the truth lies within two standard errors, for each number.</summary>
    internal static Dictionary<string, int> InsideOf(int repeats, int firstSeed)
    {
        var glow = HiddenTruth.PieceOf(Recipe);
        var clear = HiddenTruth.PieceOf(Recipe with { Layers = TestRecipe.Clear(2.5) });
        var deep = HiddenTruth.PieceOf(Recipe with { Layers = TestRecipe.Clear(12) });
        Run[] runs = [.. new[] { glow, clear, deep }.Select(Truth.RunOf)];
        var fitter = new Fitter(TestRecipe.Predictor);
        // What fits share is worked out once.
        _ = fitter.Fit(ReadingsOf(glow, clear, deep, runs, firstSeed));
        var inside = new ConcurrentDictionary<string, int>(
            Expected.Keys.Select(k => KeyValuePair.Create(k, 0))
        );
        Parallel.For(
            0,
            repeats,
            repeat =>
            {
                var (result, refusal) = fitter.Fit(ReadingsOf(glow, clear, deep, runs, firstSeed + repeat));
                Assert.Null(refusal);
                Assert.Equal(Expected.Keys.Order(), result!.Numbers.Select(n => n.Key).Order());
                foreach (var number in result.Numbers)
                {
                    double off = Math.Abs(number.Value - Expected[number.Key]);
                    inside.AddOrUpdate(number.Key, 0, (_, n) => off < 2 * number.StandardError ? n + 1 : n);
                }
            }
        );
        return new(inside);
    }

    private static FitReadings ReadingsOf(Piece glow, Piece clear, Piece deep, Run[] runs, int seed)
    {
        var random = new Random(seed);
        return new()
        {
            Piece = glow,
            Bare = HiddenTruth.Seen(runs[0].Light.BareWPerNm, Noise, random),
            Lit =
            [
                new("pigmented", "pigmented", glow, HiddenTruth.Seen(runs[0].Light.LitWPerNm, Noise, random)),
                new("potted", "potted", clear, HiddenTruth.Seen(runs[1].Light.LitWPerNm, Noise, random)),
                new("deep", "potted deep", deep, HiddenTruth.Seen(runs[2].Light.LitWPerNm, Noise, random)),
            ],
            IsCorrected = true,
            Glows = [HiddenTruth.Decay("decay", glow, runs[0], Minutes, Noise, random)],
        };
    }
}
