using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>A piece's traps charged by its recipe, and the glow that follows.</summary>
internal sealed class PieceGlow
{
    private readonly PieceLight light;
    private readonly ImmutableArray<PigmentTraps> pigments;
    private readonly (ChargedTraps Traps, double[] McdM2PerPhotonPerSMm3)[] weighted;

    private PieceGlow(PieceLight light, ImmutableArray<PigmentTraps> pigments)
    {
        this.light = light;
        this.pigments = pigments;
        var photopic = GlowWeights.McdPerM2(light.Glow!, light.Pour, Photometry.LmPerW);
        var scotopic = GlowWeights.McdPerM2(light.Glow!, light.Pour, Photometry.ScotopicLmPerW);
        Photopic = GlowCurve.Together([.. pigments.Select(p => p.Traps.Glow(p.Own(photopic)))]);
        Scotopic = GlowCurve.Together([.. pigments.Select(p => p.Traps.Glow(p.Own(scotopic)))]);
        weighted = [.. ImmutableArray.CreateRange(pigments, p => (p.Traps, p.Own(photopic)))];
        ChargeMinutesTo90Percent = ChargeTime.MinutesTo90Percent(weighted);
    }

    public GlowCurve Photopic { get; }

    public GlowCurve Scotopic { get; }

    public double? ChargeMinutesTo90Percent { get; }

    /// <summary>Traps filled of all traps when the light goes off, over the whole depth.</summary>
    public double CapacityFilledPercent
    {
        get
        {
            double filled = 0;
            double all = 0;
            foreach (var p in pigments)
            {
                double[] pigmentMm = Array.ConvertAll(p.Cells, light.PigmentMm);
                double traps = Total.Of(pigmentMm) * p.Ladder.CapacityPerMm3;
                filled += traps * p.Traps.CapacityFilledPercent(pigmentMm);
                all += traps;
            }
            return filled / all;
        }
    }

    /// <summary>The traps slice by slice when the light goes off.</summary>
    public IEnumerable<TrapFilling> Fillings
    {
        get
        {
            foreach (var p in pigments)
            {
                for (int i = 0; i < p.Cells.Length; i++)
                {
                    yield return new(
                        p.Traps.CapacityFilledPercentAt(i),
                        100 / (1 + light.PigmentOf(p.Cells[i]).TrapEmptyingByLight.Value)
                    );
                }
            }
        }
    }

    /// <summary>Traps filled of all traps of each cell of the pour when the light goes off, %.</summary>
    public double[] FilledPercentOfCells()
    {
        var filled = new double[light.Pour.Cells.Count];
        foreach (var p in pigments)
        {
            for (int i = 0; i < p.Cells.Length; i++)
            {
                filled[p.Cells[i]] = p.Traps.CapacityFilledPercentAt(i);
            }
        }
        return filled;
    }

    public double CapacityFilledBottomPercent => FilledPercentAt(0);

    public double CapacityFilledSurfacePercent => FilledPercentAt(light.Pour.Cells.Count - 1);

    /// <param name="light">The piece, with pigment.</param>
    /// <param name="ladderOf">The trap ladder of each of its pigments.</param>
    public static PieceGlow Of(PieceLight light, Func<Pigment, TrapLadder> ladderOf)
    {
        // By reference: to compare two pigments would be to compare every number of both.
        var cellsOf = new Dictionary<Pigment, List<int>>(ReferenceEqualityComparer.Instance);
        for (int cell = 0; cell < light.Pour.Cells.Count; cell++)
        {
            var pigment = light.PigmentOf(cell);
            if (!cellsOf.TryGetValue(pigment, out var cells))
            {
                cellsOf[pigment] = cells = [];
            }
            cells.Add(cell);
        }
        double[][] absorbed = [.. light.Piece.Steps.Select(step => AbsorbedIn(step, light))];
        var pigments = ImmutableArray.CreateBuilder<PigmentTraps>(cellsOf.Count);
        foreach (var (pigment, cells) in cellsOf)
        {
            pigments.Add(Charged(light, [.. cells], absorbed, ladderOf(pigment)));
        }
        return new(light, pigments.MoveToImmutable());
    }

    private static PigmentTraps Charged(PieceLight light, int[] cells, double[][] absorbed, TrapLadder ladder)
    {
        var programme = new ChargeProgramme(
            cells.Length,
            [
                .. light.Piece.Steps.Select(
                    (step, s) =>
                        step.IsLit
                            ? ChargeStep.Lit(
                                Array.ConvertAll(cells, c => absorbed[s][c]),
                                step.Minutes,
                                step.TemperatureC
                            )
                            : ChargeStep.Dark(step.Minutes, step.TemperatureC)
                ),
            ],
            light.Piece.Start,
            light.Piece.DarknessTemperatureC
        );
        return new(cells, ladder, programme.Charge(ladder));
    }

    /// <summary>Minutes of the last lit step's light alone that bring a luminance 10 minutes after it; null if none do.</summary>
    public double? ChargeMinutesTo(double luminanceMcdM2) =>
        ChargeTime.MinutesToLuminance(weighted, luminanceMcdM2);

    /// <summary>Light outside the piece some minutes after the last light, W/nm from each mm².</summary>
    public Spectrum EmittedWPerNmMm2(double minutes)
    {
        var firstPerS = new double[light.Pour.Cells.Count];
        foreach (var p in pigments)
        {
            var emitted = p.Traps.EmittedPerSMm3(minutes);
            for (int i = 0; i < emitted.Length; i++)
            {
                int c = p.Cells[i];
                firstPerS[c] = emitted[i] * light.PigmentMm(c) * light.YieldOf(c);
            }
        }
        return light.Glow!.EscapedWPerNm(firstPerS);
    }

    private static double[] AbsorbedIn(PieceStep step, PieceLight light)
    {
        var absorbed = new double[light.Pour.Cells.Count];
        if (step.OwnLeds)
        {
            AddTo(absorbed, light.LedAbsorbedPerSMm3);
        }
        if (step.LampWPerM2Nm is { } lamp)
        {
            AddTo(absorbed, PigmentExcitation.FromSky(light.Pour, 1e-6 * lamp, light.DarkFloor));
        }
        return absorbed;
    }

    private static void AddTo(double[] sum, double[] more)
    {
        for (int c = 0; c < sum.Length; c++)
        {
            sum[c] += more[c];
        }
    }

    private double FilledPercentAt(int cell)
    {
        var p = pigments.First(p => p.Cells.Contains(cell));
        return p.Traps.CapacityFilledPercentAt(Array.IndexOf(p.Cells, cell));
    }

    /// <summary>The cells of one pigment, its ladder and its traps.</summary>
    private sealed record PigmentTraps(int[] Cells, TrapLadder Ladder, ChargedTraps Traps)
    {
        public double[] Own(double[] ofAllCells) => Array.ConvertAll(Cells, c => ofAllCells[c]);
    }
}
