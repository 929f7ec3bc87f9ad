namespace GlowMix.Predictions.Kept;

/// <summary>
/// How finely each figure is kept: about what a reader can see or a meter tell, so that a change that matters moves a line and
/// one that does not moves none.
/// </summary>
public static class FigureSteps
{
    private static readonly FigureStep Luminance = FigureStep.Digits(3, finest: -3);
    private static readonly FigureStep Lumens = FigureStep.Digits(3, finest: -1);
    private static readonly FigureStep Colour = FigureStep.Of(0.0005m);
    private static readonly FigureStep Kelvin = FigureStep.Of(10);

    // By the end of the figure's family; the first that fits.
    private static readonly (string End, FigureStep Step)[] byEnd =
    [
        ("cct_k", Kelvin),
        ("shift_k", Kelvin),
        ("duv", Colour),
        (".x", Colour),
        (".y", Colour),
        ("u_prime", Colour),
        ("v_prime", Colour),
        (".ra", FigureStep.Of(1)),
        (".r9", FigureStep.Of(1)),
        ("flux_lm", Lumens),
        ("luminous_efficacy_lm_w", FigureStep.Of(1)),
        ("scotopic_photopic_ratio", FigureStep.Of(0.01m)),
        ("pigment_volume_percent", FigureStep.Of(0.1m)),
        ("_percent", FigureStep.Of(0.5m)),
        ("luminance_mcd_m2", Luminance),
        ("luminance_10_min_mcd_m2", Luminance),
        ("degas_window_min", FigureStep.Of(1)),
        ("depth_mm", FigureStep.Of(0.01m)),
        ("settled_mm", FigureStep.Of(0.05m)),
        ("viscosity_mpa_s", FigureStep.Digits(3, finest: 0)),
        ("pigment_g_per_100g_resin", FigureStep.Of(0.1m)),
        ("_g", FigureStep.Digits(3, finest: -2)),
        ("_ml", FigureStep.Digits(3, finest: -2)),
        ("casting.cost", FigureStep.Digits(3, finest: -2)),
    ];

    private static readonly FigureStep Minutes = FigureStep.Digits(3, finest: -1);

    /// <summary>The step of a figure.</summary>
    /// <param name="family">The figure's name without minutes in brackets, or that of a place along the pour.</param>
    public static FigureStep Of(string family)
    {
        ArgumentNullException.ThrowIfNull(family);
        if (
            family.StartsWith("afterglow.minutes_to_", StringComparison.Ordinal)
            || family == "afterglow.charge_minutes_to_90_percent"
        )
        {
            return Minutes;
        }
        if (family.Contains(".shift_by_cause_", StringComparison.Ordinal))
        {
            return family.Contains("_k.", StringComparison.Ordinal) ? Kelvin : Colour;
        }
        foreach (var (end, step) in byEnd)
        {
            if (family.EndsWith(end, StringComparison.Ordinal))
            {
                return step;
            }
        }
        throw new ArgumentException($"No step is set for '{family}'.", nameof(family));
    }
}
