namespace BakeInsights.Inference;

/// <summary>The ends of a profile interval: where the distance from the best fit reaches its critical value.</summary>
internal static class ProfileEnds
{
    /// <summary>
    /// How far the search goes, in standard errors. Common practice, no source: an end farther than this bounds
    /// nothing that anyone would use.
    /// </summary>
    private const double Farthest = 1e6;

    /// <summary>The accuracy of an end, against the standard error.</summary>
    private const double Accuracy = 1e-9;

    /// <summary>Common practice, no source: the distance is almost straight, so that ten steps are many.</summary>
    private const int MostSteps = 100;

    /// <summary>Finds both ends.</summary>
    /// <param name="distance">
    /// From a value of the parameter: how far the best fit with that value is from the best of all, on the scale of
    /// Student's t, 0 at the estimate and growing to both sides; null where there is no such fit.
    /// </param>
    /// <param name="estimate">The estimate.</param>
    /// <param name="standardError">Its standard error, more than 0.</param>
    /// <param name="critical">The critical value of the distance.</param>
    public static ProfileInterval Find(
        Func<double, double?> distance, double estimate, double standardError, double critical) => new(
            End(distance, estimate, -standardError, critical), End(distance, estimate, standardError, critical));

    private static double? End(Func<double, double?> distance, double estimate, double unit, double critical)
    {
        var (inside, excessInside) = (0.0, -critical);
        for (var outside = critical; outside < Farthest; outside *= 2)
        {
            if (distance(estimate + (outside * unit)) is not { } far)
            {
                return null;
            }

            if (far >= critical)
            {
                double? Excess(double steps) => distance(estimate + (steps * unit)) - critical;
                return estimate + (unit * Root(Excess, inside, excessInside, outside, far - critical));
            }

            (inside, excessInside) = (outside, far - critical);
        }

        return null;
    }

    /// <summary>
    /// Where a growing function is zero, from a place where it is negative and one where it isn't, by the Illinois
    /// method: Dowell and Jarratt (1971), A modified regula falsi method for computing the root of an equation, BIT 11,
    /// 168-174. The ends' values are taken as known: computed again they may differ by rounding, even in sign. Null where
    /// the function has no value on the way: a value made up for it would move the end, up to the estimate itself.
    /// </summary>
    private static double? Root(
        Func<double, double?> function, double low, double atLow, double high, double atHigh)
    {
        var last = 0;
        for (var k = 0; k < MostSteps && high - low > Accuracy && atHigh != 0; k++)
        {
            var middle = low + ((high - low) * atLow / (atLow - atHigh));
            if (function(middle) is not { } at)
            {
                return null;
            }

            if (at < 0)
            {
                (low, atLow) = (middle, at);
                atHigh /= last < 0 ? 2 : 1;
                last = -1;
            }
            else
            {
                (high, atHigh) = (middle, at);
                atLow /= last > 0 ? 2 : 1;
                last = 1;
            }

            if (Math.Abs(at) <= Accuracy)
            {
                return middle;
            }
        }

        return high;
    }
}
