using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>Checks for columns that nearly depend on each other.</summary>
public static class Collinearity
{
    /// <summary>
    /// For each column that isn't constant, by how much its coefficient's variance exceeds that of a column at right
    /// angles to the others: 1 / (1 - R-squared) of the column on the others.
    /// </summary>
    /// <remarks>
    /// About the means if a column is constant, about zero otherwise. Marquardt (1970), Generalized inverses, ridge
    /// regression, biased linear estimation, and nonlinear estimation, Technometrics 12, 591-612.
    /// </remarks>
    /// <returns>One check a column, in the order of the design.</returns>
    public static IReadOnlyList<Diagnostic> VarianceInflation(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return
        [
            .. fit.Design.Columns.Where(column => !column.IsConstant).Select(column =>
            {
                var factor = fit.VarianceFactor(fit.Design.IndexOf(column.Name))
                    * TotalSumOfSquares.About(column.Span, fit.WorkRows.Weights, fit.Design.HasConstant).High;
                var concern = factor > Thresholds.VarianceInflation.Value;
                return new Diagnostic(
                    $"variance inflation of {column.Name}", factor, null, null, Thresholds.VarianceInflation, concern,
                    $"The variance of the coefficient of {column.Name} is {Diagnostic.Short(factor)} times "
                        + "what it would be if the column were unrelated to the others"
                        + (concern ? ": their effects are hard to tell apart." : "."));
            }),
        ];
    }

    /// <summary>
    /// The condition indices of the columns brought to equal length, the constant included and nothing centred, each
    /// with the shares of the coefficients' variances: from the smallest index, which is 1, to the largest.
    /// </summary>
    /// <remarks>Belsley, Kuh and Welsch (1980), Regression Diagnostics, Wiley, section 3.2.</remarks>
    public static IReadOnlyList<ConditionIndex> ConditionIndices(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var triangle = fit.Triangle;
        var scaled = Matrix<double>.Build.Dense(
            triangle.Size, triangle.Size, (i, j) => i <= j ? triangle[i, j].High / triangle.Lengths[j] : 0);
        var parts = scaled.Svd();
        var shares = Matrix<double>.Build.Dense(
            triangle.Size, triangle.Size, (k, j) => Math.Pow(parts.VT[k, j] / parts.S[k], 2));
        var sums = shares.ColumnSums();
        return
        [
            .. Enumerable.Range(0, triangle.Size).Select(k => new ConditionIndex(
                parts.S[0] / parts.S[k],
                Array.AsReadOnly(Enumerable.Range(0, triangle.Size).Select(j => shares[k, j] / sums[j]).ToArray()))),
        ];
    }

    /// <summary>The largest condition index.</summary>
    public static Diagnostic LargestConditionIndex(LeastSquaresFit fit)
    {
        var index = ConditionIndices(fit)[^1].Index;
        var concern = index > Thresholds.ConditionIndex.Value;
        return new Diagnostic(
            "condition index", index, null, null, Thresholds.ConditionIndex, concern,
            $"The largest condition index is {Diagnostic.Short(index)}: "
                + (concern ? "some columns nearly depend on each other." : "no columns nearly depend on each other."));
    }
}
