using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace BakeInsights.Inference;

/// <summary>Quantiles of a mixture of normal distributions.</summary>
internal static class MixtureQuantiles
{
    /// <summary>How exact a quantile is, against the distance of the parts' quantiles.</summary>
    private const double Accuracy = 1e-14;

    private const int MostSteps = 200;

    /// <summary>The central interval.</summary>
    public static Interval Central(IReadOnlyList<NormalPart> parts, double level)
    {
        var critical = Tails.StudentQuantile(level, double.PositiveInfinity);
        var tail = (1 - level) / 2;
        return new Interval(-Upper(parts, -1, tail, critical), Upper(parts, 1, tail, critical));
    }

    /// <summary>The value that the quantity times a sign exceeds with this probability.</summary>
    private static double Upper(IReadOnlyList<NormalPart> parts, int sign, double tail, double critical)
    {
        // A quantile of a mixture lies between the least and the greatest of its parts' quantiles.
        var low = parts.Min(part => (sign * part.Mean) + (critical * part.Deviation));
        var high = parts.Max(part => (sign * part.Mean) + (critical * part.Deviation));
        var width = high - low;
        double Excess(double share) => Exceeding(parts, sign, low + (share * width)) - tail;
        if (width > 0 && Brent.TryFindRoot(Excess, 0, 1, Accuracy, MostSteps, out var root))
        {
            return low + (root * width);
        }

        // One part has nearly all weight, and its quantile is an end, beside which rounding hides the sign.
        return Math.Abs(Excess(0)) <= Math.Abs(Excess(1)) ? low : high;
    }

    private static double Exceeding(IReadOnlyList<NormalPart> parts, int sign, double value)
    {
        var sum = 0.0;
        foreach (var part in parts)
        {
            var z = (value - (sign * part.Mean)) / part.Deviation;
            sum += part.Weight * SpecialFunctions.Erfc(z / Math.Sqrt(2)) / 2;
        }

        return sum;
    }
}
