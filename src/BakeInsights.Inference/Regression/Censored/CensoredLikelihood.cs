namespace BakeInsights.Inference;

/// <summary>
/// The log-likelihood of a censored response y = x'b + s e, in the parameters b / s (one a column) and 1 / s (last),
/// in which it is concave.
/// </summary>
/// <param name="Columns">The columns, in the order of the parameters.</param>
/// <param name="Low">The lower bounds, minus infinity if there is none; the value itself if it is known.</param>
/// <param name="High">The upper bounds, infinity if there is none.</param>
internal sealed record CensoredLikelihood(double[][] Columns, double[] Low, double[] High)
{
    private static readonly double HalfLogTwoPi = Math.Log(2 * Math.PI) / 2;

    /// <summary>The likelihood of the logarithms of a response.</summary>
    public static CensoredLikelihood Of(Design design, CensoredValue[] values) => new(
        [.. design.Columns.Select(c => c.Values.ToArray())],
        [.. values.Select(v => v.Low is { } low ? Math.Log(low) : double.NegativeInfinity)],
        [.. values.Select(v => v.High is { } high ? Math.Log(high) : double.PositiveInfinity)]);

    /// <summary>The log-likelihood at a point; null where 1 / s is not positive.</summary>
    public LogLikelihood? At(double[] point)
    {
        var a = point[^1];
        if (!(a > 0) || !double.IsFinite(a))
        {
            return null;
        }

        var value = 0.0;
        var gradient = new double[point.Length];
        var curvature = new double[point.Length, point.Length];
        var row = new double[point.Length];
        for (var i = 0; i < Low.Length; i++)
        {
            var c = 0.0;
            for (var j = 0; j < Columns.Length; j++)
            {
                row[j] = Columns[j][i];
                c += point[j] * row[j];
            }

            value += AddRow(Row(Low[i], High[i], a, c), row, gradient, curvature);
        }

        return double.IsFinite(value) ? new LogLikelihood(value, gradient, curvature) : null;
    }

    /// <summary>The likelihood in which a combination of the coefficients is held.</summary>
    /// <param name="weights">A weight for each column, not all zero.</param>
    /// <param name="value">The value of the combination.</param>
    /// <param name="pivot">The column whose coefficient makes up the value; it leaves the parameters.</param>
    public CensoredLikelihood Holding(IReadOnlyList<double> weights, double value, int pivot)
    {
        var held = Columns[pivot];
        double[] Shifted(double[] bounds) => [.. bounds.Select((b, i) => b - (value / weights[pivot] * held[i]))];
        return new CensoredLikelihood(
            [.. Columns.Select((column, j) => column
                .Select((x, i) => x - (weights[j] / weights[pivot] * held[i])).ToArray())
                .Where((_, j) => j != pivot)],
            Shifted(Low),
            Shifted(High));
    }

    /// <summary>Where to begin: no effects, and a spread in which every row is likely.</summary>
    public double[] Start() => [.. new double[Columns.Length], 1 / Math.Max(Standing().Max(Math.Abs), 1)];

    /// <summary>Where to begin: least squares on what stands for each row, if it can be had.</summary>
    public double[] Start(Design design)
    {
        if (LeastSquares.Fit(design, Standing()).TryGet(out var fit, out _) && fit.ResidualSumOfSquares > 0)
        {
            var spread = fit.ResidualStandardDeviation;
            double[] start = [.. fit.Terms.Select(term => term.Estimate / spread), 1 / spread];
            if (At(start) is not null)
            {
                return start;
            }
        }

        return Start();
    }

    /// <summary>Whether the coefficients of a point meet every row: bounds strictly, known values closely.</summary>
    /// <remarks>Then the likelihood rises for ever as the spread falls with these coefficients held.</remarks>
    /// <param name="point">The parameters.</param>
    /// <param name="closely">
    /// How close to a known value, relative to the terms that are summed to meet it, counts as met.
    /// </param>
    public bool MeetsEveryRow(double[] point, double closely)
    {
        for (var i = 0; i < Low.Length; i++)
        {
            double fitted = 0, size = Math.Abs(Low[i]);
            for (var j = 0; j < Columns.Length; j++)
            {
                var term = point[j] / point[^1] * Columns[j][i];
                fitted += term;
                size += Math.Abs(term);
            }

            var allowed = Low[i] == High[i] ? closely * size : 0;
            if (!(Low[i] - allowed <= fitted && fitted <= High[i] + allowed))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>What stands for each row: the middle of its bounds, or the only one.</summary>
    private double[] Standing() => [.. Low.Zip(High, (low, high) =>
        double.IsInfinity(low) ? high : double.IsInfinity(high) ? low : low + ((high - low) / 2))];

    /// <summary>The log-likelihood of a row, with its derivatives by c = x'b / s and by a = 1 / s.</summary>
    private static RowTerms Row(double low, double high, double a, double c)
    {
        if (low == high)
        {
            var z = (a * low) - c;
            return new RowTerms(
                Math.Log(a) - (z * z / 2) - HalfLogTwoPi, z, (1 / a) - (z * low), 1, -low, (1 / (a * a)) + (low * low));
        }

        var m = IntervalMoments.Of(low, high, a, c);
        return new RowTerms(
            m.LogShare,
            m.MeanZ,
            (1 / a) - m.MeanZt,
            1 - m.VarianceZ,
            m.CovarianceZZt - m.MeanT,
            (1 / (a * a)) + m.MeanT2 - m.VarianceZt);
    }

    private static double AddRow(RowTerms terms, double[] row, double[] gradient, double[,] curvature)
    {
        var last = gradient.Length - 1;
        for (var j = 0; j < last; j++)
        {
            gradient[j] += terms.ByC * row[j];
            curvature[last, j] += terms.ByCA * row[j];
            for (var k = 0; k <= j; k++)
            {
                curvature[j, k] += terms.ByCC * row[j] * row[k];
            }
        }

        gradient[last] += terms.ByA;
        curvature[last, last] += terms.ByAA;
        return terms.Value;
    }

    /// <summary>First derivatives, and minus second ones.</summary>
    private readonly record struct RowTerms(
        double Value, double ByC, double ByA, double ByCC, double ByCA, double ByAA);
}
