using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>All numbers of a piece that may turn out otherwise: by the recipe's tolerances, and by what its materials say of themselves.</summary>
/// <remarks>
/// A layer's depth is drawn as one for the whole length. A pour that runs out of level is looked at in one place, drawn anywhere
/// along it, the same place for every figure of a draw. A sheet's own sample and lamp are not drawn.
/// </remarks>
internal sealed class Doubts
{
    private const double LeastIndex = 1;
    private const double MostIndex = 2;
    private const double MostPigmentIndex = 3;
    private const double MostLoadingPercent = 80;
    private const double LeastDepthMm = 0.01;
    private const double LeastGrainUm = 0.1;
    private const double MostGrainUm = 300;
    private const double MostExponent = 2;
    private const double LeastExponent = -1;
    private const double LeastFlow = 0.1; // of what a resin's sheet tells
    private const double LeastMixingC = 0;
    private const double MostMixingC = 80;
    private const double LeastSmoothing = 1e-3;
    private const double MostSmoothing = 1;

    /// <summary>What a lamp may send below its table, as a share of the level it begins with, two standard deviations up. Assumed.</summary>
    private const double UnknownLevel = 1;

    private readonly Piece piece;
    private readonly ImmutableArray<DoubtfulNumber>.Builder numbers =
        ImmutableArray.CreateBuilder<DoubtfulNumber>();

    private Doubts(Piece piece) => this.piece = piece;

    /// <summary>The numbers in doubt, in an order that only the recipe and its materials decide.</summary>
    public static ImmutableArray<DoubtfulNumber> Of(Piece piece)
    {
        var doubts = new Doubts(piece);
        // The heaviest first: the first dimensions of a Sobol sequence are the most evenly spread.
        for (int i = 0; i < new PieceDraft(piece).Pigments.Count; i++)
        {
            doubts.AddPigment(i);
        }
        if (piece.DepthOverPackagesMm > 0 || piece.HasPigment)
        {
            doubts.AddPackages();
            doubts.AddBoard();
            doubts.AddResin();
        }
        doubts.AddLayers();
        doubts.AddLight();
        doubts.AddPouring();
        doubts.AddCharge();
        return doubts.numbers.ToImmutable();
    }

    private void AddPigment(int index)
    {
        var pigment = new PieceDraft(piece).Pigments[index].Pigment;
        var layers = piece.Layers.Where(l => l.HasPigment && ReferenceEquals(l.Pigment, pigment)).ToArray();
        if (layers.Length == 0)
        {
            return;
        }
        PigmentDraft Draft(PieceDraft draft) => draft.Pigments[index];
        Add(
            CauseTexts.PigmentAbsorption(pigment.Name),
            Spread.Of(pigment.AbsorptionPerMm.Doubt, 1, 0),
            (draft, v) => Draft(draft).AbsorptionFactor = v
        );
        var traps = CauseTexts.Traps(pigment.Name);
        Add(
            traps,
            Spread.Of(pigment.TrapCapacityPerG.Doubt, pigment.TrapCapacityPerG.Value, 0),
            (draft, v) => Draft(draft).CapacityPerG = v
        );
        Add(
            traps,
            Spread.BetweenInLog(
                LadderFit.LikelySmoothing,
                LadderFit.LooseSmoothing,
                LadderFit.StiffSmoothing,
                LeastSmoothing,
                MostSmoothing
            ),
            (draft, v) => Draft(draft).LadderSmoothing = v
        );
        Add(
            traps,
            Spread.Of(
                pigment.TrapWeightExponent.Doubt,
                pigment.TrapWeightExponent.Value,
                LeastExponent,
                MostExponent
            ),
            (draft, v) => Draft(draft).WeightExponent = v
        );
        double lineD = IndexDoubt.AtLineD(pigment.RefractiveIndex.Value);
        Add(
            CauseTexts.PigmentIndex(pigment.Name),
            Spread.Of(pigment.RefractiveIndex.Doubt, lineD, LeastIndex, MostPigmentIndex),
            (draft, v) => Draft(draft).IndexShift = v - lineD
        );
        Add(
            CauseTexts.PigmentYield(pigment.Name),
            Spread.Of(pigment.PhotoluminescenceYield.Doubt, pigment.PhotoluminescenceYield.Value, 0, 1),
            (draft, v) => Draft(draft).Yield = v
        );
    }

