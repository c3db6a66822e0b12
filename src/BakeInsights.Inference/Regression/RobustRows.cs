namespace BakeInsights.Inference;

/// <summary>The rows of a robust fit.</summary>
internal sealed class RobustRows
{
    /// <summary>
    /// The median distance from the middle of a normal curve in units of its standard deviation, as commonly rounded:
    /// Hampel (1974), Journal of the American Statistical Association 69, 383-393.
    /// </summary>
    private const double NormalMedianDistance = 0.6745;

    private readonly WorkRows _rows;
    private readonly DesignColumn _response;

    public RobustRows(Design design, IReadOnlyList<double> response)
    {
        Design = design;
        _response = new DesignColumn(LeastSquares.ResponseName, response);
        _rows = new WorkRows(design, _response, null);
    }

    public Design Design { get; }

    public IReadOnlyList<double> Response => _response.Values;

    public int Count => _rows.Count;

    public int Predictors => _rows.Predictors;

    /// <summary>The coefficients by least squares.</summary>
    public Doubled[] Coefficients { get; init; } = [];

    /// <summary>The median size of residuals, as a standard deviation.</summary>
    public static double MedianScale(double[] residuals) =>
        Quantiles.Median(residuals.Select(Math.Abs)) / NormalMedianDistance;

    public double[] Residuals(Doubled[] coefficients) => Remainders.Of(_rows, coefficients);

    public WorkRows Weighted(double[] weights) => new(Design, _response, weights);

    /// <summary>Whether a scale is no larger than the rounding of the response.</summary>
    public bool IsNegligible(double scale) =>
        scale <= (Predictors + 2) * LeastSquares.Epsilon * Response.Max(Math.Abs);

    /// <summary>The triangular factor of the unweighted columns.</summary>
    public Triangle Triangle() => Solution.Split(_rows.Factor<Doubled, DoubledArithmetic>()).Triangle;

    /// <summary>The coefficients that fit a few rows exactly; null if these rows don't determine them.</summary>
    public Doubled[]? Through(IReadOnlyList<int> few)
    {
        // Common practice, no source: rows that leave fewer than four digits are not worth starting from.
        const double largestCondition = 1e12;

        var sums = new TriangleSums<double, PlainArithmetic>(Predictors + 1, few.Count);
        var values = new double[Predictors + 1];
        foreach (var row in few)
        {
            for (var j = 0; j < values.Length; j++)
            {
                values[j] = _rows.Column(j).Span[row];
            }

            sums.Add(values);
        }

        sums.Fold();
        var (triangle, coordinates) = Solution.Split(sums);
        return triangle.Condition() <= largestCondition ? triangle.Solve(coordinates) : null;
    }
}
