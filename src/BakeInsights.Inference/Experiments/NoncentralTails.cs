using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>Distribution functions of Student's t and Fisher's F when there is an effect.</summary>
/// <remarks>
/// Sums of incomplete beta functions with Poisson weights, taken from the largest weight to both sides so that none is
/// lost to underflow: Lenth (1989), Algorithm AS 243, Applied Statistics 38, 185-189; Benton and Krishnamoorthy (2003),
/// Computational Statistics and Data Analysis 43, 249-267.
/// </remarks>
internal static class NoncentralTails
{
    /// <summary>A weight below this share of the whole ends the sum. Common practice, no source.</summary>
    private const double Negligible = 1e-16;

    /// <summary>
    /// Half the (squared) noncentrality above which the sums would be long, and the approximations of Abramowitz and
    /// Stegun (1964), Handbook of Mathematical Functions, 26.7.10 and 26.6.26, are good to six digits: common practice.
    /// </summary>
    private const double Large = 1e6;

    /// <summary>The probability that t with a noncentrality is at most a number.</summary>
    public static double StudentBelow(double t, double df, double noncentrality)
    {
        if (t < 0)
        {
            return 1 - StudentBelow(-t, df, -noncentrality);
        }

        var x = t * t / (df + (t * t));
        var half = noncentrality * noncentrality / 2;
        var start = Normal.CDF(0, 1, -noncentrality);
        if (x == 0)
        {
            return start;
        }

        if (half > Large)
        {
            return Normal.CDF(0, 1, ((t * (1 - (1 / (4 * df)))) - noncentrality) / Math.Sqrt(1 + (t * t / (2 * df))));
        }

        // P = sum of p_j I_x(j + 1/2, df/2) + q_j I_x(j + 1, df/2), each half; q_j goes with the sign of the effect.
        var sign = Math.Sign(noncentrality);
        var sum = Weighted(half, j =>
        {
            var odd = sign == 0 ? 0 : sign * Math.Exp(
                (((j + 0.5) * Math.Log(half)) - half) - SpecialFunctions.GammaLn(j + 1.5));
            return (Math.Exp(LogPoisson(half, j)) * Beta(j + 0.5, df / 2, x)) + (odd * Beta(j + 1, df / 2, x));
        });
        return Math.Clamp(start + (sum / 2), 0, 1);
    }

    /// <summary>The probability that F with a noncentrality is above a number.</summary>
    public static double FisherAbove(double f, double df1, double df2, double noncentrality)
    {
        var (x, rest) = (df1 * f / (df2 + (df1 * f)), df2 / (df2 + (df1 * f)));
        if (x == 0)
        {
            return 1;
        }

        // The upper tail of the beta function, I_(1-x)(b, a), so that a small power keeps its digits.
        var half = noncentrality / 2;
        if (half > Large)
        {
            var total = df1 + noncentrality;
            return Tails.FisherUpper(df1 * f / total, total * total / (df1 + (2 * noncentrality)), df2);
        }

        return Math.Clamp(
            Weighted(half, j => Math.Exp(LogPoisson(half, j)) * Beta(df2 / 2, (df1 / 2) + j, rest)), 0, 1);
    }

    private static double Weighted(double mean, Func<int, double> term)
    {
        var middle = (int)mean;
        var sum = 0.0;
        for (var j = middle; j >= 0 && Math.Exp(LogPoisson(mean, j)) > Negligible; j--)
        {
            sum += term(j);
        }

        for (var j = middle + 1; Math.Exp(LogPoisson(mean, j)) > Negligible; j++)
        {
            sum += term(j);
        }

        return sum;
    }

    private static double LogPoisson(double mean, int j) => mean == 0
        ? (j == 0 ? 0 : double.NegativeInfinity)
        : (j * Math.Log(mean)) - mean - SpecialFunctions.GammaLn(j + 1.0);

    private static double Beta(double a, double b, double x) => SpecialFunctions.BetaRegularized(a, b, x);
}
