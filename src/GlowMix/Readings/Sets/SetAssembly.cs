using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Readings.Files;
using GlowMix.Readings.Fit;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Readings.Sets;

/// <summary>Reads the files of a set and puts the pieces together that they are of.</summary>
public sealed class SetAssembly
{
    private const int FewestPoints = 3;

    private readonly ReadingsSet set;
    private readonly Predictor predictor;
    private readonly Func<string, FileBytes> open;
    private readonly List<Problem> problems = [];
    private readonly List<CalibratedReading> hashes = [];
    private readonly Dictionary<string, Piece?> pieces = [];

    private SetAssembly(ReadingsSet set, Predictor predictor, Func<string, FileBytes> open) =>
        (this.set, this.predictor, this.open) = (set, predictor, open);

    /// <summary>Reads everything that a fit starts from.</summary>
    /// <param name="document">The recipe. A calibration that it names already is left out of account.</param>
    /// <param name="set">The readings.</param>
    /// <param name="predictor">Who predicts the recipe.</param>
    /// <param name="open">Opens a file of the set by its path there.</param>
    public static AssembledSet Of(
        RecipeDocument document,
        ReadingsSet set,
        Predictor predictor,
        Func<string, FileBytes> open
    )
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(predictor);
        ArgumentNullException.ThrowIfNull(open);
        if (document.Recipe is not { } recipe)
        {
            return new(null, document.Problems, []);
        }
        return new SetAssembly(set, predictor, open).Assemble(
            recipe with
            {
                CalibrationPath = null,
                Targets = [],
                CriteriaNames = [],
            }
        );
    }

    private AssembledSet Assemble(Recipe recipe)
    {
        foreach (var (place, text) in ReadingsSetReader.WrongWith(set))
        {
            problems.Add(new(set.Name, place, text));
        }
        var whole = predictor.CheckChanged(recipe);
        problems.AddRange(whole.Problems);
        if (whole.Piece is not { } piece)
        {
            return Result(null);
        }
        TabulatedSpectrum? bare = null;
        bool isCorrected = false;
        var lit = ImmutableArray.CreateBuilder<LitReading>();
        var glows = ImmutableArray.CreateBuilder<GlowReading>();
        foreach (var reading in set.Readings)
        {
            string state = SetTexts.StateOf(reading);
            if (reading.State == ReadingState.Bare)
            {
                if (SpectrumOf(reading) is { } spectrum)
                {
                    bare = spectrum.Spectrum;
                    isCorrected = set.IsCorrected ?? spectrum.IsColourTrustworthy;
                    if (!isCorrected)
                    {
                        Warn(reading, SetTexts.RawCounts);
                    }
                }
                continue;
            }
            var poured = PieceOf(recipe, reading, piece);
            if (reading.State == ReadingState.Decay)
            {
                if (GlowOf(reading, state, poured) is { } glow)
                {
                    glows.Add(glow);
                }
            }
            else if (SpectrumOf(reading) is { } spectrum && poured is not null)
            {
                lit.Add(new(reading.File, state, poured, spectrum.Spectrum));
            }
        }
        return Result(
            new FitReadings
            {
                Piece = piece,
                Bare = bare,
                IsCorrected = isCorrected,
                ComparablePercent = set.ComparablePercent,
                Lit = lit.ToImmutable(),
                Glows = glows.ToImmutable(),
            }
        );
    }

    private AssembledSet Result(FitReadings? readings) =>
        new(problems.Exists(p => p.Severity == Severity.Error) ? null : readings, [.. problems], [.. hashes]);

    // Readings of one piece share it, so that its pour is solved once.
    private Piece? PieceOf(Recipe recipe, SetReading reading, Piece whole)
    {
        var (poured, problem) = RecipeState.Of(
            recipe,
            reading,
            whole.Led.PackageHeightMm.Value,
            whole.Led.Name
        );
        if (poured is null)
        {
            Refuse(reading, problem!);
            return null;
        }
        string key = string.Join('|', poured.Layers);
        bool hasOwnCharge = reading.Charge is not null || reading.DarknessTemperatureC is not null;
        if (!hasOwnCharge && pieces.TryGetValue(key, out var known))
        {
            return known;
        }
        var found = predictor.CheckChanged(poured);
        problems.AddRange(found.Problems.Except(problems));
        if (!hasOwnCharge)
        {
            pieces[key] = found.Piece;
        }
        return found.Piece;
    }

    private SpectralReading? SpectrumOf(SetReading reading)
    {
        var options = ReadingOptions.Found with
        {
            Kind = ReadingKind.Spectrum,
            IsCorrected = set.IsCorrected,
        };
        return Read(reading, options)?.Spectrum;
    }

    private GlowReading? GlowOf(SetReading reading, string state, Piece? poured)
    {
        var outcome = Read(
            reading,
            ReadingOptions.Found with
            {
                Kind = ReadingKind.Decay,
                DisplayStep = reading.DisplayStep,
                DarkFromMinutes = reading.DarkFromMinutes,
            }
        );
        if (outcome?.Decay is not { } decay)
        {
            return null;
        }
        if (decay.Unit == DecayUnit.Lux)
        {
            if (reading.Geometry is not { } geometry)
            {
                Refuse(reading, SetTexts.NoGeometry);
                return null;
            }
            decay = geometry.ToLuminance(decay);
        }
        if (decay.Unit == DecayUnit.Relative)
        {
            Warn(reading, SetTexts.RelativeDecay);
        }
        ImmutableArray<SheetPoint> points =
        [
            .. Enumerable
                .Range(0, decay.Minutes.Length)
                .Where(decay.IsUsable)
                .Select(i => new SheetPoint(decay.Minutes[i], decay.Values[i])),
        ];
        if (points.Length < FewestPoints)
        {
            Refuse(reading, SetTexts.TooFewPoints(points.Length));
            return null;
        }
        return poured is null
            ? null
            : new(
                reading.File,
                state,
                poured,
                points,
                reading.NoisePercent ?? GlowReading.UsualNoisePercent,
                decay.DisplayStep,
                decay.Unit == DecayUnit.Relative
            );
    }

    private ReadingOutcome? Read(SetReading reading, ReadingOptions options)
    {
        var file = open(reading.File);
        if (file.Problem is { } unreadable)
        {
            problems.Add(unreadable);
            return null;
        }
        hashes.Add(new(reading.File, SetTexts.StateOf(reading), Sha256.Of(file.Bytes.Span)));
        var outcome = ReadingFile.Read(file, options);
        problems.AddRange(outcome.Problems);
        return outcome;
    }

    private void Refuse(SetReading reading, string text) =>
        problems.Add(new(set.Name, reading.Place, $"{reading.File}: {text}"));

    private void Warn(SetReading reading, string text) =>
        problems.Add(new(set.Name, reading.Place, $"{reading.File}: {text}", Severity.Warning));
}
