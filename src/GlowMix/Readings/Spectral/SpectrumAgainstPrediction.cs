using System.Collections.Immutable;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Readings.Spectral;

/// <summary>A reading of a lit piece beside the prediction of its recipe.</summary>
public sealed record SpectrumAgainstPrediction
{
    // Ra and the like hang on the shape; what needs the whole piece or the bare board cannot be read off one spectrum.
    private static readonly (string Name, Func<ReadingFigures, double?> Read)[] Compared =
    [
        ("lit.cct_k", r => r.Colour.CctK),
        ("lit.duv", r => r.Colour.Duv),
        ("lit.x", r => r.Colour.ChromaticityX),
        ("lit.y", r => r.Colour.ChromaticityY),
        ("lit.u_prime", r => r.Colour.UPrime),
        ("lit.v_prime", r => r.Colour.VPrime),
        ("lit.ra", r => r.Colour.Ra),
        ("lit.r9", r => r.Colour.R9),
        ("lit.luminous_efficacy_lm_w", r => r.Colour.LuminousEfficacyLmPerW),
        ("lit.scotopic_photopic_ratio", r => r.Colour.ScotopicPhotopicRatio),
    ];

    private SpectrumAgainstPrediction(ReadingFigures reading, Prediction prediction, CauseSearch search)
    {
        Prediction = prediction;
        Figures =
        [
            .. Compared.Select(c =>
            {
                Figure figure = FigureCatalogue.Find(c.Name)!;
                Band band = prediction.Bands.FirstOrDefault(b => b.Key == figure).Value;
                return new FigureAgainst(
                    figure,
                    c.Read(reading),
                    new(band.Low, prediction.Figures[figure], band.High)
                );
            }),
        ];
        Difference = search.DifferenceNow;
        Causes = search.Found();
    }

    /// <summary>What was predicted.</summary>
    public Prediction Prediction { get; }

    /// <summary>Each figure that one spectrum tells, read and predicted.</summary>
    public ImmutableArray<FigureAgainst> Figures { get; }

    /// <summary>Share of the light that stands at other wavelengths than predicted, 0 to 1.</summary>
    public double Difference { get; }

    /// <summary>The difference is within what a spectrometer tells: under a hundredth of the light.</summary>
    public bool IsAsPredicted => Difference < 0.01;

    /// <summary>Causes that would explain it, the one that explains the most first; each alone.</summary>
    public ImmutableArray<CauseFound> Causes { get; }

    /// <summary>Puts a reading beside a prediction.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="prediction">The prediction of the piece.</param>
    /// <param name="piece">The piece, as the predictor let it pass.</param>
    /// <param name="predictor">Who predicted it.</param>
    public static SpectrumAgainstPrediction Of(
        ReadingFigures reading,
        Prediction prediction,
        Piece piece,
        Predictor predictor
    )
    {
        ArgumentNullException.ThrowIfNull(prediction);
        return new(reading, prediction, new CauseSearch(reading, piece, predictor));
    }
}
