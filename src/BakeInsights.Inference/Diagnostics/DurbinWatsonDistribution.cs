using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>The distribution of Durbin and Watson's ratio for the columns of a fit.</summary>
internal static class DurbinWatsonDistribution
{
    /// <summary>
    /// The most rows for which the eigenvalues are computed: their work grows with the cube. Our choice, no source.
    /// </summary>
    private const int MostExactRows = 200;

    /// <summary>The probability of a smaller ratio if rows are independent.</summary>
    public static double Below(double ratio, LeastSquaresFit fit)
    {
        var basis = Leverage.Basis(fit.WorkRows, fit.Triangle);
        return fit.N <= MostExactRows ? Exact(ratio, basis) : Approximate(ratio, basis);
    }

    /// <summary>
    /// The ratio is below r if a sum of squared normal deviates, each times an eigenvalue of the residuals' steps less
    /// r, is below zero. Imhof's integral over u becomes one over the logarithm of u, where the trapezoidal rule
    /// converges exponentially.
    /// </summary>
    private static double Exact(double ratio, Matrix<double> basis)
    {
        var n = basis.RowCount;
        var projected = Matrix<double>.Build.DenseIdentity(n) - basis.TransposeAndMultiply(basis);
        var form = projected.TransposeThisAndMultiply(Steps(projected));
        var eigenvalues = ((form + form.Transpose()) / 2).Evd(Symmetricity.Symmetric).EigenValues
            .Select(value => value.Real).Order().Skip(basis.ColumnCount).Select(value => value - ratio).ToArray();

        const double step = 0.05, from = -40;
        var (sum, s) = (0.0, from);
        for (var term = 1.0; s < 0 || Math.Abs(term) > 1e-17; s += step)
        {
            var u = Math.Exp(s);
            var angle = eigenvalues.Sum(value => Math.Atan(value * u)) / 2;
            var logSize = eigenvalues.Sum(value => Math.Log(1 + Math.Pow(value * u, 2))) / 4;
            term = Math.Exp(-logSize);
            sum += Math.Sin(angle) * term;
        }

        return Math.Clamp(0.5 - (sum * step / Math.PI), 0, 1);
    }

    private static double Approximate(double ratio, Matrix<double> basis)
    {
        // The matrix of squared steps has the diagonal 1, 2, ..., 2, 1 and -1 beside it; its square's trace is
        // 1 + 4 (n - 2) + 1 + 2 (n - 1).
        double n = basis.RowCount, free = n - basis.ColumnCount;
        var steps = Steps(basis);
        var inner = basis.TransposeThisAndMultiply(steps);
        var trace = (2 * (n - 1)) - inner.Trace();
        var squared = (6 * n) - 8 - (2 * SumOfSquares(steps)) + SumOfSquares(inner);
        var mean = trace / free;
        var variance = 2 * (squared - (trace * mean)) / (free * (free + 2));
        return Normal.CDF(mean, Math.Sqrt(variance), ratio);
    }

    private static double SumOfSquares(Matrix<double> matrix) => Math.Pow(matrix.FrobeniusNorm(), 2);

    /// <summary>The matrix of squared steps times a matrix.</summary>
    private static Matrix<double> Steps(Matrix<double> matrix) => Matrix<double>.Build.Dense(
        matrix.RowCount, matrix.ColumnCount, (i, j) =>
            (i > 0 ? matrix[i, j] - matrix[i - 1, j] : 0)
            + (i < matrix.RowCount - 1 ? matrix[i, j] - matrix[i + 1, j] : 0));
}