    private void AddPackages()
    {
        if (piece.DepthOverPackagesMm <= 0)
        {
            return;
        }
        double greatest = ReturnScale.Greatest(PieceLight.BandsOf(piece), piece.Resin.RefractiveIndex.Value);
        Add(
            CauseTexts.PackageReturn(piece.Led.Name),
            Spread.Of(piece.Led.ReturnMatrix.Doubt, 1, 0, Math.Max(1, greatest)),
            (draft, v) => draft.ReturnFactor = v
        );
    }

    private void AddBoard()
    {
        double brightest = 0;
        foreach (double share in piece.Board.Reflectance.Value.Samples)
        {
            brightest = Math.Max(brightest, share);
        }
        Add(
            CauseTexts.Board(piece.Board.Name),
            Spread.Of(piece.Board.Reflectance.Doubt, 1, 0, brightest > 0 ? 1 / brightest : 1),
            (draft, v) => draft.BoardFactor = v
        );
    }

    private void AddResin()
    {
        var resin = piece.Resin;
        Add(
            CauseTexts.ResinAbsorption(resin.Name),
            Spread.Of(resin.AbsorptionPerMm.Doubt, 1, 0),
            (draft, v) => draft.ResinAbsorptionFactor = v
        );
        double lineD = IndexDoubt.AtLineD(resin.RefractiveIndex.Value);
        Add(
            CauseTexts.ResinIndex(resin.Name),
            Spread.Of(resin.RefractiveIndex.Doubt, lineD, LeastIndex, MostIndex),
            (draft, v) => draft.ResinIndexShift = v - lineD
        );
    }

    private void AddLayers()
    {
        var recipe = piece.Recipe;
        for (int i = 0; i < piece.Layers.Length; i++)
        {
            int layer = i;
            var own = piece.Layers[i];
            var told = recipe.Layers[i];
            AddWithin(
                CauseTexts.Depths,
                own.DepthMm,
                told.DepthToleranceMm,
                LeastDepthMm,
                (draft, v) => draft.DepthsMm[layer] = v
            );
            if (!own.HasPigment)
            {
                continue;
            }
            AddWithin(
                CauseTexts.Loadings,
                own.LoadingPercent,
                told.LoadingTolerancePoints,
                0,
                (draft, v) => draft.LoadingsPercent[layer] = v,
                MostLoadingPercent
            );
            if (told.GrainToleranceFactor is > 1 and double factor)
            {
                Add(
                    CauseTexts.Grains,
                    Spread.ByFactor(
                        1,
                        factor,
                        LeastGrainUm / own.GrainMedianUm,
                        MostGrainUm / own.GrainMedianUm
                    ),
                    (draft, v) => draft.GrainFactors[layer] = v
                );
            }
        }
        if (recipe.Pour.RunsOutMm is > 0 and double runsOut)
        {
            Add(CauseTexts.Depths, Spread.Evenly(-runsOut / 2, runsOut / 2), (draft, v) => draft.PlaceMm = v);
        }
        if (piece.HasPigment)
        {
            Add(
                CauseTexts.Loadings,
                Spread.Of(piece.Resin.DensityMixGPerCm3.Doubt, piece.Resin.DensityMixGPerCm3.Value, 0.1),
                (draft, v) => draft.ResinDensityGPerCm3 = v
            );
        }
    }

