using System.Collections.Immutable;
using GlowMix.LitState;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>A piece solved for light: lit, and ready for any charge and for its glow. Powers are of one package.</summary>
internal sealed class PieceLight
{
    private PieceLight(
        Piece piece,
        PourOptics pour,
        LedBands led,
        LedUnderResin? under,
        Spectrum board,
        Spectrum darkFloor
    )
    {
        Piece = piece;
        Pour = pour;
        Under = under;
        BareWPerNm = led.BareWPerNm;
        DarkFloor = darkFloor;
        LedAbsorbedPerSMm3 = under is null
            ? new double[pour.Cells.Count]
            : AbsorbedOfLeds(pour, under, board, piece.AreaPerPackageMm2);
        Glow = pour.Cells.Count > 0 ? GlowEscape.Of(pour, darkFloor) : null;
        PigmentWPerNm = Glow is null || under is null ? Spectrum.Zero : PigmentLight();
        LitWPerNm = under is null ? BareWPerNm : under.EscapedWPerNm + PigmentWPerNm;
    }

    public Piece Piece { get; }

    public PourOptics Pour { get; }

    /// <summary>Null where the packages stay in air.</summary>
    public LedUnderResin? Under { get; }

    public Spectrum BareWPerNm { get; }

    public Spectrum LitWPerNm { get; }

    /// <summary>The pigment's part of <see cref="LitWPerNm"/>.</summary>
    public Spectrum PigmentWPerNm { get; }

    /// <summary>Board and packages together, for light that the LEDs do not send.</summary>
    public Spectrum DarkFloor { get; }

    /// <summary>Null without pigment.</summary>
    public GlowEscape? Glow { get; }

    /// <summary>Photons absorbed per second and mm³ of pigment, from the piece's own LEDs, a number a cell.</summary>
    public double[] LedAbsorbedPerSMm3 { get; }

    /// <summary>Pigment behind a mm² of a cell, mm.</summary>
    public double PigmentMm(int cell) =>
        Pour.Cells[cell].WidthMm * Pour.Stack.Layers[Pour.Cells[cell].Layer].VolumeFraction;

    /// <summary>The pigment of the layer that a cell lies in.</summary>
    public Pigment PigmentOf(int cell)
    {
        // By height: a layer whose grains have settled is several in the stack.
        double middleMm = (Pour.Cells[cell].FromMm + Pour.Cells[cell].ToMm) / 2;
        double topMm = 0;
        return Piece
            .Layers.First(layer =>
            {
                topMm += layer.DepthMm;
                return middleMm < topMm;
            })
            .Pigment!;
    }

    public double YieldOf(int cell) => Pour.Stack.Layers[Pour.Cells[cell].Layer].Yield;

    public static PieceLight Of(Piece piece, IOptics optics) =>
        Of(piece, StackOf(piece, optics), withGlow: true);

    /// <summary>The same piece with other layers of light: fewer causes at work.</summary>
    public static PieceLight Of(Piece piece, PourStack stack, bool withGlow) =>
        Of(piece, PourOptics.Of(stack, withGlow));

    /// <summary>A piece whose pour is solved already.</summary>
    public static PieceLight Of(Piece piece, PourOptics pour)
    {
        var stack = pour.Stack;
        var led = BandsOf(piece);
        var board = piece.Board.ReflectanceIn(stack.Resin.Index);
        LedUnderResin? under = null;
        if (pour.OverPackages is not null)
        {
            under = LedUnderResin.Of(led, pour, board, LandsOnPackage(piece, stack));
        }
        return new(piece, pour, led, under, board, DarkFloorOf(piece, board));
    }

    /// <summary>A piece's layers as light meets them.</summary>
    public static PourStack StackOf(Piece piece, IOptics optics) =>
        new(optics.Of(piece.Resin), [.. GelledLayers.Of(piece, optics)], piece.Led.PackageHeightMm.Value);

    public static LedBands BandsOf(Piece piece)
    {
        double ratio = piece.Led.FluxRatioAtMa(piece.DriveMa);
        return new(
            [.. piece.Led.Bands.Select(b => b.ShapePerNm)],
            ImmutableArray.CreateRange(piece.Led.BandWattsAtRated, w => w * ratio),
            piece.Led.ReturnMatrix.Value.ToArray(),
            piece.Led.WindowRadiusMm.Value
        );
    }

    private static double LandsOnPackage(Piece piece, PourStack stack)
    {
        const int At550Nm = (550 - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;
        double near = PackageReturn.Share(
            stack.DepthOverPackagesMm,
            piece.Led.WindowRadiusMm.Value,
            stack.Resin.Index[At550Nm]
        );
        return Math.Min(1, Math.Max(near, piece.WindowShare));
    }

    private static Spectrum DarkFloorOf(Piece piece, Spectrum board)
    {
        double windows = Math.Min(1, piece.WindowShare);
        var bands = piece.Led.Bands;
        var matrix = piece.Led.ReturnMatrix.Value;
        return Spectrum.FromIndex(i =>
        {
            double nm = WavelengthGrid.NmAt(i);
            int upper = nm < bands[1].PeakNm ? 1 : 2;
            double share = (nm - bands[upper - 1].PeakNm) / (bands[upper].PeakNm - bands[upper - 1].PeakNm);
            share = Math.Clamp(share, 0, 1);
            double unchanged = ((1 - share) * matrix[upper - 1, upper - 1]) + (share * matrix[upper, upper]);
            return ((1 - windows) * board[i]) + (windows * unchanged);
        });
    }

    private static double[] AbsorbedOfLeds(
        PourOptics pour,
        LedUnderResin under,
        Spectrum board,
        double areaMm2
    ) =>
        [
            .. PigmentExcitation
                .FromLeds(pour, 1 / areaMm2 * under.UpwardWPerNm)
                .Zip(
                    PigmentExcitation.BetweenPackages(pour, 1 / areaMm2 * under.BesidePackagesWPerNm, board),
                    (over, between) => over + between
                ),
        ];

    /// <summary>Lit, traps are in balance: every photon absorbed is emitted, times the yield.</summary>
    private Spectrum PigmentLight()
    {
        var firstPerS = new double[Pour.Cells.Count];
        for (int c = 0; c < firstPerS.Length; c++)
        {
            firstPerS[c] = LedAbsorbedPerSMm3[c] * PigmentMm(c) * Piece.AreaPerPackageMm2 * YieldOf(c);
        }
        return Glow!.EscapedWPerNm(firstPerS);
    }
}
