namespace BakeInsights.Inference;

/// <summary>Where the search for the least sum of squares ended.</summary>
/// <param name="Point">The parameters.</param>
/// <param name="Residuals">Response minus model there.</param>
/// <param name="SumOfSquares">The sum of their squares.</param>
/// <param name="Plane">The linear model there.</param>
/// <param name="Undetermined">The place of a parameter that isn't determined there; null if all are.</param>
internal sealed record NonlinearSolution(
    double[] Point, double[] Residuals, double SumOfSquares, TangentPlane Plane, int? Undetermined);

/// <summary>The search for the least sum of squares.</summary>
internal static class NonlinearSearch
{
    /// <summary>
    /// The first dampings tried. Common practice, no source: little, for the fast way; much, for a start so far off
    /// that the linear model would throw the parameters out of reach.
    /// </summary>
    private static readonly double[] FirstDampings = [1e-3, 1, 1e4];

    /// <summary>Runs every way from a start and finishes the best.</summary>
    public static NonlinearSolution? Find(NonlinearRows rows, double[] start)
    {
        LevenbergMarquardt.Place? best = null;
        foreach (var damping in FirstDampings)
        {
            foreach (var keepsScale in new[] { true, false })
            {
                var place = LevenbergMarquardt.Run(rows, start, damping, keepsScale);
                if (place is { Converged: true } && (best is null || place.SumOfSquares < best.SumOfSquares))
                {
                    best = place;
                }
            }
        }

        return best is null ? null : Polished(rows, best, start);
    }

    /// <summary>
    /// Takes undamped steps with exact slopes as long as the residuals' projection on the linear model shrinks: the
    /// sum of squares itself is flat to rounding over the last half of the digits.
    /// </summary>
    private static NonlinearSolution? Polished(NonlinearRows rows, LevenbergMarquardt.Place place, double[] start)
    {
        const int mostSteps = 30;
        var point = place.Point;
        var solution = At(rows, point, start, null);
        for (var k = 0; k < mostSteps && solution is { Undetermined: null }; k++)
        {
            if (solution.Plane.Step(0, new double[point.Length]) is not var (step, _))
            {
                break;
            }

            var next = At(rows, [.. solution.Point.Zip(step, (b, s) => b + s)], start, solution);
            if (next is null || !(next.Plane.Projection < solution.Plane.Projection))
            {
                break;
            }

            solution = next;
        }

        return solution is { Undetermined: not null } || (solution is not null && IsStationary(rows, solution))
            ? solution
            : null;
    }

    /// <summary>
    /// Whether the projection is a thousandth of the residual spread a parameter, or rounding: Bates and Watts (1981),
    /// A relative offset orthogonality convergence criterion for nonlinear least squares, Technometrics 23, 179-183.
    /// </summary>
    private static bool IsStationary(NonlinearRows rows, NonlinearSolution solution)
    {
        const double relativeOffset = 1e-3;
        var (n, p) = (solution.Residuals.Length, solution.Point.Length);
        var allowed = relativeOffset * Math.Sqrt(solution.SumOfSquares * p / (n - p));
        var rounding = n * LeastSquares.Epsilon * Norm.Of([.. rows.Response]);
        return solution.Plane.Projection <= Math.Max(allowed, rounding);
    }

    private static NonlinearSolution? At(
        NonlinearRows rows, double[] point, double[] start, NonlinearSolution? before)
    {
        if (rows.Residuals(point) is not { } residuals)
        {
            return null;
        }

        // The width of a standard error is where the model is nearly linear; without one, a tenth of the parameter.
        var plane = before?.Plane ?? (rows.Slopes(point, Typical(start)) is { } rough
            ? new TangentPlane(rough, residuals) : null);
        if (plane is null)
        {
            return null;
        }

        var sum = Norm.Squared(residuals);
        double[] widths = plane.Undetermined(rows.SlopeNoise) is null
            ? Widths(plane, point, Math.Sqrt(sum / (residuals.Length - point.Length)), start)
            : [.. Typical(start).Zip(point, (t, b) => 0.1 * Math.Max(t, Math.Abs(b)))];
        return rows.ExactSlopes(point, widths) is { } slopes
            ? new TangentPlane(slopes, residuals) is var exact
                ? new NonlinearSolution(point, residuals, sum, exact, exact.Undetermined(rows.SlopeNoise))
                : null
            : null;
    }

    private static double[] Widths(TangentPlane plane, double[] point, double spread, double[] start)
    {
        // Steps of less than a millionth of the parameter lose to rounding what they gain in straightness.
        const double least = 1e-6;
        var covariance = plane.Covariance();
        var typical = Typical(start);
        return [.. point.Select((b, j) =>
        {
            var size = Math.Max(Math.Abs(b), typical[j]);
            return Math.Clamp(spread * Math.Sqrt(covariance[j, j]), least * size, 0.1 * size);
        })];
    }

    /// <summary>The size of a parameter that may be near 0.</summary>
    internal static double[] Typical(double[] start) =>
        [.. start.Select(b => b == 0 ? 1 : LevenbergMarquardt.LeastShare * Math.Abs(b))];
}
