using GlowMix.LitState;
using GlowMix.Optics;

namespace GlowMix.Tests.LitState;

public class PackageReturnTests
{
    private const double RadiusMm = 1.15;

    [Theory]
    [InlineData(1.4)]
    [InlineData(1.5)]
    [InlineData(1.57)]
    public void Without_depth_all_of_it_lands_on_the_package(double index) =>
        Assert.Equal(1, PackageReturn.Share(0, RadiusMm, index), tolerance: 1e-15);

    // The same integral by the midpoint rule on 40 000 points, in another language.
    [Theory]
    [InlineData(0.05, 1.5, 0.8794150593)]
    [InlineData(0.3, 1.5, 0.4377359945)]
    [InlineData(1, 1.5, 0.0317932894)]
    [InlineData(2.3, 1.5, 0.0037906091)]
    [InlineData(0.05, 1.4, 0.8703004533)]
    [InlineData(0.3, 1.4, 0.4032323895)]
    [InlineData(1, 1.4, 0.0184058312)]
    public void The_integral_has_its_value(double depthMm, double index, double share) =>
        Assert.Equal(share, PackageReturn.Share(depthMm, RadiusMm, index), tolerance: 1e-8);

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(1.5)]
    public void It_is_what_rays_from_all_over_the_window_bring_back(double depthMm)
    {
        const int angles = 300;
        const int across = 120;
        const double index = 1.5;
        double landed = 0;
        double returned = 0;
        for (int i = 0; i < angles; i++)
        {
            double angle = (i + 0.5) / angles * Math.PI / 2;
            double weight =
                Math.Sin(angle) * Math.Cos(angle) * Fresnel.Reflectance(Math.Cos(angle), 1 / index);
            double stepMm = 2 * depthMm * Math.Tan(angle);
            int inside = 0;
            int back = 0;
            for (int x = 0; x < across; x++)
            {
                for (int y = 0; y < across; y++)
                {
                    // Round the window every azimuth is like every other, so the step goes along x.
                    double fromX = ((2 * (x + 0.5) / across) - 1) * RadiusMm;
                    double fromY = ((2 * (y + 0.5) / across) - 1) * RadiusMm;
                    if ((fromX * fromX) + (fromY * fromY) <= RadiusMm * RadiusMm)
                    {
                        inside++;
                        double toX = fromX + stepMm;
                        back += (toX * toX) + (fromY * fromY) <= RadiusMm * RadiusMm ? 1 : 0;
                    }
                }
            }
            returned += weight;
            landed += weight * back / inside;
        }
        Assert.Equal(
            landed / returned,
            PackageReturn.Share(depthMm, RadiusMm, index),
            tolerance: 2e-3 * landed / returned
        );
    }

    [Fact]
    public void It_falls_with_depth_and_never_to_nothing()
    {
        double before = 1;
        for (double depthMm = 0.001; depthMm < 200; depthMm *= 1.3)
        {
            double share = PackageReturn.Share(depthMm, RadiusMm, 1.53);
            Assert.InRange(share, 0, before);
            Assert.True(share > 0 && share < before, $"at {depthMm} mm");
            before = share;
        }
    }

    [Theory]
    [InlineData(1.41)]
    [InlineData(1.5)]
    [InlineData(1.57)]
    public void Far_away_only_light_along_the_normal_comes_back(double index)
    {
        // tan θ ≈ θ and R_F ≈ R_F(0): the window's image subtends a²/4h² of the flux, as ∫ 2 x O(x) dx = 1.
        const double depthMm = 100 * RadiusMm;
        double limit =
            Fresnel.Reflectance(1, 1 / index)
            / Fresnel.DiffuseFromInside(index)
            * Math.Pow(RadiusMm / (2 * depthMm), 2);
        Assert.Equal(limit, PackageReturn.Share(depthMm, RadiusMm, index), tolerance: 1e-3 * limit);
    }

    [Fact]
    public void Only_depth_over_radius_counts() =>
        Assert.Equal(PackageReturn.Share(0.4, 0.5, 1.5), PackageReturn.Share(1.6, 2, 1.5), tolerance: 1e-14);

    [Theory]
    [InlineData(-0.1, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(1, 0)]
    [InlineData(1, double.NaN)]
    public void Impossible_sizes_are_refused(double depthMm, double radiusMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageReturn.Share(depthMm, radiusMm, 1.5));
}
