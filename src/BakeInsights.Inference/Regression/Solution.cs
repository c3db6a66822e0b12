using System.Numerics;

namespace BakeInsights.Inference;

/// <summary>The least-squares solution of given rows.</summary>
/// <remarks>
/// Householder QR in double precision, then one step of refinement with remainders in doubled precision: Björck
/// (1987), Stability analysis of the method of seminormal equations for linear least squares problems, Linear Algebra
/// and its Applications 88/89, 31-48. Where the columns nearly depend on each other the factorization itself is made
/// in doubled precision, and needs no refinement.
/// </remarks>
/// <param name="Triangle">The triangular factor of the weighted columns.</param>
/// <param name="Coefficients">The coefficients, in the order of the columns.</param>
/// <param name="Residuals">The residuals by row, unweighted; all exactly 0 if they are no larger than rounding.</param>
internal sealed record Solution(Triangle Triangle, Doubled[] Coefficients, double[] Residuals)
{
    /// <summary>
    /// The condition number from which doubled precision takes over. Plain double precision loses about as many of its
    /// 16 digits as the condition number has in the standard errors, so that 12 are left. Our choice, no source.
    /// </summary>
    private const double LargestPlainCondition = 1e3;

    /// <summary>Solves, or names the first column that depends on others.</summary>
    public static Attempt<Solution> Of(WorkRows rows, IReadOnlyList<string> names)
    {
        var (plain, plainCoordinates) = Factors<double, PlainArithmetic>(rows);
        if (plain.Condition() <= LargestPlainCondition)
        {
            var first = plain.Solve(plainCoordinates);
            var correction = plain.Solve(plain.SolveTransposed(Remainders.Gradient(rows, first)));
            return Finished(rows, plain, plainCoordinates, [.. first.Zip(correction, (b, c) => b + c)]);
        }

        // A combination of p columns that was computed in double precision took p + 1 roundings.
        var (doubled, coordinates) = Factors<Doubled, DoubledArithmetic>(rows);
        return doubled.FirstDependence((rows.Predictors + 2) * LeastSquares.Epsilon) is var (column, earlier)
            ? FitProblems.Dependent(names[column], [.. earlier.Select(k => names[k])])
            : Finished(rows, doubled, coordinates, doubled.Solve(coordinates));
    }

    /// <summary>
    /// How long the residuals of a perfect fit can be by rounding: each is a sum of p + 1 terms and takes p + 2
    /// roundings of at most half an epsilon of the summed magnitudes (Higham 2002, Accuracy and Stability of Numerical
    /// Algorithms, 2nd ed., section 3.1); a whole epsilon is allowed, for the data are rounded too.
    /// </summary>
    public static double Rounding(Triangle triangle, Doubled[] coefficients, double responseLength)
    {
        var summed = responseLength + coefficients.Select((b, j) => Math.Abs(b.High) * triangle.Lengths[j]).Sum();
        return (coefficients.Length + 2) * LeastSquares.Epsilon * summed;
    }

    /// <summary>The coefficients without those whose whole term is no larger than the rounding.</summary>
    public static Doubled[] WithoutRounding(Triangle triangle, Doubled[] coefficients, double rounding) =>
        [.. coefficients.Select((b, j) => Math.Abs(b.High) * triangle.Lengths[j] > rounding ? b : 0)];

    /// <summary>The triangle of the columns, and the response's coordinates along their directions.</summary>
    public static (Triangle Triangle, Doubled[] Coordinates) Split<T, TArithmetic>(TriangleSums<T, TArithmetic> sums)
        where T : struct, IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>,
            IDivisionOperators<T, T, T>
        where TArithmetic : IArithmetic<T>
    {
        var last = sums.Size - 1;
        return (
            Triangle.Of(last, (i, j) => sums[i, j]),
            [.. Enumerable.Range(0, sums.Size).Select(i => sums[i, last])]);
    }

    private static (Triangle Triangle, Doubled[] Coordinates) Factors<T, TArithmetic>(WorkRows rows)
        where T : struct, IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>,
            IDivisionOperators<T, T, T>
        where TArithmetic : IArithmetic<T> => Split(rows.Factor<T, TArithmetic>());

    private static Solution Finished(
        WorkRows rows, Triangle triangle, Doubled[] coordinates, Doubled[] coefficients)
    {
        var residuals = Remainders.Of(rows, coefficients);
        var length = Math.Sqrt(DoubledSums.SquaredDistances(residuals, 0, rows.Weights).High);
        var responseLength = coordinates.Aggregate(0.0, (sum, c) => double.Hypot(sum, c.High));
        var rounding = Rounding(triangle, coefficients, responseLength);
        return length > rounding
            ? new Solution(triangle, coefficients, residuals)
            : new Solution(triangle, WithoutRounding(triangle, coefficients, rounding), new double[rows.Count]);
    }
}
