using System.Collections.Immutable;
using System.Reflection;
using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Tests.Predictions;

public class DerivedLaddersTests
{
    private static readonly Shelf Shelf = new();
    private static readonly SheetSample Sample = new PigmentSheets(Shelf, new OpticsShelf())
        .SampleOf(Shelf.Pigment("green-aluminate").Material!)
        .Sample!;

    /// <summary>Part of the sample and name of the number.</summary>
    public static TheoryData<string, string> Numbers =>
        [
            .. NumbersOf<Pigment>(),
            .. NumbersOf<DecaySheet>(),
            .. NumbersOf<Resin>(),
            .. NumbersOf<Board>(),
            .. NumbersOf<Lamp>(),
        ];

    [Theory, MemberData(nameof(Numbers))]
    public void A_number_that_moves_a_ladder_moves_its_key(string part, string number)
    {
        var other = part switch
        {
            nameof(Pigment) => Sample with { Pigment = Moved(Sample.Pigment, number) },
            nameof(DecaySheet) => Sample with
            {
                Pigment = Sample.Pigment with { Sheet = Moved(Sample.Pigment.Sheet, number) },
            },
            nameof(Resin) => Sample with { Resin = Moved(Sample.Resin, number) },
            nameof(Board) => Sample with { Backing = Moved(Sample.Backing, number) },
            _ => Sample with { Lamp = Moved(Sample.Lamp, number) },
        };
        bool moves = !Fitted(Sample).AsSpan().SequenceEqual(Fitted(other));
        Assert.True(!moves || DerivedLadders.KeyOf(other) != DerivedLadders.KeyOf(Sample));
    }

    [Fact]
    public void A_sheet_that_is_not_known_has_no_ladders()
    {
        var other = Sample with { Pigment = Moved(Sample.Pigment, nameof(Pigment.DensityGPerCm3)) };
        Assert.NotEmpty(DerivedLadders.Find(Sample, TrapConstants.Assumed));
        Assert.Empty(DerivedLadders.Find(other, TrapConstants.Assumed));
    }

    /// <summary>Efficiency and rungs, fitted afresh.</summary>
    private static double[] Fitted(SheetSample sample)
    {
        var sheet = new PigmentSheets(Shelf, new OpticsShelf()).Solve(sample, absorptionFactor: 1);
        var ladder = LadderShelf.FitTo(sheet, sample.Pigment, Variation.Likely).Ladder;
        return ladder is null ? [] : [ladder.TrappingEfficiencyAt20C, .. ladder.TrapsPerMm3];
    }

    private static IEnumerable<TheoryDataRow<string, string>> NumbersOf<T>() =>
        typeof(T)
            .GetProperties()
            .Where(p =>
                p.CanWrite
                && p.PropertyType.IsGenericType
                && p.PropertyType.GetGenericTypeDefinition() == typeof(Sourced<>)
                && p.PropertyType != typeof(Sourced<string>)
                && p.PropertyType != typeof(Sourced<MixRatio>)
            )
            .Select(p => new TheoryDataRow<string, string>(typeof(T).Name, p.Name));

    /// <summary>The same with one number, or all samples of a curve, 1 % less.</summary>
    private static T Moved<T>(T material, string number)
        where T : class
    {
        var copy = (T)
            typeof(T)
                .GetMethod("<Clone>$", BindingFlags.Public | BindingFlags.Instance)!
                .Invoke(material, [])!;
        var property = typeof(T).GetProperty(number)!;
        property.SetValue(
            copy,
            property.GetValue(material) switch
            {
                Sourced<double> value => value.Select(v => 0.99 * v),
                Sourced<Spectrum> curve => curve.Select(c => 0.99 * c),
                Sourced<PointTable> table => table.Select(t => new PointTable([
                    .. t.Points.Select(p => new CurvePoint(p.At, 0.99 * p.Value)),
                ])),
                Sourced<ImmutableArray<SheetPoint>> sheet => sheet.Select(points =>
                    ImmutableArray.CreateRange(
                        points,
                        p => new SheetPoint(p.Minutes, 0.99 * p.LuminanceMcdM2)
                    )
                ),
                null => null,
                var value => throw new NotSupportedException($"{typeof(T).Name}.{number}: {value}"),
            }
        );
        return copy;
    }
}
