namespace BakeInsights.Inference;

/// <summary>Where Newton's method came to.</summary>
/// <param name="Point">The parameters.</param>
/// <param name="At">The log-likelihood there.</param>
/// <param name="Step">The last step, which points to where the search was still going if it hadn't converged.</param>
/// <param name="Factor">The factor of the information there; null if it isn't positive definite.</param>
/// <param name="Converged">Whether the maximum was found.</param>
internal sealed record NewtonMaximum(
    double[] Point, LogLikelihood At, double[] Step, Information? Factor, bool Converged)
{
    /// <summary>
    /// Common practice, no source: Newton's steps square their relative length, so the step after one of 1e-9 is lost
    /// in rounding.
    /// </summary>
    private const double SmallStep = 1e-9;

    /// <summary>
    /// A gain below this share of the log-likelihood is within its rounding, and can't be asked of a step.
    /// </summary>
    private const double SmallGain = 1e-12;

    /// <summary>Common practice, no source. A maximum at a finite place takes 5 to 20 steps.</summary>
    private const int MostSteps = 100, MostHalvings = 40;

    /// <summary>
    /// Climbs by Newton's method with halved steps. A step is small against the parameter, or against the standard
    /// error that the parameter had at the start; so a parameter on its way to infinity, where the likelihood gets
    /// flat, never counts as found.
    /// </summary>
    /// <remarks>Method: Nocedal and Wright (2006), Numerical Optimization, 2nd ed., sections 3.3 and 3.4.</remarks>
    /// <param name="at">The log-likelihood; null outside its domain.</param>
    /// <param name="start">A point of the domain.</param>
    /// <param name="concave">
    /// Whether it is concave all over; then an information that isn't positive definite ends the search. If not, such
    /// an information is made so by a ridge.
    /// </param>
    public static NewtonMaximum Find(Func<double[], LogLikelihood?> at, double[] start, bool concave)
    {
        var point = start;
        var here = at(start) ?? throw new ArgumentException("The start is outside the domain.", nameof(start));
        var scale = Enumerable.Range(0, start.Length)
            .Select(i => 1 / Math.Sqrt(Math.Abs(here.Curvature[i, i]))).ToArray();
        var step = new double[start.Length];
        for (var k = 0; k < MostSteps; k++)
        {
            var factor = Information.Of(here.Curvature);
            var used = factor ?? (concave ? null : Ridged(here.Curvature));
            if (used is null)
            {
                return new NewtonMaximum(point, here, step, null, false);
            }

            step = used.Solve(here.Gradient);
            var gain = step.Zip(here.Gradient, (s, g) => s * g).Sum();
            var small = factor is not null && IsSmall(step, point, scale);
            if (Advance(at, point, step, here, gain) is not var (next, there))
            {
                return new NewtonMaximum(point, here, step, factor, small);
            }

            (point, here) = (next, there);
            if (small)
            {
                return new NewtonMaximum(point, here, step, Information.Of(here.Curvature), true);
            }
        }

        return new NewtonMaximum(point, here, step, Information.Of(here.Curvature), false);
    }

    private static (double[] Point, LogLikelihood At)? Advance(
        Func<double[], LogLikelihood?> at, double[] point, double[] step, LogLikelihood here, double gain)
    {
        var length = 1.0;
        for (var halving = 0; halving < MostHalvings; halving++, length /= 2)
        {
            double[] next = [.. point.Zip(step, (x, s) => x + (length * s))];
            if (at(next) is { } there && double.IsFinite(there.Value)
                && there.Value >= here.Value - (SmallGain * (1 + Math.Abs(here.Value)))
                && (there.Value >= here.Value + (1e-4 * length * gain)
                    || length * gain < SmallGain * (1 + Math.Abs(here.Value))))
            {
                return (next, there);
            }
        }

        return null;
    }

    private static Information? Ridged(double[,] curvature)
    {
        for (var ridge = 1e-3; ridge < 1e6; ridge *= 10)
        {
            if (Information.Of(curvature, ridge) is { } factor)
            {
                return factor;
            }
        }

        return null;
    }

    private static bool IsSmall(double[] step, double[] point, double[] scale) =>
        Enumerable.Range(0, step.Length).All(i => Math.Abs(step[i]) <= SmallStep * (Math.Abs(point[i]) + scale[i]));
}
