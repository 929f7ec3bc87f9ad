using GlowMix.Choosing.Search;

namespace GlowMix.Tests.Choosing.Search;

public sealed class FrontTests
{
    [Fact]
    public void A_front_holds_what_nothing_beats_and_no_more()
    {
        DesignResult[] results = [At(1, 5), At(2, 7), At(2, 6), At(3, 7), At(4, 9), At(0.5, 1), At(6, 8)];
        Assert.Equal([(0.5, 1), (1, 5), (2, 7), (4, 9)], Points(Front.Of(results)));
    }

    [Fact]
    public void A_front_of_many_points_is_theirs_by_every_pair()
    {
        // A spread of points without chance: multiples of the golden ratio.
        DesignResult[] results =
        [
            .. Enumerable
                .Range(1, 200)
                .Select(i => At(i * 0.6180339887 % 1, Math.Sqrt(i * 0.7548776662 % 1), i)),
        ];
        var expected = results.Where(r => !results.Any(o => o.Dominates(r))).OrderBy(r => r.OffWhite);
        Assert.Equal(expected, Front.Of(results));
    }

    [Fact]
    public void Of_equals_the_first_in_order_stands()
    {
        var front = Front.Of([At(1, 5, variant: 3), At(1, 5, variant: 2)]);
        Assert.Equal(2, Assert.Single(front).Design.Variant);
    }

    [Fact]
    public void A_piece_without_light_is_on_no_front() =>
        Assert.Empty(Front.Of([At(double.PositiveInfinity, 3)]));

    [Fact]
    public void The_compromise_is_nearest_to_white_and_bright_at_once()
    {
        // In spans of the front and factors of glow: (0, 1), (1/4, 1/2), (1/2, 1/2 − a bit), (1, 0).
        var front = Front.Of([At(0, 1), At(1, 10), At(2, 11), At(4, 100)]);
        Assert.Equal((1, 10), Points([Front.Compromise(front)!]).Single());
        Assert.Null(Front.Compromise([]));
        Assert.Equal((3, 0), Points([Front.Compromise([At(3, 0)])!]).Single());
    }

    [Fact]
    public void A_thinned_front_keeps_its_ends_and_the_compromise()
    {
        var front = Front.Of(Enumerable.Range(0, 200).Select(i => At(i, 1 + (i * i))));
        var thinned = Front.Thinned(front, 9);
        Assert.InRange(thinned.Length, 8, 9);
        Assert.Equal(front[0], thinned[0]);
        Assert.Equal(front[^1], thinned[^1]);
        Assert.Contains(Front.Compromise(front), thinned);
        Assert.Equal(thinned.OrderBy(r => r.OffWhite), thinned);
    }

    private static IEnumerable<(double, double)> Points(IEnumerable<DesignResult> results) =>
        results.Select(r => (r.OffWhite, r.GlowMcdPerM2));

    private static DesignResult At(double offWhite, double glow, int variant = 0) =>
        new(new(variant, []), offWhite, glow, [], []);
}
