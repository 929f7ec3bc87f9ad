namespace GlowMix.Predictions;

/// <summary>All that is foretold of one recipe. A value: computing it again gives the same.</summary>
public sealed record Prediction
{
    /// <summary>The recipe's name, as given by the caller (a file's name).</summary>
    public required string Recipe { get; init; }

    /// <summary>The recipe's title.</summary>
    public required string Title { get; init; }

    /// <summary>Figures with every number as it stands.</summary>
    public required FigureValues Figures { get; init; }

    /// <summary>Bands of the figures that have one (tint and afterglow), by figure, in catalogue order.</summary>
    public required IReadOnlyList<KeyValuePair<Figure, Band>> Bands { get; init; }

    /// <summary>Heaviest first.</summary>
    public required IReadOnlyList<Warning> Warnings { get; init; }

    /// <summary>What the recipe left open and was taken as: 'white board', 'LEDs at rated current'. May be empty.</summary>
    public required IReadOnlyList<string> TakenAs { get; init; }

    /// <summary>The readings behind its materials, in words: 'a.calibration.yaml of 2026-03-31, 5 readings'; null without.</summary>
    public string? CalibratedBy { get; init; }

    /// <summary>Numbers without a source that matter most, first to calibrate first.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>Spectra for plots.</summary>
    public required LitSpectra Spectra { get; init; }

    /// <summary>Decay with band; null without pigment.</summary>
    public required DecayCurve? Decay { get; init; }

    /// <summary>The cut through the pour, for pictures; null where none was made.</summary>
    public PieceCut? Cut { get; init; }

    /// <summary>The recipe's own visibility limit, mcd/m².</summary>
    public required double LimitMcdPerM2 { get; init; }

    /// <summary>All layers together, mm over the board.</summary>
    public required double DepthOverBoardMm { get; init; }

    /// <summary>What of it lies over the LED packages, mm; 0 where the packages stay in air.</summary>
    public required double DepthOverPackagesMm { get; init; }

    /// <summary>Whether the shift is counted from the piece's number of LEDs: false where the recipe gives no count.</summary>
    public required bool HasCount { get; init; }

    /// <summary>How the piece was charged, in words: '8 h by its own LEDs, from empty traps'.</summary>
    public required string ChargedBy { get; init; }

    /// <summary>What holds the glow back most, in a few words; null without pigment.</summary>
    public required string? LimitedBy { get; init; }

    /// <summary>Whether Ra is within its method's limit.</summary>
    public required bool RaMeaningful { get; init; }

    /// <summary>Loading per pigmented layer, said in words by the console.</summary>
    public required IReadOnlyList<LayerLoading> Loadings { get; init; }

    /// <summary>Shallow end, stated depth, deep end of a pour that runs out of level; empty where it is level.</summary>
    public IReadOnlyList<AlongPlace> Along { get; init; } = [];

    /// <summary>The recipe's targets in its order, as far as they were judged.</summary>
    public IReadOnlyList<TargetVerdict> Targets { get; init; } = [];

    /// <summary>Draws behind the bands; 0 where they are those of the bounding runs.</summary>
    public int DrawCount { get; init; }
}
