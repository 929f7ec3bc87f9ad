using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class SettledProfileTests
{
    [Fact]
    public void Grains_all_alike_leave_a_bed_what_falls_and_clear_resin()
    {
        var slices = SettledProfile.Of(5, 0.05, [1, 1, 1, 1, 1], 0.5).FromTheBedUp;

        // The bed takes 0.05 of what lay in its own height and in the millimetre cleared: 0.5 b = 0.05 (1 + b).
        double bed = 0.05 / 0.45;
        Assert.Equal(3, slices.Length);
        Assert.Equal(bed, slices[0].ThicknessMm, tolerance: 1e-12);
        Assert.Equal(0.5, slices[0].VolumeFraction, tolerance: 1e-12);
        Assert.Equal(4 - bed, slices[1].ThicknessMm, tolerance: 1e-12);
        Assert.Equal(0.05, slices[1].VolumeFraction, tolerance: 1e-12);
        Assert.Equal(1, slices[2].ThicknessMm, tolerance: 1e-12);
        Assert.Equal(0, slices[2].VolumeFraction);
        Assert.Empty(slices[2].ClassShares);
    }

    [Fact]
    public void Five_sizes_make_seven_slices()
    {
        var slices = SettledProfile.Of(10, 0.1, [0.5, 1, 2, 3, 5], 0.5).FromTheBedUp;
        Assert.Equal(7, slices.Length);
        double[] classes = [5, 5, 4, 3, 2, 1, 0];
        Assert.Equal(classes, slices.Select(slice => (double)slice.ClassFractions.Count(f => f > 0)));
        Assert.Equal(1, slices[0].ClassShares.Sum(), tolerance: 1e-12);
        Assert.True(slices[0].ClassShares[4] > slices[0].ClassShares[0]);
    }

    [Fact]
    public void Everything_fallen_leaves_a_bed_and_clear_resin()
    {
        var slices = SettledProfile.Of(3, 0.06, [9, 9, 9, 9, 9], 0.45).FromTheBedUp;
        Assert.Equal(2, slices.Length);
        Assert.Equal(0.4, slices[0].ThicknessMm, tolerance: 1e-12);
        Assert.Equal(0.45, slices[0].VolumeFraction, tolerance: 1e-12);
    }

    [Fact]
    public void Each_class_keeps_its_volume_and_the_slices_fill_the_depth()
    {
        var random = new Random(20);
        for (int trial = 0; trial < 2000; trial++)
        {
            double depth = 0.2 + (20 * random.NextDouble());
            double bed = 0.3 + (0.3 * random.NextDouble());
            double fraction = bed * random.NextDouble();
            double scale = depth * Math.Pow(10, (4 * random.NextDouble()) - 3);
            double[] falls = [.. Enumerable.Range(0, 5).Select(_ => scale * random.NextDouble()).Order()];
            var slices = SettledProfile.Of(depth, fraction, falls, bed).FromTheBedUp;
            Assert.InRange(slices.Length, 1, 7);
            Assert.Equal(depth, slices.Sum(s => s.ThicknessMm), tolerance: 1e-12 * depth);
            for (int i = 0; i < GrainClasses.Count; i++)
            {
                double kept = slices.Sum(s => s.ThicknessMm * s.ClassFractions[i]);
                Assert.Equal(fraction / 5 * depth, kept, tolerance: 1e-12 * depth);
            }
            Assert.All(slices, s => Assert.InRange(s.VolumeFraction, 0, bed * (1 + 1e-12)));
        }
    }

    [Fact]
    public void Coarsened_it_keeps_each_class_and_hardly_moves_it()
    {
        var random = new Random(21);
        for (int trial = 0; trial < 500; trial++)
        {
            double depth = 0.2 + (10 * random.NextDouble());
            double fraction = 0.4 * random.NextDouble();
            double scale = depth * Math.Pow(10, (3 * random.NextDouble()) - 2);
            double[] falls = [.. Enumerable.Range(0, 5).Select(_ => scale * random.NextDouble()).Order()];
            var fine = SettledProfile.Of(depth, fraction, falls, 0.486);
            var coarse = fine.Coarsened();
            Assert.InRange(coarse.FromTheBedUp.Length, 1, fine.FromTheBedUp.Length);
            Assert.Equal(fine.BedMm, coarse.BedMm);
            Assert.Equal(depth, coarse.FromTheBedUp.Sum(s => s.ThicknessMm), tolerance: 1e-12 * depth);
            for (int i = 0; i < GrainClasses.Count; i++)
            {
                double kept = coarse.FromTheBedUp.Sum(s => s.ThicknessMm * s.ClassFractions[i]);
                Assert.Equal(fraction / 5 * depth, kept, tolerance: 1e-12 * depth);
            }
            // Up to six joints of a thousandth each.
            Assert.InRange(MeanHeightMm(coarse) - MeanHeightMm(fine), -0.006 * depth, 0.006 * depth);
        }
    }

    [Fact]
    public void The_bed_is_told_and_is_nothing_where_nothing_falls()
    {
        Assert.Equal(0.4, SettledProfile.Of(3, 0.06, [9, 9, 9, 9, 9], 0.45).BedMm, tolerance: 1e-12);
        Assert.Equal(0, SettledProfile.Of(3, 0.06, [0, 0, 0, 0, 0], 0.45).BedMm);
    }

    private static double MeanHeightMm(SettledProfile profile)
    {
        double fromMm = 0;
        double moment = 0;
        double all = 0;
        foreach (var s in profile.FromTheBedUp)
        {
            moment += s.VolumeFraction * s.ThicknessMm * (fromMm + (s.ThicknessMm / 2));
            all += s.VolumeFraction * s.ThicknessMm;
            fromMm += s.ThicknessMm;
        }
        return moment / all;
    }

    [Fact]
    public void More_fall_never_leaves_more_pigment_on_top()
    {
        double last = double.PositiveInfinity;
        for (double scale = 0; scale < 30; scale += 0.1)
        {
            var slices = SettledProfile
                .Of(8, 0.1, [0.1 * scale, 0.2 * scale, 0.3 * scale, 0.5 * scale, scale], 0.5)
                .FromTheBedUp;
            double height = slices
                .Aggregate(
                    (From: 0.0, Moment: 0.0),
                    (sum, s) =>
                        (
                            sum.From + s.ThicknessMm,
                            sum.Moment + (s.VolumeFraction * s.ThicknessMm * (sum.From + (s.ThicknessMm / 2)))
                        )
                )
                .Moment;
            Assert.True(height <= last + 1e-12);
            last = height;
        }
    }

    [Fact]
    public void Slices_thinner_than_a_grain_join_their_neighbour()
    {
        var slices = SettledProfile.Of(5, 0.05, [1e-5, 2e-5, 3e-5, 4e-5, 5e-5], 0.5).FromTheBedUp;
        SettledSublayer only = Assert.Single(slices);
        Assert.Equal(0.05, only.VolumeFraction, tolerance: 1e-12);
    }

    [Fact]
    public void A_mix_as_dense_as_its_bed_stays_as_it_is() =>
        Assert.Equal(
            0.5,
            Assert.Single(SettledProfile.Of(5, 0.5, [1, 1, 1, 1, 2], 0.45).FromTheBedUp).VolumeFraction,
            12
        );

    [Fact]
    public void Face_down_the_bed_lies_at_the_viewers_side()
    {
        SettledProfile profile = SettledProfile.Of(5, 0.05, [1, 1, 1, 1, 1], 0.5);
        Assert.Equal(0.5, profile.FromTheBoardUp(isFaceUp: true)[0].VolumeFraction, tolerance: 1e-12);
        Assert.Equal(0.5, profile.FromTheBoardUp(isFaceUp: false)[^1].VolumeFraction, tolerance: 1e-12);
    }

    [Fact]
    public void Falls_out_of_order_or_of_other_classes_are_refused()
    {
        Assert.Throws<ArgumentException>(() => SettledProfile.Of(5, 0.05, [2, 1, 1, 1, 1], 0.5));
        Assert.Throws<ArgumentException>(() => SettledProfile.Of(5, 0.05, [1, 1], 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => SettledProfile.Of(0, 0.05, [1, 1, 1, 1, 1], 0.5));
    }
}
