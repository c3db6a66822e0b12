using System.Collections.Concurrent;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace BakeInsights.Inference;

/// <summary>
/// The range of several independent means over their common estimated standard error, when the true means are equal.
/// </summary>
/// <remarks>
/// The double integral of Tukey (1953), as in Miller (1981), Simultaneous Statistical Inference, 2nd ed., chapter 2:
/// over the place of the highest mean, and over the spread's own scatter. Both by the trapezoidal rule, which
/// converges exponentially for integrands that die out at both ends.
/// </remarks>
internal static class StudentizedRange
{
    /// <summary>Half the width, in standard errors, beyond which the normal density is below rounding.</summary>
    private const double Reach = 8.5;

    /// <summary>The rule's step, in standard errors; at 0.4 the quantile of 17 means is off by 1e-7. Our own choice.</summary>
    private const double Step = 0.25;

    /// <summary>A weight too small to be counted. Our own choice.</summary>
    private const double Negligible = 1e-13;

    private const double Accuracy = 1e-10;
    private const int MostSteps = 200;

    // A family of questions asks for the same few again and again, and each takes thousands of error functions.
    private static readonly ConcurrentDictionary<(double Level, int Means, double Df), double> Known = [];

    private static readonly (double Z, double Density, double Lower)[] Places =
    [
        .. Enumerable.Range(0, (int)(2 * Reach / Step) + 1).Select(i => -Reach + (i * Step))
            .Select(z => (z, Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI), Lower(z))),
    ];

    /// <summary>The range that is stayed below with a probability.</summary>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <param name="means">How many means, two or more.</param>
    /// <param name="df">The degrees of freedom of the standard error.</param>
    public static double Quantile(double level, int means, double df) => means == 2
        ? Math.Sqrt(2) * Tails.StudentQuantile(level, df)
        : Known.GetOrAdd((level, means, df), static asked => OfMany(asked.Level, asked.Means, asked.Df));

    private static double OfMany(double level, int means, double df)
    {
        var critical = Tails.StudentQuantile(level, df);

        // More means have a wider range than two; and by Bonferroni's bound, pairs times the tail is enough.
        var pairs = means * (means - 1) / 2.0;
        var high = Math.Sqrt(2) * Tails.StudentQuantile(1 - ((1 - level) / pairs), df);
        var spreads = SpreadGrid.Of(u => df * (u - (Math.Exp(2 * u) / 2)), (-40 / df) - 3, 3)
            .Where(part => part.Weight > Negligible).ToArray();
        return Brent.FindRoot(
            q => spreads.Sum(part => part.Weight * Below(q * part.Spread, means)) - level,
            Math.Sqrt(2) * critical, high, Accuracy, MostSteps);
    }

    // The probability that the range is below a width with the standard error known: the highest mean at z, all others
    // within the width below it.
    private static double Below(double width, int means)
    {
        var sum = 0.0;
        foreach (var (z, density, lower) in Places)
        {
            sum += density * Math.Pow(lower - Lower(z - width), means - 1);
        }

        return means * Step * sum;
    }

    private static double Lower(double z) => SpecialFunctions.Erfc(-z / Math.Sqrt(2)) / 2;
}
