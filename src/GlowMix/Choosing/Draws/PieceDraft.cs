using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>A piece's numbers in one draw, to be put in one after the other.</summary>
internal sealed class PieceDraft
{
    private const double LeastDepthMm = 0.01;
    private const double DensestVolumeFraction = 0.64;
    private const double LeastWidthMm = 0.1;

    // Indices are drawn in steps of 1e-4, so that directions are worked out once an index and not once a draw.
    private const double IndexSteps = 1e4;

    // A lamp's table begins somewhere on a slope: the level it begins with is the mean over its first 20 nm.
    private const int SamplesOfLevel = 20 / WavelengthGrid.StepNm;

    private readonly Piece piece;

    /// <param name="piece">The piece as it stands.</param>
    public PieceDraft(Piece piece)
    {
        this.piece = piece;
        ResinDensityGPerCm3 = piece.Resin.DensityMixGPerCm3.Value;
        GelTimeMin = piece.Resin.GelTimeMin.Value;
        MixingTemperatureC = piece.MixingTemperatureC;
        DriveMa = piece.DriveMa;
        LengthMm = piece.LengthMm;
        WidthMm = piece.WidthMm;
        DepthsMm = [.. piece.Layers.Select(l => l.DepthMm)];
        LoadingsPercent = [.. piece.Layers.Select(l => l.LoadingPercent)];
        GrainFactors = [.. piece.Layers.Select(_ => 1.0)];
        LampFactors = [.. piece.Steps.Select(_ => 1.0)];
        UnknownLevels = [.. piece.Steps.Select(_ => 0.0)];
        Pigments =
        [
            .. piece
                .Layers.Select(l => l.Pigment)
                .OfType<Pigment>()
                .Distinct(ReferenceEqualityComparer.Instance)
                .Cast<Pigment>()
                .Select(p => new PigmentDraft(p)),
        ];
    }

    public double ResinAbsorptionFactor { get; set; } = 1;

    public double ResinIndexShift { get; set; }

    public double ResinDensityGPerCm3 { get; set; }

    public double BoardFactor { get; set; } = 1;

    /// <summary>On the conversion by the packages; no more than their bare spectrum leaves room for.</summary>
    public double ReturnFactor { get; set; } = 1;

    /// <summary>On the viscosity of the fresh mix at any temperature.</summary>
    public double ViscosityFactor { get; set; } = 1;

    /// <summary>On the pot life of any mass.</summary>
    public double PotLifeFactor { get; set; } = 1;

    public double GelTimeMin { get; set; }

    public double MixingTemperatureC { get; set; }

    public double FluxFactor { get; set; } = 1;

    public double DriveMa { get; set; }

    public double? LengthMm { get; set; }

    public double? WidthMm { get; set; }

    /// <summary>Each layer's depth where it is as deep as stated, mm.</summary>
    public double[] DepthsMm { get; }

    /// <summary>Depth of the top layer at the place that is looked at, over that at mid-length, mm.</summary>
    public double PlaceMm { get; set; }

    public double[] LoadingsPercent { get; }

    /// <summary>On each layer's median grain.</summary>
    public double[] GrainFactors { get; }

    /// <summary>On the lamp of each step.</summary>
    public double[] LampFactors { get; }

    /// <summary>Light of each step's lamp below the start of its table, in units of the level there.</summary>
    public double[] UnknownLevels { get; }

    public IReadOnlyList<PigmentDraft> Pigments { get; }

    /// <summary>The piece of these numbers, with the optics of its materials.</summary>
    /// <param name="grains">Those of each layer.</param>
    /// <param name="streams">Directions by index.</param>
    public DrawnPiece Drawn(IReadOnlyList<GrainSpan?> grains, StreamShelf streams)
    {
        var resin = ResinOf();
        var pigments = Pigments.Select(d => (Draft: d, Pigment: d.Drawn())).ToArray();
        Pigment PigmentOf(Pigment own) => pigments.First(p => ReferenceEquals(p.Draft.Pigment, own)).Pigment;
        PieceLayer[] layers =
        [
            .. piece.Layers.Select(
                (l, i) => LayerOf(l, i, resin, l.Pigment is null ? null : PigmentOf(l.Pigment))
            ),
        ];
        var drawn = piece with
        {
            Resin = resin,
            Led = LedOf(resin),
            Board = BoardOf(),
            DriveMa = DriveMa,
            MixingTemperatureC = MixingTemperatureC,
            LengthMm = LengthMm is double length ? Math.Max(LeastWidthMm, length) : null,
            WidthMm = WidthMm is double width ? Math.Max(LeastWidthMm, width) : null,
            Layers = [.. layers],
            Steps = [.. piece.Steps.Select(StepOf)],
        };
        var optics = new DrawnOptics(resin, streams);
        for (int i = 0; i < layers.Length; i++)
        {
            if (grains[i] is { } ofLayer)
            {
                var draft = Pigments.First(p => ReferenceEquals(p.Pigment, piece.Layers[i].Pigment));
                optics.Add(
                    layers[i],
                    ofLayer.At(
                        draft.AbsorptionFactor,
                        layers[i].Pigment!.RefractiveIndex.Value,
                        resin.RefractiveIndex.Value,
                        GrainFactors[i]
                    )
                );
            }
        }
        return new(drawn, optics, [.. pigments]);
    }

