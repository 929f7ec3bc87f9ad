namespace GlowMix.Afterglow;

/// <summary>Where a continuous function changes sign between two points at which its signs differ.</summary>
/// <remarks>
/// Regula falsi with the Anderson–Björck weight (1973, BIT 13, 253), and a halving whenever three steps have not halved the
/// bracket, so that it always ends. The library's Brent and bisection also ask the function's value to be small and report
/// failure where rounding leaves it just above.
/// </remarks>
internal static class BracketedRoot
{
    internal static double Find(Func<double, double> function, double lower, double upper, double tolerance)
    {
        double a = lower;
        double b = upper;
        double atA = function(a);
        double atB = function(b);
        if (atA == 0)
        {
            return a;
        }
        if (atB == 0)
        {
            return b;
        }
        if (Math.Sign(atA) == Math.Sign(atB))
        {
            throw new ArgumentException("The function has the same sign at both ends.");
        }
        double halved = Math.Abs(b - a) / 2;
        for (int step = 0; Math.Abs(b - a) > tolerance; step++)
        {
            double c = b - (atB * (b - a) / (atB - atA));
            if (step % 3 == 2)
            {
                if (Math.Abs(b - a) > halved)
                {
                    c = (a + b) / 2;
                }
                halved = Math.Abs(b - a) / 2;
            }
            if (!(c > Math.Min(a, b) && c < Math.Max(a, b)))
            {
                c = (a + b) / 2;
                if (c == a || c == b)
                {
                    break;
                }
            }
            double atC = function(c);
            if (atC == 0)
            {
                return c;
            }
            if (Math.Sign(atC) == Math.Sign(atB))
            {
                double weight = 1 - (atC / atB);
                atA *= weight > 0 ? weight : 0.5;
            }
            else
            {
                (a, atA) = (b, atB);
            }
            (b, atB) = (c, atC);
        }
        return b;
    }
}
