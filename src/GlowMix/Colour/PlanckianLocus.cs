namespace GlowMix.Colour;

/// <summary>The colours of black bodies in the CIE 1960 diagram, for the CIE 1931 observer at 1 nm.</summary>
/// <remarks>
/// Summed from 360 to 830 nm at 1 nm. Here also lives the search for the point nearest to a colour: between nodes evenly
/// spaced in ln T, at which the sums are exact with their first and second derivatives, polynomials of the fifth degree
/// follow the locus within 1e-11, and the derivative of the distance is brought to zero (the distance itself is flat at
/// its minimum, and stops hundredths of a kelvin short in double precision).
/// </remarks>
public static class PlanckianLocus
{
    /// <summary>The coldest body whose colour serves as a CCT, K.</summary>
    public const double LowestCctK = 1000;

    /// <summary>The hottest body whose colour serves as a CCT, K.</summary>
    public const double HighestCctK = 25_000;

    // A node or two beyond either end, so that the nearest point of a colour at the end is still between nodes.
    private const double FirstNodeK = 900;
    private const double LastNodeK = 28_000;
    private const int Intervals = 64;

    private static readonly double StepLnK = Math.Log(LastNodeK / FirstNodeK) / Intervals;

    private static readonly Node[] Nodes = Tabulated();

    /// <summary>Chromaticity of a black body, summed exactly.</summary>
    /// <param name="temperatureK">Temperature, K, 100 to 1 000 000.</param>
    public static Chromaticity AtK(double temperatureK)
    {
        PlanckRadiator.CheckTemperature(temperatureK);
        Node node = NodeAt(temperatureK);
        return Chromaticity.FromUv1960(node.U, node.V);
    }

