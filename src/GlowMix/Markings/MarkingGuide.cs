using System.Collections.Immutable;
using System.Globalization;
using GlowMix.Afterglow;
using GlowMix.Choosing.Draws;
using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;
using Charges = System.Collections.Generic.IReadOnlyList<System.Func<
    GlowMix.Pieces.Piece,
    GlowMix.Pieces.Piece
>>;

namespace GlowMix.Markings;

/// <summary>Puts a piece's predicted glow beside published criteria, each under its own charge.</summary>
/// <remarks>
/// A criterion's charge falls on the face from above, on empty traps, all at 20 °C: no document on the shelf says else. The
/// band is that of draws or, the quick way, of the bounding runs.
/// </remarks>
public sealed class MarkingGuide
{
    /// <summary>Temperature of piece and room, in the light and in the dark, °C: no document on the shelf says else.</summary>
    public const double TestTemperatureC = 20;

    private const double BridgeMinutes = 10;
    private const double SaturatedWithin = 1e-3;
    private const string Daylight = "daylight-d65";

    // What documents without a limit of their own have one state: luminance at these minutes.
    private static readonly ImmutableArray<double> StatedMinutes = [10, 60];

    private readonly Piece piece;
    private readonly Predictor predictor;
    private readonly Func<Charges, IReadOnlyList<GlowCurve[]>>? drawn;
    private readonly CancellationToken stop;
    private readonly Dictionary<LampCharge, GlowBand> glows = [];
    private readonly List<Problem> problems = [];

    private MarkingGuide(
        Piece piece,
        Predictor predictor,
        Func<Charges, IReadOnlyList<GlowCurve[]>>? drawn,
        CancellationToken stop
    ) => (this.piece, this.predictor, this.drawn, this.stop) = (piece, predictor, drawn, stop);

    /// <summary>Compares a piece with criteria.</summary>
    /// <param name="piece">A piece that <see cref="Predictor.Check"/> gave back.</param>
    /// <param name="predictor">Who predicts it; the criteria's lamps come from its shelf.</param>
    /// <param name="criteria">In the order wanted; may be empty.</param>
    /// <param name="draws">Draws behind the bands; 0 for the bounding runs.</param>
    /// <param name="stop">Ends the work.</param>
    public static MarkingGuidance Of(
        Piece piece,
        Predictor predictor,
        IReadOnlyList<Criterion> criteria,
        int draws = 0,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(predictor);
        ArgumentNullException.ThrowIfNull(criteria);
        return Of(piece, predictor, criteria, draws > 0 ? Drawn : null, stop);

        IReadOnlyList<GlowCurve[]> Drawn(Charges charges) =>
            DrawnGlows.Of(new DrawBench(piece, predictor.Optics, predictor.Sheets), charges, draws, stop);
    }

    /// <summary>Compares a piece whose draws come from elsewhere.</summary>
    /// <param name="piece">A piece that <see cref="Predictor.Check"/> gave back.</param>
    /// <param name="predictor">Who predicts it.</param>
    /// <param name="criteria">In the order wanted.</param>
    /// <param name="drawn">The glow of every draw that counts after each charge; null for the bounding runs.</param>
    /// <param name="stop">Ends the work.</param>
    internal static MarkingGuidance Of(
        Piece piece,
        Predictor predictor,
        IReadOnlyList<Criterion> criteria,
        Func<Charges, IReadOnlyList<GlowCurve[]>>? drawn,
        CancellationToken stop
    )
    {
        var guide = new MarkingGuide(piece, predictor, drawn, stop);
        var room = guide.Solve(criteria);
        var compared = ImmutableArray.CreateBuilder<CriterionComparison>(criteria.Count);
        foreach (var criterion in criteria)
        {
            stop.ThrowIfCancellationRequested();
            compared.Add(guide.Compare(criterion));
        }
        return new()
        {
            Piece = piece,
            Criteria = compared.DrainToImmutable(),
            DrawCount = room?.DrawCount ?? 0,
            Room = room is null
                ? null
                : new(
                    ChargeWords.Of(piece),
                    piece.DarknessTemperatureC,
                    piece.LimitMcdPerM2,
                    room.MinutesUntil(piece.LimitMcdPerM2)
                ),
            Bridge = guide.BridgeOf(room),
            Problems = [.. guide.problems],
        };
    }

    private CriterionComparison Compare(Criterion criterion)
    {
        var limits = criterion.Limits.Value;
        var (glow, isKnown, missing) = GlowUnder(criterion);
        ImmutableArray<LimitComparison> compared = limits.Limits.IsEmpty
            ? isKnown && limits.IsKnown
                ? [.. StatedMinutes.Select(m => new LimitComparison(m, null, LuminanceAt(m)))]
                : []
            :
            [
                .. limits.Limits.Select(l => new LimitComparison(
                    l.Minutes,
                    l.LeastMcdM2,
                    LuminanceAt(l.Minutes)
                )),
            ];
        return new()
        {
            Criterion = criterion,
            Limits = compared,
            MinutesTo03McdPerM2 = isKnown
                ? glow?.MinutesUntil(GlowFigures.StandardLimitMcdPerM2) ?? GlowBand.None
                : null,
            NotJudgedBecause =
                !limits.IsKnown ? MarkingTexts.LimitsNotKnown
                : limits.Limits.IsEmpty ? MarkingTexts.NoLimits
                : missing,
        };

        // Without pigment the piece is dark under any charge.
        Band? LuminanceAt(double minutes) =>
            isKnown ? glow?.LuminanceMcdPerM2(minutes) ?? GlowBand.None : null;
    }

