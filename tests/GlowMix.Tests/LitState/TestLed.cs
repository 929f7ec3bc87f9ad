using GlowMix.Colour;
using GlowMix.LitState;
using GlowMix.Spectra;

namespace GlowMix.Tests.LitState;

/// <summary>A white LED of the shapes in the design, its powers solved so that the bare colour lies on the Planckian locus.</summary>
internal static class TestLed
{
    public const double WindowRadiusMm = 1.15;

    public static LedBands At(double cctK, double offDiagonal = 1)
    {
        Spectrum[] shapes = [Band(450, 20, 20), Band(535, 80, 130), Band(620, 80, 110)];
        var white = ColourPoint.Of(PlanckRadiator.OnModelGrid(cctK)).Tristimulus;
        var xyz = shapes.Select(s => ColourPoint.Of(s).Tristimulus).ToArray();
        var matrix = MathNet.Numerics.LinearAlgebra.Double.DenseMatrix.OfArray(
            new[,]
            {
                { xyz[0].X, xyz[1].X, xyz[2].X },
                { xyz[0].Y, xyz[1].Y, xyz[2].Y },
                { xyz[0].Z, xyz[1].Z, xyz[2].Z },
            }
        );
        var watts = matrix.Solve(
            MathNet.Numerics.LinearAlgebra.Double.DenseVector.OfArray([white.X, white.Y, white.Z])
        );
        double scale = 1 / watts.Sum();
        var returned = new[,]
        {
            { 0.25, 0, 0 },
            { 0.25 * offDiagonal, 0.60, 0 },
            { 0.20 * offDiagonal, 0.30 * offDiagonal, 0.90 },
        };
        return new LedBands(shapes, [.. watts.Select(w => w * scale)], returned, WindowRadiusMm);
    }

    private static Spectrum Band(double peakNm, double shortFwhmNm, double longFwhmNm)
    {
        var raw = Spectrum.FromNm(nm =>
            Math.Exp(-4 * Math.Log(2) * Math.Pow((nm - peakNm) / (nm < peakNm ? shortFwhmNm : longFwhmNm), 2))
        );
        return 1 / raw.IntegralOverNm() * raw;
    }
}
