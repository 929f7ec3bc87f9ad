using System.Globalization;

namespace GlowMix.Documents;

/// <summary>The numbers a key allows. The default allows zero only.</summary>
public readonly record struct NumberRange
{
    private NumberRange(double least, double most, bool leastIsOutside) =>
        (Least, Most, LeastIsOutside) = (least, most, leastIsOutside);

    /// <summary>Lower end; may be minus infinity.</summary>
    public double Least { get; }

    /// <summary>Upper end, itself allowed; may be infinity.</summary>
    public double Most { get; }

    /// <summary>The lower end itself is not allowed.</summary>
    public bool LeastIsOutside { get; }

    /// <summary>Every finite number.</summary>
    public static NumberRange Any { get; } = new(double.NegativeInfinity, double.PositiveInfinity, false);

    /// <summary>Both ends allowed.</summary>
    public static NumberRange Between(double least, double most) => new(least, most, false);

    /// <summary>The upper end allowed, the lower one not.</summary>
    public static NumberRange Above(double bound, double most = double.PositiveInfinity) =>
        new(bound, most, true);

    /// <summary>No upper end.</summary>
    public static NumberRange AtLeast(double least) => new(least, double.PositiveInfinity, false);

    /// <summary>The number is finite and within.</summary>
    public bool Contains(double number) =>
        double.IsFinite(number) && (LeastIsOutside ? number > Least : number >= Least) && number <= Most;

    /// <summary>'0 to 80', 'above 0, up to 500', 'above 0', '0 or more', '1', 'any number'.</summary>
    public override string ToString() =>
        (double.IsFinite(Least), double.IsFinite(Most), LeastIsOutside) switch
        {
            (true, true, false) when Least == Most => Write(Least),
            (true, true, false) => $"{Write(Least)} to {Write(Most)}",
            (true, true, true) => $"above {Write(Least)}, up to {Write(Most)}",
            (true, false, true) => $"above {Write(Least)}",
            (true, false, false) => $"{Write(Least)} or more",
            (false, true, _) => $"{Write(Most)} or less",
            _ => "any number",
        };

    private static string Write(double number) => number.ToString(CultureInfo.InvariantCulture);
}
