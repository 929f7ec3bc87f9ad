namespace GlowMix.Console.Tune.Model;

/// <summary>The three steps of a number, in its unit. A turn goes to the next multiple, so that a turn and a turn back meet.</summary>
internal readonly record struct KnobSteps(double Fine, double Usual, double Large)
{
    private const double Nearly = 1e-6;
    private const int Decimals = 9;

    /// <summary>The steps that suit a recipe's key.</summary>
    /// <param name="name">Its last word: 'depth_mm'.</param>
    public static KnobSteps For(string name) =>
        name switch
        {
            "loading_percent" or "loading_g_per_100g_resin" => new(0.1, 1, 5),
            "depth_mm" => new(0.02, 0.1, 0.5),
            "grain_median_um" => new(1, 5, 20),
            "cct_k" => new(10, 100, 500),
            "ra" => new(1, 1, 5),
            "drive_ma" or "at_ma" => new(1, 5, 20),
            "minutes" => new(1, 10, 60),
            "illuminance_lx" => new(1, 10, 100),
            "irradiance_w_m2" => new(0.1, 1, 5),
            _ => new(0.1, 1, 10),
        };

    /// <summary>The next multiple of a step.</summary>
    /// <param name="value">Where the number is.</param>
    /// <param name="size">Which step.</param>
    /// <param name="up">Towards more.</param>
    public double Next(double value, StepSize size, bool up)
    {
        double step = size switch
        {
            StepSize.Fine => Fine,
            StepSize.Large => Large,
            _ => Usual,
        };
        double at = value / step;
        double next = up ? Math.Floor(at + Nearly) + 1 : Math.Ceiling(at - Nearly) - 1;
        return Math.Round(next * step, Decimals);
    }
}
