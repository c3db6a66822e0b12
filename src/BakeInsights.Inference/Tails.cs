using MathNet.Numerics;

namespace BakeInsights.Inference;

/// <summary>
/// Tail areas and critical values of Student's t and Fisher's F, from the regularized incomplete beta function.
/// Tails are computed as such, never as 1 minus a body, so that small p values keep their digits.
/// </summary>
/// <remarks>Formulas: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.6.2 and 26.7.1.
/// Math.NET's beta function has 12 digits and more up to 1,000 degrees of freedom, and about 10 at 100,000.</remarks>
internal static class Tails
{
    /// <summary>The probability that |T| is at least |t|; infinite degrees of freedom give the normal.</summary>
    public static double StudentTwoSided(double t, double df) => double.IsPositiveInfinity(df)
        ? SpecialFunctions.Erfc(Math.Abs(t) / Math.Sqrt(2))
        : SpecialFunctions.BetaRegularized(df / 2, 0.5, df / (df + (t * t)));

    /// <summary>The probability that F is at least f.</summary>
    public static double FisherUpper(double f, double df1, double df2) =>
        SpecialFunctions.BetaRegularized(df2 / 2, df1 / 2, df2 / (df2 + (df1 * f)));

    /// <summary>
    /// The probability that chi-square is at least x; from the incomplete gamma function, ibid. 26.4.19.
    /// </summary>
    public static double ChiSquareUpper(double x, double df) =>
        x > 0 ? SpecialFunctions.GammaUpperRegularized(df / 2, x / 2) : 1;

    /// <summary>Refuses a level that is none.</summary>
    public static void RequireLevel(double level)
    {
        if (!(level > 0 && level < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(level), level, "A level lies between 0 and 1, such as 0.95.");
        }
    }

    /// <summary>The t that |T| stays below with probability <paramref name="level"/>.</summary>
    public static double StudentQuantile(double level, double df)
    {
        Tails.RequireLevel(level);

        // The tail falls from 1 to 0 as t grows: double until it is passed, then halve down to neighbouring doubles.
        var tail = 1 - level;
        var (low, high) = (0.0, 1.0);
        while (StudentTwoSided(high, df) > tail)
        {
            (low, high) = (high, 2 * high);
        }

        for (var middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2)
        {
            (low, high) = StudentTwoSided(middle, df) > tail ? (middle, high) : (low, middle);
        }

        return high;
    }
}
