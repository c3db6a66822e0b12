using MathNet.Numerics.RootFinding;

namespace BakeInsights.Inference;

/// <summary>The ends of a profile interval: where the distance from the best fit reaches its critical value.</summary>
internal static class ProfileEnds
{
    /// <summary>
    /// How far the search goes, in standard errors. Common practice, no source: an end farther than this bounds
    /// nothing that anyone would use.
    /// </summary>
    private const double Farthest = 1e6;

    /// <summary>The relative accuracy of an end, against the standard error.</summary>
    private const double Accuracy = 1e-9;

    private const int MostSteps = 200;

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
        var inside = 0.0;
        for (var outside = critical; outside < Farthest; outside *= 2)
        {
            if (distance(estimate + (outside * unit)) is not { } far)
            {
                return null;
            }

            if (far >= critical)
            {
                return Brent.TryFindRoot(
                    steps => (distance(estimate + (steps * unit)) ?? far) - critical,
                    inside, outside, Accuracy, MostSteps, out var root)
                    ? estimate + (root * unit)
                    : estimate + (outside * unit);
            }

            inside = outside;
        }

        return null;
    }
}
