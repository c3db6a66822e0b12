namespace BakeInsights.Inference;

/// <summary>One run of the damped search; see <see cref="NonlinearLeastSquares"/>.</summary>
internal static class LevenbergMarquardt
{
    /// <summary>
    /// A parameter that falls below this share of its start is treated as if of that size when it is moved to take
    /// differences. Common practice, no source.
    /// </summary>
    internal const double LeastShare = 1e-3;

    /// <summary>
    /// The model is asked for no more values than this in a run, but for so many steps at least. Common practice, no
    /// source: most fits take some ten steps, the hardest published one (MGH10 from its first start) thousands.
    /// </summary>
    private const int MostValues = 2_000_000, LeastSteps = 500;

    /// <summary>
    /// A step this short against every parameter, or a fall this small against the sum, ends the run.
    /// </summary>
    private const double SmallStep = 1e-11, SmallFall = 1e-15;

    private const double MostDamping = 1e40;

    /// <summary>Where a run ended.</summary>
    public sealed record Place(double[] Point, double SumOfSquares, bool Converged);

    /// <summary>Runs from a start with finite residuals.</summary>
    /// <param name="rows">The model on its data.</param>
    /// <param name="start">The start.</param>
    /// <param name="damping">The first damping.</param>
    /// <param name="keepsScale">
    /// Whether a parameter's scale never shrinks, as Moré has it, or is that of each point, as Marquardt has it.
    /// </param>
    public static Place Run(NonlinearRows rows, double[] start, double damping, bool keepsScale)
    {
        var typical = NonlinearSearch.Typical(start);
        var point = start;
        var residuals = rows.Residuals(point) ?? throw new ArgumentException("Not finite at the start.", nameof(start));
        var sum = Norm.Squared(residuals);
        var scale = new double[start.Length];
        var growth = 2.0;
        TangentPlane? plane = null;
        var mostSteps = Math.Max(LeastSteps, MostValues / (residuals.Length * ((2 * start.Length) + 1)));
        for (var k = 0; k < mostSteps; k++)
        {
            if (plane is null)
            {
                if (rows.Slopes(point, typical) is not { } slopes)
                {
                    return new Place(point, sum, false);
                }

                plane = new TangentPlane(slopes, residuals);
                scale = [.. plane.Lengths.Select((length, j) => Math.Max(length, keepsScale ? scale[j] : 0))];
                scale = [.. scale.Select(s => s > 0 ? s : 1)];
            }

            if (sum == 0)
            {
                return new Place(point, sum, true);
            }

            var step = plane.Step(damping, scale);
            if (step is var (move, fall))
            {
                double[] next = [.. point.Zip(move, (b, s) => b + s)];
                var there = rows.Residuals(next);
                var nextSum = there is null ? double.PositiveInfinity : Norm.Squared(there);
                var isShort = Enumerable.Range(0, move.Length).All(j =>
                    Math.Abs(move[j]) <= SmallStep * Math.Max(Math.Abs(point[j]), typical[j]));
                if (isShort || fall <= SmallFall * sum)
                {
                    return nextSum <= sum ? new Place(next, nextSum, true) : new Place(point, sum, true);
                }

                var gain = (sum - nextSum) / fall;
                if (gain > 1e-4)
                {
                    (point, residuals, sum, plane) = (next, there!, nextSum, null);
                    var cube = (2 * gain) - 1;
                    damping *= Math.Max(1.0 / 3, 1 - (cube * cube * cube));
                    damping = Math.Max(damping, 1e-20);
                    growth = 2;
                    continue;
                }
            }

            damping *= growth;
            growth *= 2;
            if (!(damping < MostDamping))
            {
                return new Place(point, sum, false);
            }
        }

        return new Place(point, sum, false);
    }
}