    private (GlowBand? Glow, bool IsKnown, string? Missing) GlowUnder(Criterion criterion)
    {
        var charge = criterion.Charge;
        if (
            charge.Lamp.Value is not { } lampName
            || charge.IlluminanceLx.Value is not double lx
            || charge.Minutes.Value is not double minutes
        )
        {
            return (null, false, MarkingTexts.ChargeNotKnown);
        }
        var loaded = predictor.Shelf.Lamp(lampName);
        string? fault =
            loaded.NotFound
            ?? (
                loaded.Material is { TakesIlluminance: false } dark
                    ? MarkingTexts.LuxOfADarkLamp(dark.Name)
                    : null
            );
        problems.AddRange(loaded.Problems.Except(problems));
        if (fault is not null)
        {
            problems.Add(new(criterion.Origin?.Path ?? criterion.Name, null, $"charge: {fault}"));
        }
        if (fault is not null || loaded.Material is not { } lamp)
        {
            return (null, false, fault ?? MarkingTexts.ChargeNotKnown);
        }
        if (!piece.HasPigment)
        {
            return (null, true, null);
        }
        var test = new LampCharge(lamp, lx, minutes);
        if (!glows.TryGetValue(test, out var glow))
        {
            glow = BandsOf([p => Tested(p, test)])[0];
            glows[test] = glow;
        }
        return (glow, true, null);
    }

    /// <summary>The room's own glow and those under all charges of criteria, whose light is one and the same.</summary>
    private GlowBand? Solve(IReadOnlyList<Criterion> criteria)
    {
        if (!piece.HasPigment)
        {
            return null;
        }
        LampCharge[] charges = [.. criteria.Select(c => ChargeOf(c.Charge)).OfType<LampCharge>().Distinct()];
        var bands = BandsOf([
            p => p,
            .. charges.Select<LampCharge, Func<Piece, Piece>>(c => p => Tested(p, c)),
        ]);
        for (int i = 0; i < charges.Length; i++)
        {
            glows[charges[i]] = bands[i + 1];
        }
        return bands[0];
    }

    /// <summary>Null where it is not known in all, or its lamp is not told by lux.</summary>
    private LampCharge? ChargeOf(CriterionCharge charge) =>
        charge.Lamp.Value is { } name
        && predictor.Shelf.Lamp(name).Material is { TakesIlluminance: true } lamp
        && charge is { IlluminanceLx.Value: { } lx, Minutes.Value: { } minutes }
            ? new(lamp, lx, minutes)
            : null;

    private IReadOnlyList<GlowBand> BandsOf(IReadOnlyList<Func<Piece, Piece>> charges)
    {
        stop.ThrowIfCancellationRequested();
        if (drawn?.Invoke(charges) is { } curves && curves[0].Length > 0)
        {
            var pour = PourOptics.Of(predictor.StackOf(piece));
            return
            [
                .. charges.Select(
                    (c, i) => new GlowBand(predictor.LikelyRun(c(piece), pour).Glow!, curves[i])
                ),
            ];
        }
        return [.. predictor.RunsOf([.. charges.Select(c => c(piece))]).Select(runs => new GlowBand(runs))];
    }

    private static Piece Tested(Piece piece, LampCharge test) =>
        Charged(piece, test.Lamp, test.Lx, test.Minutes, TestTemperatureC, TestTemperatureC);

    private static Piece Charged(
        Piece piece,
        Lamp lamp,
        double lx,
        double minutes,
        double chargeC,
        double darknessC
    ) =>
        piece with
        {
            Start = ChargeStart.Empty,
            Steps =
            [
                new(
                    OwnLeds: false,
                    lamp,
                    lamp.WPerM2NmAtLux(lx),
                    minutes,
                    chargeC,
                    string.Create(CultureInfo.InvariantCulture, $"{minutes} min by {lx} lx of {lamp.Name}")
                ),
            ],
            DarknessTemperatureC = darknessC,
        };

    private ChargeBridge? BridgeOf(GlowBand? room)
    {
        var last = piece.Steps.LastOrDefault(s => s.IsLit);
        if (room is null || last is null || predictor.Shelf.Lamp(Daylight).Material is not { } daylight)
        {
            return null;
        }
        double glowMcdPerM2 = room.Likely.Photopic.LuminanceMcdM2(BridgeMinutes);
        var underDaylight = new GlowBand(
            predictor.RunsOf(
                Charged(
                    piece,
                    daylight,
                    ChargeBridge.DaylightLx,
                    BridgeMinutes,
                    last.TemperatureC,
                    piece.DarknessTemperatureC
                )
            )
        ).Likely;
        return new()
        {
            ChargedBy = ChargeWords.Of(piece),
            TenMinuteMcdPerM2 = glowMcdPerM2,
            DaylightMinutes = underDaylight.ChargeMinutesTo(glowMcdPerM2 * (1 + SaturatedWithin)) is null
                ? null
                : underDaylight.ChargeMinutesTo(glowMcdPerM2),
            DaylightMinutesTo90Percent = underDaylight.ChargeMinutesTo90Percent,
            LuxHours = piece.Steps.Any(s => s.OwnLeds)
                ? null
                : piece.Steps.Sum(s =>
                    s.LampWPerM2Nm is { } light ? Photometry.PhotopicLm(light) * s.Minutes / 60 : 0
                ),
            MinutesTo90Percent = room.Likely.ChargeMinutesTo90Percent,
            LastLightMinutes = last.Minutes,
        };
    }

    private sealed record LampCharge(Lamp Lamp, double Lx, double Minutes);
}
