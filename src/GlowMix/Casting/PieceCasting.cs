using System.Collections.Immutable;
using GlowMix.Pieces;

namespace GlowMix.Casting;

/// <summary>A piece as the scale and the pour see it.</summary>
public static class PieceCasting
{
    /// <summary>What to mix for a piece, layer by layer.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="pieces">How many are poured from one mix of each layer, 1 or more.</param>
    public static CastingPlan PlanOf(Piece piece, int pieces = 1)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return CastingPlan.Of(
            PourOf(piece),
            [.. piece.Layers.Select(LayerOf)],
            ResinOf(piece),
            MixingOf(piece) with
            {
                Pieces = pieces,
            }
        );
    }

    internal static CastingPour PourOf(Piece piece) =>
        new()
        {
            LengthMm = piece.LengthMm,
            WidthMm = piece.WidthMm,
            PackageCount = piece.Count,
            PackageLengthMm = piece.Led.PackageLengthMm.Value,
            PackageWidthMm = piece.Led.PackageWidthMm.Value,
            PackageHeightMm = piece.Led.PackageHeightMm.Value,
        };

    internal static CastingResin ResinOf(Piece piece)
    {
        var resin = piece.Resin;
        return new(
            resin.DensityMixGPerCm3.Value,
            resin.MassShareOfPartA,
            new ResinFlow(
                ImmutableArray.CreateRange(resin.Viscosities, v => v.Value),
                ImmutableArray.CreateRange(resin.PotLives, p => p.Value),
                resin.GelTimeMin.Value
            )
        );
    }

    internal static Mixing MixingOf(Piece piece) =>
        new()
        {
            TemperatureC = piece.MixingTemperatureC,
            WastePercent = piece.WastePercent,
            VacuumMin = piece.VacuumMin,
            ResinPerKg = piece.Recipe.Prices.ResinPerKg,
            PigmentPerKg = piece.Recipe.Prices.PigmentPerKg,
        };

    internal static CastingLayer LayerOf(PieceLayer layer) =>
        new(
            layer.Name,
            layer.DepthMm,
            layer.Pigment is { } pigment
                ? new CastingPigment(
                    pigment.DensityGPerCm3.Value,
                    new GrainClasses(layer.GrainMedianUm, layer.GrainGsd),
                    GrainPacking.Crushed
                )
                : null,
            PigmentLoading.FromPercentByMass(layer.LoadingPercent)
        );
}
