using GlowMix.Colour;

namespace GlowMix.Tests.Colour;

public class NominalWhiteTests
{
    // ANSI C78.377: nominal CCT, target CCT and tolerance (K, from memory), Duv of the centre in 2008 and in 2015.
    public static TheoryData<int, double, double, double, double> Targets =>
        new()
        {
            { 2700, 2725, 145, 0.000, 0.0000 },
            { 3000, 3045, 175, 0.000, 0.0001 },
            { 3500, 3465, 245, 0.000, 0.0005 },
            { 4000, 3985, 275, 0.001, 0.0010 },
            { 4500, 4503, 243, 0.001, 0.0015 },
            { 5000, 5028, 283, 0.002, 0.0020 },
            { 5700, 5665, 355, 0.002, 0.0025 },
            { 6500, 6530, 510, 0.003, 0.0031 },
        };

    [Theory, MemberData(nameof(Targets))]
    public void Corners_of_2008_lie_at_the_tolerance_of_CCT_and_0_006_of_Duv(
        int nominalK,
        double targetK,
        double toleranceK,
        double duv2008,
        double duv2015
    )
    {
        _ = duv2015;
        AssertCorners(NominalWhiteEdition.Ansi2008, nominalK, targetK, toleranceK, _ => duv2008, 3, 1e-4);
    }

    [Theory, MemberData(nameof(Targets))]
    public void Corners_of_2015_lie_at_the_tolerance_of_CCT_and_0_006_of_Duv(
        int nominalK,
        double targetK,
        double toleranceK,
        double duv2008,
        double duv2015
    )
    {
        _ = duv2008;
        Assert.Equal(duv2015, CentreDuv2015(targetK), 0.000051);
        AssertCorners(NominalWhiteEdition.Ansi2015, nominalK, targetK, toleranceK, CentreDuv2015, 5, 2e-4);
    }

    [Fact]
    public void Centres_of_2015_follow_the_formula_of_the_standard()
    {
        foreach (NominalWhite white in NominalWhite.All(NominalWhiteEdition.Ansi2015))
        {
            CorrelatedColourTemperature centre = CorrelatedColourTemperature.Of(white.Centre)!.Value;
            Assert.Equal(CentreDuv2015(centre.CctK), centre.Duv, 1e-4);
        }
    }

    [Theory]
    [InlineData(NominalWhiteEdition.Ansi2008)]
    [InlineData(NominalWhiteEdition.Ansi2015)]
    public void Each_centre_lies_inside_its_own_quadrangle_and_is_nearest_to_it(NominalWhiteEdition edition)
    {
        Assert.Equal(
            [2700, 3000, 3500, 4000, 4500, 5000, 5700, 6500],
            NominalWhite.All(edition).Select(white => white.NominalCctK)
        );
        foreach (NominalWhite white in NominalWhite.All(edition))
        {
            Assert.Equal((white, true), NominalWhite.Nearest(white.Centre, edition));
            Assert.Equal(edition, white.Edition);
        }
    }

    [Theory]
    [InlineData(2700, 0.02)]
    [InlineData(3000, 0.02)]
    [InlineData(4000, -0.02)]
    [InlineData(6500, 0.02)]
    public void A_tinted_white_is_nearest_to_the_name_of_its_CCT_but_not_inside(int nominalK, double duv)
    {
        Chromaticity foot = PlanckianLocus.AtK(nominalK);
        (double du, double dv) = PlanckianLocusTests.Tangent(nominalK);
        double length = Math.Sqrt((du * du) + (dv * dv));
        (NominalWhite white, bool inside) = NominalWhite.Nearest(
            Chromaticity.FromUv1960(foot.U + (duv * dv / length), foot.V - (duv * du / length))
        );
        Assert.Equal(nominalK, white.NominalCctK);
        Assert.False(inside);
    }

    [Fact]
    public void Going_round_the_corners_the_edges_belong_to_the_quadrangle()
    {
        NominalWhite white = NominalWhite.All(NominalWhiteEdition.Ansi2015)[1];
        Assert.All(white.Corners, corner => Assert.True(white.Contains(corner)));
        Assert.False(white.Contains(Chromaticity.FromXy(0.3, 0.3)));
    }

    /// <summary>Edition 2015 (from memory): the middle line, at a corner's own CCT too.</summary>
    private static double CentreDuv2015(double cctK) =>
        cctK < 2870 ? 0 : (57700 / (cctK * cctK)) - (44.6 / cctK) + 0.00854;

    private static void AssertCorners(
        NominalWhiteEdition edition,
        int nominalK,
        double targetK,
        double toleranceK,
        Func<double, double> centreDuvAtK,
        double withinK,
        double withinDuv
    )
    {
        NominalWhite white = NominalWhite.All(edition).Single(w => w.NominalCctK == nominalK);
        (double CctK, double Duv)[] corners =
        [
            .. white
                .Corners.Select(corner => CorrelatedColourTemperature.Of(corner)!.Value)
                .Select(c => (c.CctK, c.Duv)),
        ];
        // In the standard's order: warm and green, cool and green, cool and pink, warm and pink.
        (double, double)[] expected =
        [
            (targetK - toleranceK, centreDuvAtK(targetK - toleranceK) + 0.006),
            (targetK + toleranceK, centreDuvAtK(targetK + toleranceK) + 0.006),
            (targetK + toleranceK, centreDuvAtK(targetK + toleranceK) - 0.006),
            (targetK - toleranceK, centreDuvAtK(targetK - toleranceK) - 0.006),
        ];
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(expected[i].Item1, corners[i].CctK, withinK);
            Assert.Equal(expected[i].Item2, corners[i].Duv, withinDuv);
        }
        CorrelatedColourTemperature centre = CorrelatedColourTemperature.Of(white.Centre)!.Value;
        Assert.Equal(targetK, centre.CctK, withinK);
        Assert.Equal(centreDuvAtK(targetK), centre.Duv, withinDuv);
    }
}
