namespace BakeInsights.Inference;

/// <summary>
/// Scores as categories, with the log-likelihood of the cumulative logit model in thresholds (first) and coefficients.
/// </summary>
/// <param name="Columns">The columns, in the order of the coefficients.</param>
/// <param name="Categories">The different scores, from the lowest.</param>
/// <param name="Category">The place of each row's score among them.</param>
internal sealed record OrdinalData(double[][] Columns, double[] Categories, int[] Category)
{
    /// <summary>The number of thresholds between categories.</summary>
    public int ThresholdCount => Categories.Length - 1;

    /// <summary>The number of rows.</summary>
    public int N => Category.Length;

    private int Size => ThresholdCount + Columns.Length;

    /// <summary>Sorts scores into categories.</summary>
    public static OrdinalData Of(Design design, IReadOnlyList<double> scores)
    {
        double[] categories = [.. scores.Distinct().Order()];
        return new OrdinalData(
            [.. design.Columns.Select(c => c.Values.ToArray())],
            categories,
            [.. scores.Select(s => Array.BinarySearch(categories, s))]);
    }

    /// <summary>Thresholds that give each category its share, and no effects.</summary>
    public double[] Start()
    {
        var start = new double[Size];
        var below = 0;
        for (var k = 0; k < ThresholdCount; k++)
        {
            below += Category.Count(c => c == k);
            start[k] = Math.Log((double)below / (N - below));
        }

        return start;
    }

    /// <summary>The log-likelihood; null where thresholds are out of order.</summary>
    public LogLikelihood? At(double[] point)
    {
        var sum = LogLikelihood.Zero(Size);
        var value = 0.0;
        for (var i = 0; i < N; i++)
        {
            var row = Row(i, point);
            value += row.Value;
            Add(i, row, sum.Gradient, sum.Curvature);
        }

        return double.IsFinite(value) ? sum with { Value = value } : null;
    }

    /// <summary>The log-probability of a row, with its derivatives by its two bounds.</summary>
    public BoundTerms Row(int i, double[] point)
    {
        var k = Category[i];
        var linear = 0.0;
        for (var j = 0; j < Columns.Length; j++)
        {
            linear += point[ThresholdCount + j] * Columns[j][i];
        }

        return BoundTerms.Of(
            k == 0 ? double.NegativeInfinity : point[k - 1] - linear,
            k == ThresholdCount ? double.PositiveInfinity : point[k] - linear);
    }

    /// <summary>Adds a row's derivatives to sums.</summary>
    public void Add(int i, BoundTerms row, double[] gradient, double[,] curvature)
    {
        AddGradient(i, row, gradient);
        var k = Category[i];
        if (k > 0)
        {
            curvature[k - 1, k - 1] -= row.LowLow;
        }

        if (k < ThresholdCount)
        {
            curvature[k, k] -= row.HighHigh;
        }

        if (k > 0 && k < ThresholdCount)
        {
            curvature[k, k - 1] -= row.LowHigh;
        }

        for (var j = 0; j < Columns.Length; j++)
        {
            var (place, x) = (ThresholdCount + j, Columns[j][i]);
            if (k > 0)
            {
                curvature[place, k - 1] += x * (row.LowLow + row.LowHigh);
            }

            if (k < ThresholdCount)
            {
                curvature[place, k] += x * (row.HighHigh + row.LowHigh);
            }

            for (var l = 0; l <= j; l++)
            {
                curvature[place, ThresholdCount + l] -= x * Columns[l][i] * row.ByShiftTwice;
            }
        }
    }

    private void AddGradient(int i, BoundTerms row, double[] gradient)
    {
        var k = Category[i];
        if (k > 0)
        {
            gradient[k - 1] += row.Low;
        }

        if (k < ThresholdCount)
        {
            gradient[k] += row.High;
        }

        for (var j = 0; j < Columns.Length; j++)
        {
            gradient[ThresholdCount + j] += row.ByShift * Columns[j][i];
        }
    }
}
