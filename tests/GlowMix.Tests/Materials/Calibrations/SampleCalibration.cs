using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Spectra;

namespace GlowMix.Tests.Materials.Calibrations;

/// <summary>A calibration with every part, invented.</summary>
internal static class SampleCalibration
{
    public static Calibration Whole { get; } =
        new()
        {
            Name = "a.calibration.yaml",
            Date = "2026-03-31",
            RecipeName = "a.yaml",
            Readings =
            [
                new("readings/bare.txt", "bare", new string('0', 64)),
                new("readings/glow: 1.txt", "decay of tile 1", new string('a', 64)),
            ],
            Led = new()
            {
                Material = "warm-white-3000",
                MaterialSha256 = Sha256.Of(new Shelf().Led("warm-white-3000").Material!),
                BareSpectrum = Spectrum.FromNm(nm => nm is >= 400 and <= 700 ? 1 + (nm / 1000) : 0),
                Shares = [new(0.1, 0.001), new(0.4, 0.002), new(0.5, 0.003)],
                ReturnEntries =
                [
                    new(0.25, null),
                    new(0.28, 0.01),
                    new(0.22, 0.01),
                    new(0.6, null),
                    new(0.32, 0.02),
                    new(0.9, null),
                ],
                Conversion = new(0.82, 0.03),
            },
            Resin = new() { Material = "epoxy-clear-slow", AbsorptionFactor = new(1.4, 0.1) },
            Pigments =
            [
                new()
                {
                    Material = "green-aluminate",
                    AbsorptionFactor = new(1.3, 0.04),
                    PhotoluminescenceYield = new(0.7, 0.02),
                    Traps = new(
                        [1e15, 2e15, 3e15, 4e15, 5e15, 6e15, 7e15, 8e15, 9e15, 1e16, 2e16, 3e16, 4e16],
                        0.4,
                        120
                    )
                    {
                        MiddleMinutes = 11,
                    },
                    TrapLevel = new(1.1, 0.05),
                    TrapTilt = new(0.02, 0.01),
                    TrappingFactor = new(0.9, null),
                },
            ],
            Correlations =
            [
                new("resin.absorption_factor", "green-aluminate.absorption_factor", 0.4),
                new("green-aluminate.photoluminescence_yield", "green-aluminate.trap_level", -0.8),
            ],
            Held = ["absorption of epoxy: the readings hardly tell it"],
            Misfit = ["bare.txt (bare): off by 3 %, 4 times its noise"],
        };
}
