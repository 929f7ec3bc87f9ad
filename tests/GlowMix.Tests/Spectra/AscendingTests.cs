using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Tests.Spectra;

public sealed class AscendingTests
{
    [Fact]
    public void Things_with_the_same_number_stay_in_their_order()
    {
        ImmutableArray<string> things = [.. Enumerable.Range(0, 200).Select(i => $"{i % 7} {i}")];
        Assert.Equal(things.OrderBy(NumberOf), Ascending.By(things, NumberOf));
    }

    [Fact]
    public void Nothing_is_sorted_into_nothing() => Assert.Empty(Ascending.By<string>([], NumberOf));

    private static double NumberOf(string thing) => thing[0] - '0';
}