    private void AddLight()
    {
        double fluxLm = piece.Led.FluxLm.Value;
        Add(
            CauseTexts.LedLight(piece.Led.Name),
            Spread.Of(piece.Led.FluxLm.Doubt, fluxLm, 0),
            (draft, v) => draft.FluxFactor = v / fluxLm
        );
        AddWithin(
            CauseTexts.LedLight(piece.Led.Name),
            piece.DriveMa,
            piece.DriveMa * piece.Recipe.Led.DriveTolerancePercent / 100,
            0,
            (draft, v) => draft.DriveMa = v,
            piece.Led.MaxMa.Value
        );
        if (piece.HasSize)
        {
            AddWithin(
                CauseTexts.Size,
                piece.LengthMm!.Value,
                piece.Recipe.Pour.LengthToleranceMm,
                0,
                (draft, v) => draft.LengthMm = v
            );
            AddWithin(
                CauseTexts.Size,
                piece.WidthMm!.Value,
                piece.Recipe.Pour.WidthToleranceMm,
                0,
                (draft, v) => draft.WidthMm = v
            );
        }
    }

    private void AddPouring()
    {
        if (!piece.HasPigment || !piece.IsSettled)
        {
            return;
        }
        var resin = piece.Resin;
        var viscosity = resin.Viscosities.FirstOrDefault(v => !v.Doubt.IsNone) ?? resin.Viscosities[0];
        Add(
            CauseTexts.Pouring,
            Spread.Of(viscosity.Doubt, viscosity.Value.MPaS, LeastFlow * viscosity.Value.MPaS),
            (draft, v) => draft.ViscosityFactor = v / viscosity.Value.MPaS
        );
        var potLife = resin.PotLives.FirstOrDefault(p => !p.Doubt.IsNone) ?? resin.PotLives[0];
        Add(
            CauseTexts.Pouring,
            Spread.Of(potLife.Doubt, potLife.Value.Minutes, LeastFlow * potLife.Value.Minutes),
            (draft, v) => draft.PotLifeFactor = v / potLife.Value.Minutes
        );
        Add(
            CauseTexts.Pouring,
            Spread.Of(resin.GelTimeMin.Doubt, resin.GelTimeMin.Value, LeastFlow * resin.GelTimeMin.Value),
            (draft, v) => draft.GelTimeMin = v
        );
        AddWithin(
            CauseTexts.Pouring,
            piece.MixingTemperatureC,
            piece.Recipe.Mixing.TemperatureToleranceC,
            LeastMixingC,
            (draft, v) => draft.MixingTemperatureC = v,
            MostMixingC
        );
    }

    private void AddCharge()
    {
        if (!piece.HasPigment)
        {
            return;
        }
        for (int i = 0; i < piece.Recipe.Charge.Steps.Length; i++)
        {
            int step = i;
            var told = piece.Recipe.Charge.Steps[i];
            double? percent = told.IlluminanceTolerancePercent ?? told.IrradianceTolerancePercent;
            AddWithin(CauseTexts.Lamps, 1, percent / 100, 0, (draft, v) => draft.LampFactors[step] = v);
        }
        foreach (
            var lamp in piece.Steps.Select(s => s.Lamp).Where(l => l?.LacksNearUltraviolet == true).Distinct()
        )
        {
            int[] steps =
            [
                .. Enumerable.Range(0, piece.Steps.Length).Where(i => piece.Steps[i].Lamp == lamp),
            ];
            Add(
                CauseTexts.NearUltraviolet(lamp!.Name),
                Spread.Between(0, 0, UnknownLevel, 0),
                (draft, v) =>
                {
                    foreach (int step in steps)
                    {
                        draft.UnknownLevels[step] = v;
                    }
                }
            );
        }
    }

    private void AddWithin(
        Cause cause,
        double likely,
        double? tolerance,
        double least,
        Action<PieceDraft, double> put,
        double most = double.PositiveInfinity
    )
    {
        if (tolerance is > 0 and double told)
        {
            Add(cause, Spread.Within(likely, told, least, most), put);
        }
    }

    private void Add(Cause cause, Spread? spread, Action<PieceDraft, double> put)
    {
        if (spread is { } s)
        {
            numbers.Add(new(cause, s, put));
        }
    }
}