    /// <summary>The temperature whose colour is nearest to a point, and the distance.</summary>
    /// <param name="u">CIE 1960 u.</param>
    /// <param name="v">CIE 1960 v.</param>
    /// <returns>
    /// Temperature in K and signed distance, positive above the locus; null where no nearest point lies on it, or only far beyond
    /// <see cref="LowestCctK"/> and <see cref="HighestCctK"/>.
    /// </returns>
    internal static (double TemperatureK, double SignedDistance)? NearestTo(double u, double v)
    {
        int nearest = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i < Nodes.Length; i++)
        {
            double squared = Squared(Nodes[i].U - u) + Squared(Nodes[i].V - v);
            if (squared < least)
            {
                (nearest, least) = (i, squared);
            }
        }
        // The distance falls along the locus where its derivative is negative: then the nearest point is further on.
        int interval = Nodes[nearest].DistanceSlope(u, v) > 0 ? nearest - 1 : nearest;
        if (interval < 0 || interval >= Intervals)
        {
            return null;
        }
        double t = FootOfPerpendicular(interval, u, v);
        if (double.IsNaN(t))
        {
            return null;
        }
        double temperatureK = FirstNodeK * Math.Exp((interval + t) * StepLnK);
        Node foot = Between(interval, t);
        double distance = Math.Sqrt(Squared(u - foot.U) + Squared(v - foot.V));
        return (temperatureK, v >= foot.V ? distance : -distance);
    }

    /// <summary>Newton's steps to the zero of the distance's derivative, kept inside the interval.</summary>
    /// <returns>0 to 1 along the interval; NaN where the derivative has no zero in it.</returns>
    private static double FootOfPerpendicular(int interval, double u, double v)
    {
        double low = 0;
        double high = 1;
        double slopeLow = Nodes[interval].DistanceSlope(u, v);
        double slopeHigh = Nodes[interval + 1].DistanceSlope(u, v);
        if (slopeLow > 0 || slopeHigh < 0)
        {
            return double.NaN;
        }
        double t = slopeHigh > slopeLow ? slopeLow / (slopeLow - slopeHigh) : 0;
        for (int step = 0; step < 50; step++)
        {
            Node point = Between(interval, t);
            double slope = point.DistanceSlope(u, v);
            if (slope < 0)
            {
                low = t;
            }
            else
            {
                high = t;
            }
            double next = t - (slope / point.DistanceCurvature(u, v) / StepLnK);
            next = next >= low && next <= high ? next : (low + high) / 2;
            double moved = Math.Abs(next - t);
            t = next;
            if (moved < 1e-13)
            {
                break;
            }
        }
        return t;
    }

    private static Node[] Tabulated()
    {
        var nodes = new Node[Intervals + 1];
        for (int i = 0; i <= Intervals; i++)
        {
            nodes[i] = NodeAt(FirstNodeK * Math.Exp(i * StepLnK));
        }
        return nodes;
    }

    /// <summary>The locus inside an interval by the quintic through both nodes, derivatives included.</summary>
    private static Node Between(int interval, double t)
    {
        Node a = Nodes[interval];
        Node b = Nodes[interval + 1];
        (double u, double du, double ddu) = Quintic(a.U, a.DU, a.DDU, b.U, b.DU, b.DDU, t);
        (double v, double dv, double ddv) = Quintic(a.V, a.DV, a.DDV, b.V, b.DV, b.DDV, t);
        return new(u, v, du, dv, ddu, ddv);
    }

    /// <summary>Quintic Hermite interpolation: value and two derivatives given at both ends.</summary>
    private static (double Value, double Slope, double Curvature) Quintic(
        double a,
        double da,
        double dda,
        double b,
        double db,
        double ddb,
        double t
    )
    {
        double h = StepLnK;
        (da, db, dda, ddb) = (da * h, db * h, dda * h * h, ddb * h * h);
        // What is left at the far end, in value, slope and curvature, after the parabola from the near end.
        double value = b - a - da - (dda / 2);
        double slope = db - da - dda;
        double curvature = ddb - dda;
        double c3 = (10 * value) - (4 * slope) + (curvature / 2);
        double c4 = (-15 * value) + (7 * slope) - curvature;
        double c5 = (6 * value) - (3 * slope) + (curvature / 2);
        return (
            a + (t * (da + (t * ((dda / 2) + (t * (c3 + (t * (c4 + (t * c5))))))))),
            (da + (t * (dda + (t * ((3 * c3) + (t * ((4 * c4) + (t * 5 * c5)))))))) / h,
            (dda + (t * ((6 * c3) + (t * ((12 * c4) + (t * 20 * c5)))))) / (h * h)
        );
    }

    /// <summary>The exact sums with their first and second derivative in ln T.</summary>
    private static Node NodeAt(double temperatureK)
    {
        ReadOnlySpan<double> nm = StandardObserver.XBar.WavelengthsNm;
        ReadOnlySpan<double> xBar = StandardObserver.XBar.Values;
        ReadOnlySpan<double> yBar = StandardObserver.YBar.Values;
        ReadOnlySpan<double> zBar = StandardObserver.ZBar.Values;
        double x = 0,
            dx = 0,
            ddx = 0;
        double y = 0,
            dy = 0,
            ddy = 0;
        double z = 0,
            dz = 0,
            ddz = 0;
        for (int i = 0; i < nm.Length; i++)
        {
            double exponent =
                PlanckRadiator.SecondRadiationConstantMetreKelvin * 1e9 / (nm[i] * temperatureK);
            double ratio = 560 / nm[i];
            double fifth = ratio * ratio * (ratio * ratio) * ratio;
            // n = 1/(eˣ − 1); as x falls like 1/T, dn/d(ln T) = x n (1 + n), and so on.
            double n = 1 / (Math.Exp(exponent) - 1);
            double dn = exponent * n * (1 + n);
            double ddn = dn * ((exponent * (1 + (2 * n))) - 1);
            double power = fifth * n;
            double dPower = fifth * dn;
            double ddPower = fifth * ddn;
            x += power * xBar[i];
            y += power * yBar[i];
            z += power * zBar[i];
            dx += dPower * xBar[i];
            dy += dPower * yBar[i];
            dz += dPower * zBar[i];
            ddx += ddPower * xBar[i];
            ddy += ddPower * yBar[i];
            ddz += ddPower * zBar[i];
        }
        double sum = x + (15 * y) + (3 * z);
        double dSum = dx + (15 * dy) + (3 * dz);
        double ddSum = ddx + (15 * ddy) + (3 * ddz);
        (double u, double du, double ddu) = Quotient(4 * x, 4 * dx, 4 * ddx, sum, dSum, ddSum);
        (double v, double dv, double ddv) = Quotient(6 * y, 6 * dy, 6 * ddy, sum, dSum, ddSum);
        return new(u, v, du, dv, ddu, ddv);
    }

    /// <summary>p/q with its first and second derivative.</summary>
    private static (double Value, double Slope, double Curvature) Quotient(
        double p,
        double dp,
        double ddp,
        double q,
        double dq,
        double ddq
    )
    {
        double value = p / q;
        double slope = (dp - (value * dq)) / q;
        return (value, slope, (ddp - (2 * slope * dq) - (value * ddq)) / q);
    }

    private static double Squared(double value) => value * value;

    /// <summary>A point of the locus with its derivatives in ln T.</summary>
    private readonly record struct Node(double U, double V, double DU, double DV, double DDU, double DDV)
    {
        /// <summary>Half the derivative of the squared distance to a point.</summary>
        public double DistanceSlope(double u, double v) => ((U - u) * DU) + ((V - v) * DV);

        /// <summary>Half the second derivative of the squared distance to a point.</summary>
        public double DistanceCurvature(double u, double v) =>
            (DU * DU) + (DV * DV) + ((U - u) * DDU) + ((V - v) * DDV);
    }
}
