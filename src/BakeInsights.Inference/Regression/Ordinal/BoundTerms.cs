namespace BakeInsights.Inference;

/// <summary>
/// The logarithm of the logistic probability between two bounds, with its derivatives by the bounds.
/// </summary>
/// <remarks>
/// F(b) - F(a) = F(b) F(-a) (1 - e^(a - b)) for the logistic distribution, so the logarithm is a sum of three terms
/// none of which cancels.
/// </remarks>
/// <param name="Value">The log-probability; minus infinity unless the bounds are in order.</param>
/// <param name="Low">The derivative by the lower bound; 0 if there is none, as for the others.</param>
/// <param name="High">The derivative by the upper bound.</param>
/// <param name="LowLow">The second derivative by the lower bound.</param>
/// <param name="HighHigh">The second derivative by the upper bound.</param>
/// <param name="LowHigh">The mixed second derivative.</param>
internal readonly record struct BoundTerms(
    double Value, double Low, double High, double LowLow, double HighHigh, double LowHigh)
{
    /// <summary>The derivative by a shift of the scale, which lowers both bounds.</summary>
    public double ByShift => -(Low + High);

    /// <summary>The second derivative by a shift of the scale; never positive.</summary>
    public double ByShiftTwice => LowLow + HighHigh + (2 * LowHigh);

    /// <summary>Computes them.</summary>
    public static BoundTerms Of(double low, double high)
    {
        if (!(low < high))
        {
            return new BoundTerms(double.NegativeInfinity, 0, 0, 0, 0, 0);
        }

        var (above, below) = (Logistic(-high), Logistic(low));
        var value = LogLogistic(high) + LogLogistic(-low);
        double between = 0, second = 0;
        if (double.IsFinite(low) && double.IsFinite(high))
        {
            // With w = high - low: the derivative of ln(1 - e^-w) is 1 / (e^w - 1), and so on.
            var width = high - low;
            var rest = -Expm1(-width);
            value += Math.Log(rest);
            between = Math.Exp(-width) / rest;
            second = -between / rest;
        }

        return new BoundTerms(
            value,
            -below - between,
            above + between,
            second - (below * (1 - below)),
            second - (above * (1 - above)),
            -second);
    }

    /// <summary>1 / (1 + e^-x), without overflow.</summary>
    public static double Logistic(double x)
    {
        var e = Math.Exp(-Math.Abs(x));
        return x >= 0 ? 1 / (1 + e) : e / (1 + e);
    }

    private static double LogLogistic(double x) =>
        double.IsPositiveInfinity(x) ? 0 : Math.Min(x, 0) - Log1p(Math.Exp(-Math.Abs(x)));

    /// <summary>ln(1 + x) with the rounding of 1 + x undone: Kahan's device, Higham (2002), section 1.14.1.</summary>
    private static double Log1p(double x)
    {
        var u = 1 + x;
        return u == 1 ? x : Math.Log(u) * (x / (u - 1));
    }

    /// <summary>e^x - 1 by the same device.</summary>
    private static double Expm1(double x)
    {
        var u = Math.Exp(x);
        return u == 1 ? x : u - 1 == -1 ? -1 : (u - 1) * (x / Math.Log(u));
    }
}
