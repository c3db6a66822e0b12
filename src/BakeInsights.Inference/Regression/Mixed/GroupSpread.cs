using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>How far groups lie apart beyond chance: an exact test, and the interval of their spread.</summary>
/// <remarks>
/// With the groups' sums freed of the columns, q with covariance proportional to C + C C x, the sum over the axes of C
/// of (axis q)^2 / c / (1 + c x) over its count is F times the residual mean square when x is the true ratio of the
/// variance between groups to that within: Wald (1940), Annals of Mathematical Statistics 11, 96-100; with columns
/// Harville and Fenech (1985), Biometrics 41, 137-152. At x = 0 it is the F test of fixed groups.
/// </remarks>
/// <param name="Test">The F test that all groups are alike; exact for normal rows, however few the groups.</param>
/// <param name="VarianceRatio">
/// The interval of the variance between groups over that within, exact for normal groups and rows; its upper end is null
/// where the groups lie so close that no ratio fits them.
/// </param>
/// <param name="Deviation">
/// The interval of the standard deviation between groups, in the response's unit: the ratio's, with the residual mean
/// square's own scatter taken off again as by Williams (1962), Biometrika 49, 278-281. Nearly exact.
/// </param>
public sealed record GroupSpread(NestedComparison Test, ProfileInterval VarianceRatio, ProfileInterval Deviation)
{
    // The share of the largest axis below which an axis is rounding. Common practice, no source.
    private const double Negligible = 1e-10;

    /// <summary>Compares the groups of rows, the columns held still.</summary>
    /// <param name="design">The columns, a constant one among them.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="groups">The name of the grouping.</param>
    /// <param name="labels">The group of each row.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <returns>The comparison, or a problem of least squares, or of groups that the columns tell apart.</returns>
    /// <exception cref="ArgumentException">Lengths differ, a label is blank, or no column is constant.</exception>
    public static Attempt<GroupSpread> Of(
        Design design, IReadOnlyList<double> response, string groups, IReadOnlyList<string> labels, double level)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(level);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(level, 1);
        if (!design.HasConstant)
        {
            throw new ArgumentException("Groups are compared beside a constant column.", nameof(design));
        }

        if (!LeastSquares.Fit(design, response).TryGet(out var without, out var problem))
        {
            return problem;
        }

        var axes = AxesOf(design, without, groups, labels);
        var (df1, df2) = (axes.Count, without.ResidualDegreesOfFreedom - axes.Count);
        if (df1 == 0)
        {
            return Grouping.Of(labels).Names.Length == 1
                ? MixedChecks.OneGroup(groups)
                : MixedChecks.ToldApart(groups);
        }

        if (df2 < 1)
        {
            return MixedChecks.NothingWithin(groups, "level", 1 - df2);
        }

        var between = Between(axes, 0);
        var left = without.ResidualSumOfSquares - between;
        if (!(left > Negligible * without.ResidualSumOfSquares))
        {
            return MixedChecks.NoSpreadWithin(LeastSquares.ResponseName, groups);
        }

        var meanSquare = left / df2;
        var f = between / df1 / meanSquare;
        var test = new NestedComparison(between, df1, df2, f, Tails.FisherUpper(f, df1, df2));
        var tail = (1 - level) / 2;
        var (high, low) = (FisherQuantile.Of(tail, df1, df2), FisherQuantile.Of(1 - tail, df1, df2));
        double? least = f > high ? RatioAt(axes, df1 * high * meanSquare) : 0;
        double? most = f > low ? RatioAt(axes, df1 * low * meanSquare) : null;

        // F over chi-square takes the residual mean square's scatter out of the end of the ratio.
        var (chiHigh, chiLow) = (ChiSquared.InvCDF(df1, 1 - tail) / df1, ChiSquared.InvCDF(df1, tail) / df1);
        return new GroupSpread(
            test,
            new ProfileInterval(least, most),
            new ProfileInterval(
                Math.Sqrt(least.Value * meanSquare * high / chiHigh),
                most is { } end ? Math.Sqrt(end * meanSquare * low / chiLow) : null));
    }

    private static List<(double Length, double Square)> AxesOf(
        Design design, LeastSquaresFit without, string groups, IReadOnlyList<string> labels)
    {
        var columns = OrthonormalColumns.Of(design.Columns).Q;
        var indicators = GroupColumns.From(groups, labels, GroupCoding.EveryGroup)
            .Select(column => Freed(column, columns)).ToArray();
        double[] residuals = [.. without.Residuals];
        var sums = Vector<double>.Build.DenseOfEnumerable(indicators.Select(z => OrthonormalColumns.Dot(z, residuals)));
        var table = Matrix<double>.Build.Dense(
            indicators.Length, indicators.Length, (i, j) => OrthonormalColumns.Dot(indicators[i], indicators[j]));
        var found = table.Evd(Symmetricity.Symmetric);
        var lengths = found.EigenValues.Real();
        var along = found.EigenVectors.TransposeThisAndMultiply(sums);
        var least = Negligible * design.RowCount;
        return
        [
            .. Enumerable.Range(0, lengths.Count).Where(k => lengths[k] > least)
                .Select(k => (lengths[k], along[k] * along[k] / lengths[k])),
        ];
    }

    private static double[] Freed(DesignColumn column, double[][] orthonormal)
    {
        double[] freed = [.. column.Values];
        foreach (var q in orthonormal)
        {
            var share = OrthonormalColumns.Dot(q, freed);
            for (var i = 0; i < freed.Length; i++)
            {
                freed[i] -= share * q[i];
            }
        }

        return freed;
    }

    private static double Between(List<(double Length, double Square)> axes, double ratio) =>
        axes.Sum(axis => axis.Square / (1 + (ratio * axis.Length)));

    // The ratio at which the sum, which falls as the ratio grows, comes down to a value.
    private static double RatioAt(List<(double Length, double Square)> axes, double sum)
    {
        var (low, high) = (0.0, 1.0);
        while (Between(axes, high) > sum)
        {
            (low, high) = (high, 2 * high);
        }

        for (var middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2)
        {
            (low, high) = Between(axes, middle) > sum ? (middle, high) : (low, middle);
        }

        return high;
    }
}
