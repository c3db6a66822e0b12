using MathNet.Numerics.Integration;

namespace BakeInsights.Inference;

/// <summary>The share of a normal distribution between two bounds, and the moments of what lies there.</summary>
/// <remarks>
/// With z = a t - c (a more than 0) standard normal, the interval is given in t. All are integrals of the density over
/// the interval, by Gauss and Legendre's rule, relative to the density at its highest point: so nothing cancels in an
/// interval as narrow as one part in 1e15, nor far out in a tail.
/// </remarks>
/// <param name="LogShare">The natural logarithm of the share.</param>
/// <param name="MeanZ">The mean of z.</param>
/// <param name="MeanT">The mean of t.</param>
/// <param name="MeanT2">The mean of t squared.</param>
/// <param name="MeanZt">The mean of z t.</param>
/// <param name="VarianceZ">The variance of z.</param>
/// <param name="CovarianceZZt">The covariance of z and z t.</param>
/// <param name="VarianceZt">The variance of z t.</param>
internal readonly record struct IntervalMoments(
    double LogShare,
    double MeanZ,
    double MeanT,
    double MeanT2,
    double MeanZt,
    double VarianceZ,
    double CovarianceZZt,
    double VarianceZt)
{
    /// <summary>
    /// The most nodes integrate e^(-z z / 2) over its whole visible width, 18, to 15 digits; fewer do where the
    /// density falls by less than the given exponent. Found by comparing with twice as many nodes.
    /// </summary>
    private const int MostNodes = 48, SomeNodes = 24, FewNodes = 12;

    private const double SomeFall = 6, FewFall = 0.5;

    /// <summary>Twice the exponent at which the density is cut off: e^-40 is below double precision.</summary>
    private const double TwiceCutOff = 80;

    private static readonly double HalfLogTwoPi = Math.Log(2 * Math.PI) / 2;

    private static readonly GaussLegendreRule Most = new(0, 1, MostNodes);

    private static readonly GaussLegendreRule Some = new(0, 1, SomeNodes);

    private static readonly GaussLegendreRule Few = new(0, 1, FewNodes);

    /// <summary>Integrates over an interval.</summary>
    /// <param name="low">The lower bound of t; minus infinity if there is none.</param>
    /// <param name="high">The upper bound of t, more than the lower; infinity if there is none.</param>
    /// <param name="a">What t is multiplied by, more than 0.</param>
    /// <param name="c">What is subtracted.</param>
    public static IntervalMoments Of(double low, double high, double a, double c)
    {
        var (peak, from, to) = Support((a * low) - c, (a * high) - c, a * (high - low));
        var width = to - from;
        var fall = width * (Math.Abs(peak) + (width / 2));
        var rule = fall > SomeFall ? Most : fall > FewFall ? Some : Few;
        Span<double> weight = stackalloc double[rule.Order];
        Span<double> at = stackalloc double[rule.Order];
        double total = 0, z1 = 0, t1 = 0, t2 = 0, zt1 = 0;
        for (var k = 0; k < rule.Order; k++)
        {
            var u = from + (rule.GetAbscissa(k) * width);
            var z = peak + u;
            var t = (z + c) / a;
            at[k] = z;
            weight[k] = rule.GetWeight(k) * width * Math.Exp(-u * (peak + (u / 2)));
            total += weight[k];
            z1 += weight[k] * z;
            t1 += weight[k] * t;
            t2 += weight[k] * t * t;
            zt1 += weight[k] * z * t;
        }

        (z1, t1, t2, zt1) = (z1 / total, t1 / total, t2 / total, zt1 / total);
        double zz = 0, zzt = 0, ztzt = 0;
        for (var k = 0; k < rule.Order; k++)
        {
            var (dz, dzt) = (at[k] - z1, (at[k] * ((at[k] + c) / a)) - zt1);
            zz += weight[k] * dz * dz;
            zzt += weight[k] * dz * dzt;
            ztzt += weight[k] * dzt * dzt;
        }

        var logShare = Math.Log(total) - (peak * peak / 2) - HalfLogTwoPi;
        return new IntervalMoments(logShare, z1, t1, t2, zt1, zz / total, zzt / total, ztzt / total);
    }

    /// <summary>
    /// The highest point of the density in the interval, and the visible part of the interval about it.
    /// </summary>
    private static (double Peak, double From, double To) Support(double low, double high, double width)
    {
        if (low > 0)
        {
            return (low, 0, Math.Min(width, Reach(low)));
        }

        if (high < 0)
        {
            return (high, -Math.Min(width, Reach(-high)), 0);
        }

        return (0, Math.Max(low, -Reach(0)), Math.Min(high, Reach(0)));
    }

    /// <summary>How far beyond z, 0 or more, the density falls to the cut-off: z z / 2 + 40 = (z + u)^2 / 2.</summary>
    private static double Reach(double z) => TwiceCutOff / (z + Math.Sqrt((z * z) + TwiceCutOff));
}
