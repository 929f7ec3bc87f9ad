using GlowMix.Materials;
using GlowMix.Readings.Fit;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Readings.Fit;

public sealed class FitLatticeTests
{
    [Theory]
    [InlineData(1.1, 1)]
    [InlineData(1.5, 1.9)]
    [InlineData(0.62, 0.4)]
    public void Readings_between_nodes_are_those_of_a_piece_of_that_strength(double strength, double resin)
    {
        var piece = HiddenTruth.PieceOf(
            new TestRecipe { WindowShare = 0.15, Steps = TestRecipe.Lamp("daylight-d65", 300, 10) }
        );
        var truth = new HiddenTruth { Strength = strength, ResinFactor = resin }.RunOf(piece);
        double[] minutes = [1, 10, 100];
        var state = new FitState(
            piece,
            piece.Led,
            new FitPours(TestRecipe.Predictor.Optics),
            p => TestRecipe.Predictor.LadderOf(p).Fit!.Ladder!
        );
        var pigment = piece.Layers[0].Pigment!;
        var draft = new FitDraft(piece.Led, [pigment]) { ResinFactor = resin };
        draft.Of(pigment).Strength = strength;
        double[] ratios = state.LogRatios(draft);
        // From 430 nm on: below, a shipped LED sends next to nothing.
        for (int i = 18; i < ratios.Length; i++)
        {
            double expected = Math.Log(truth.Light.LitWPerNm[i] / truth.Light.BareWPerNm[i]);
            Assert.Equal(expected, ratios[i], 3e-4);
        }
        double[] luminances = state.LogLuminances(draft, minutes, middleMinutes: 10);
        for (int i = 0; i < minutes.Length; i++)
        {
            double expected = Math.Log(truth.Glow!.Photopic.LuminanceMcdM2(minutes[i]));
            Assert.Equal(expected, luminances[i], 3e-4);
        }
    }

    [Fact]
    public void Materials_as_they_stand_need_no_other_node()
    {
        var (node, weight) = Assert.Single(FitLattice.Around(new FitDraft(Led, []), []));
        Assert.Equal(0, node.ResinStep);
        Assert.Equal(1, weight);
    }

    private static Led Led => new Shelf().Led("warm-white-3000").Material!;
}
