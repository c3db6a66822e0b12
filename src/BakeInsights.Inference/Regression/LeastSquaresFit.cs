namespace BakeInsights.Inference;

/// <summary>A least-squares fit: coefficients, their uncertainty, and what is left over.</summary>
/// <remarks>
/// A perfect fit is one whose residuals are no larger than the rounding of the response and of the terms that are
/// summed to meet it. Its residuals, residual spread and standard errors are exactly 0, and so is a coefficient whose
/// whole term is no larger than that rounding.
/// </remarks>
public sealed class LeastSquaresFit
{
    private readonly ScaledTriangle _triangle;
    private readonly double[] _coefficients;

    internal LeastSquaresFit(Design design, DesignColumn response, ScaledQr qr)
    {
        Design = design;
        Response = response.Values;
        _triangle = qr.Triangle;
        (_coefficients, var residuals) = RefinedSolution.Of(design, response, qr);
        Leverage = Array.AsReadOnly(qr.Leverage());
        Residuals = Array.AsReadOnly(residuals);
        FittedValues = Array.AsReadOnly(residuals.Select((r, i) => response.Values[i] - r).ToArray());
        ResidualSumOfSquares = ScaledQr.SumOfSquares(residuals);
        ResidualDegreesOfFreedom = N - _triangle.Size;
        ResidualStandardDeviation = Math.Sqrt(ResidualSumOfSquares / ResidualDegreesOfFreedom);
        RSquared = 1 - (ResidualSumOfSquares / TotalSumOfSquares());
        Terms = Array.AsReadOnly(design.Names.Select((name, j) => Combination(Unit(j), name)).ToArray());
    }

    /// <summary>The design that was fitted.</summary>
    public Design Design { get; }

    /// <summary>The response that was fitted, by row.</summary>
    public IReadOnlyList<double> Response { get; }

    /// <summary>The coefficients, in the order of the design's columns.</summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>The number of rows.</summary>
    public int N => Response.Count;

    /// <summary>Rows minus columns, at least 1.</summary>
    public int ResidualDegreesOfFreedom { get; }

    /// <summary>The sum of the squared residuals, in the response's unit squared.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>The square root of the residual mean square, in the response's unit.</summary>
    public double ResidualStandardDeviation { get; }

    /// <summary>The share of the response's sum of squares that the fit accounts for, 0 to 1 up to rounding.</summary>
    public double RSquared { get; }

    /// <summary>
    /// Whether <see cref="RSquared"/> refers to the sum of squares about the mean, which it does if a column is
    /// constant; otherwise it refers to that about zero, and the two can't be compared.
    /// </summary>
    public bool RSquaredIsCentred => Design.HasConstant;

    /// <summary>The fitted values by row.</summary>
    public IReadOnlyList<double> FittedValues { get; }

    /// <summary>Response minus fitted value by row.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>
    /// The weight of each row's response in its own fitted value, 0 to 1; the sum is the number of columns.
    /// Hoaglin and Welsch (1978), The American Statistician 32, 17-22.
    /// </summary>
    public IReadOnlyList<double> Leverage { get; }

    /// <summary>The covariance of two coefficients, by their places from 0.</summary>
    public double Covariance(int i, int j) => Covariance(Unit(i), Unit(j));

    /// <summary>The covariance of two linear combinations of the coefficients.</summary>
    /// <param name="first">A weight for each column.</param>
    /// <param name="second">A weight for each column.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        ResidualSumOfSquares / ResidualDegreesOfFreedom * Whitened(first).Zip(Whitened(second), (a, b) => a * b).Sum();

    /// <summary>The estimate of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column.</param>
    /// <param name="name">What to call it.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public Term Combination(IReadOnlyList<double> weights, string name = "combination")
    {
        var length = ScaledQr.Length(Whitened(weights));
        var estimate = weights.Zip(_coefficients, (w, b) => w * b).Sum();
        return new Term(name, estimate, ResidualStandardDeviation * length, ResidualDegreesOfFreedom);
    }

    /// <summary>The confidence interval of the mean response at a row of column values.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    public Interval MeanInterval(IReadOnlyList<double> row, double level) => Combination(row).Interval(level);

    /// <summary>The interval that a single new response at a row of column values falls in.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    public Interval PredictionInterval(IReadOnlyList<double> row, double level)
    {
        var mean = Combination(row);
        var spread = double.Hypot(mean.StandardError, ResidualStandardDeviation);
        return (mean with { StandardError = spread }).Interval(level);
    }

    private double TotalSumOfSquares()
    {
        var centre = RSquaredIsCentred ? Response.Average() : 0;
        return Response.Sum(y => (y - centre) * (y - centre));
    }

    private double[] Whitened(IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Count == _triangle.Size
            ? _triangle.Whitened(weights)
            : throw new ArgumentException(
                $"There are {weights.Count} weights for {_triangle.Size} columns.", nameof(weights));
    }

    private double[] Unit(int place)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(place);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(place, _triangle.Size);
        var unit = new double[_triangle.Size];
        unit[place] = 1;
        return unit;
    }
}
