using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Readings.Fit;

/// <summary>
/// Pours solved for the strengths of pigment and resin on a lattice, each once. Fits of the same pieces share them. Safe to use from
/// several threads.
/// </summary>
/// <param name="optics">The optics of the materials as they stand.</param>
internal sealed class FitPours(IOptics optics)
{
    private readonly ConditionalWeakTable<Piece, ConcurrentDictionary<FitNode, Lazy<PourOptics>>> pours = [];
    private readonly ConcurrentDictionary<(Pigment Pigment, int Step), Pigment> stronger = new();
    private readonly ConditionalWeakTable<Resin, ConcurrentDictionary<int, ResinOptics>> resins = [];

    /// <summary>The pour of a piece, were its materials as strong as a node says.</summary>
    public PourOptics Of(Piece piece, FitNode node) =>
        pours
            .GetValue(piece, _ => new())
            .GetOrAdd(node, n => new(() => PourOptics.Of(PieceLight.StackOf(piece, new NodeOptics(this, n)))))
            .Value;

    private sealed class NodeOptics(FitPours shelf, FitNode node) : IOptics
    {
        public ResinOptics Of(Resin resin) =>
            shelf
                .resins.GetValue(resin, _ => new())
                .GetOrAdd(
                    node.ResinStep,
                    step => shelf.Optics.Of(resin).WithAbsorptionScaled(FitLattice.ResinFactorAt(step))
                );

        public ClassedGrains GrainsOf(Pigment pigment, Resin resin, double medianUm, double gsd)
        {
            int step = node.StepOf(pigment.Name);
            var strong =
                step == 0
                    ? pigment
                    : shelf.stronger.GetOrAdd(
                        (pigment, step),
                        key =>
                            key.Pigment with
                            {
                                AbsorptionPerMm = key.Pigment.AbsorptionPerMm.Select(a =>
                                    FitLattice.StrengthAt(key.Step) * a
                                ),
                            }
                    );
            return shelf.Optics.GrainsOf(strong, resin, medianUm, gsd);
        }
    }

    private IOptics Optics { get; } = optics;
}