    /// <summary>The resin of these numbers.</summary>
    public Resin ResinOf()
    {
        var resin = piece.Resin;
        return resin with
        {
            RefractiveIndex = resin.RefractiveIndex.Select(n =>
                ResinIndexShift == 0
                    ? n
                    : Spectrum.FromIndex(i => Math.Round((n[i] + ResinIndexShift) * IndexSteps) / IndexSteps)
            ),
            AbsorptionPerMm = resin.AbsorptionPerMm.Select(a => ResinAbsorptionFactor * a),
            DensityMixGPerCm3 = resin.DensityMixGPerCm3.Select(_ => ResinDensityGPerCm3),
            Viscosities =
            [
                .. resin.Viscosities.Select(row =>
                    row.Select(v => v with { MPaS = ViscosityFactor * v.MPaS })
                ),
            ],
            PotLives =
            [
                .. resin.PotLives.Select(row =>
                    row.Select(p => p with { Minutes = PotLifeFactor * p.Minutes })
                ),
            ],
            GelTimeMin = resin.GelTimeMin.Select(_ => GelTimeMin),
        };
    }

    private Led LedOf(Resin resin)
    {
        var led = piece.Led with { FluxLm = piece.Led.FluxLm.Select(lm => FluxFactor * lm) };
        if (ReturnFactor == 1)
        {
            return led;
        }
        double greatest = ReturnScale.Greatest(PieceLight.BandsOf(piece), resin.RefractiveIndex.Value);
        double factor = Math.Min(ReturnFactor, greatest);
        return led with { ReturnMatrix = led.ReturnMatrix.Select(m => ReturnScale.Scaled(m, factor)) };
    }

    private Board BoardOf() =>
        BoardFactor == 1
            ? piece.Board
            : piece.Board with
            {
                Reflectance = piece.Board.Reflectance.Select(r => BoardFactor * r),
            };

    private PieceLayer LayerOf(PieceLayer layer, int index, Resin resin, Pigment? pigment)
    {
        double place = index == piece.Layers.Length - 1 ? PlaceMm : 0;
        double depth = Math.Max(LeastDepthMm, DepthsMm[index] + place);
        return pigment is null
            ? layer with
            {
                DepthMm = depth,
            }
            : layer with
            {
                DepthMm = depth,
                Pigment = pigment,
                LoadingPercent = LoadingsPercent[index],
                VolumeFraction = Math.Min(
                    DensestVolumeFraction,
                    VolumeFraction.FromMass(
                        LoadingsPercent[index] / 100,
                        pigment.DensityGPerCm3.Value,
                        resin.DensityMixGPerCm3.Value
                    )
                ),
                GrainMedianUm = layer.GrainMedianUm * GrainFactors[index],
            };
    }

    private PieceStep StepOf(PieceStep step, int index)
    {
        if (step.LampWPerM2Nm is not { } light || (LampFactors[index] == 1 && UnknownLevels[index] == 0))
        {
            return step;
        }
        int start = Math.Max(
            0,
            (int)Math.Ceiling((step.Lamp!.StartsAtNm - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm)
        );
        double level = 0;
        for (int i = start; i < start + SamplesOfLevel; i++)
        {
            level += light[i] / SamplesOfLevel;
        }
        return step with
        {
            LampWPerM2Nm = Spectrum.FromIndex(i =>
                LampFactors[index] * (i < start ? UnknownLevels[index] * level : light[i])
            ),
        };
    }
}
