using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Texts;

/// <summary>Two readings compared, in words.</summary>
internal static class ComparisonWords
{
    /// <summary>One sentence.</summary>
    public static string Sentence(SpectrumComparison compared)
    {
        var (mostNm, most) = compared.Most;
        var (leastNm, least) = compared.Least;
        string shift = Shift(compared);
        string where =
            most <= least * 1.02
                ? "the spectrum keeps its shape"
                : $"most is left at {Digits.Fixed(mostNm, 0)} nm (× {Digits.Significant(most, 3)}), least at {Digits.Fixed(leastNm, 0)} nm (× {Digits.Significant(least, 3)})";
        return $"Against {compared.Against.Reading.File}: {shift}{where}.";
    }

    /// <summary>The rows behind it.</summary>
    public static IEnumerable<string> Rows(SpectrumComparison compared)
    {
        yield return compared.ScaledAtNm is { } nm
            ? $"{compared.Against.Reading.File}, both made equal at {Digits.Plain(nm)} nm; --equal-exposure or --scaled-at NM for another"
            : $"{compared.Against.Reading.File}, at equal exposure";
        if (compared.UPrimeVPrime is { } distance)
        {
            string trust =
                compared.Reading.Reading.IsColourTrustworthy && compared.Against.Reading.IsColourTrustworthy
                    ? ""
                    : " (of raw counts: not trustworthy, the ratio is)";
            string kelvin = compared.ShiftK is { } k
                ? $"ΔCCT {Digits.Signed(k, 0)} K, {Direction(k)}; "
                : "no ΔCCT; ";
            yield return $"{kelvin}Δu′v′ {Digits.Fixed(distance, 4)}{trust}";
        }
        if (compared.FluxRatio is { } flux)
        {
            yield return $"light {Digits.Fixed(100 * flux, 0)} % of the other's";
        }
        yield return string.Join(
            ", ",
            compared
                .Bands.Where(b => b.Ratio is not null)
                .Select(b => $"{b.Band.Name} {Change(b.Ratio!.Value)}")
        );
    }

    private static string Shift(SpectrumComparison compared) =>
        compared.ShiftK is not { } kelvin ? ""
        : Digits.RoundedCct(kelvin) == 0 ? "the same colour temperature; "
        : $"{Digits.Cct(Math.Abs(kelvin))} K {Direction(kelvin)}, Δu′v′ {Digits.Fixed(compared.UPrimeVPrime ?? 0, 4)}; ";

    private static string Direction(double kelvin) =>
        kelvin > 0 ? "cooler (bluer)"
        : kelvin < 0 ? "warmer (yellower)"
        : "the same";

    private static string Change(double ratio)
    {
        double percent = Math.Round(100 * (ratio - 1));
        return percent == 0 ? "as before"
            : percent > 0 ? $"+{Digits.Fixed(percent, 0)} %"
            : $"{Digits.Fixed(percent, 0)} %";
    }
}
