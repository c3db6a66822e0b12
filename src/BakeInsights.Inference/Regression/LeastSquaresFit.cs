namespace BakeInsights.Inference;

/// <summary>A least-squares fit: coefficients, their uncertainty, and what is left over.</summary>
/// <remarks>
/// A perfect fit is one whose residuals are no larger than the rounding of the response and of the terms that are
/// summed to meet it. It has residuals, residual spread and standard errors of exactly 0, and so is a coefficient 0 whose
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
        (_coefficients, var residuals) = Solve(design, response, qr);
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

    private static (double[] Coefficients, double[] Residuals) Solve(Design design, DesignColumn response, ScaledQr qr)
    {
        var coefficients = qr.Triangle.Coefficients(qr.Coordinates([.. response.Values]));

        // Refinement: fit what the rounded coefficients leave. Each row's remainder is a sum of p + 1 terms, so its
        // rounding doesn't grow with the number of rows as that of the factorization does.
        var remainder = Remainder(design, response, coefficients);
        var coordinates = qr.Coordinates(remainder);
        var correction = qr.Triangle.Coefficients(coordinates);
        var projected = qr.At(coordinates);
        for (var j = 0; j < coefficients.Length; j++)
        {
            coefficients[j] += correction[j];
        }

        for (var i = 0; i < remainder.Length; i++)
        {
            remainder[i] -= projected[i];
        }

        var lengths = qr.Triangle.Lengths;
        var rounding = Rounding(response, coefficients, lengths);
        return ScaledQr.Length(remainder) > rounding
            ? (coefficients, remainder)
            : ([.. coefficients.Zip(lengths, (b, d) => Math.Abs(b) * d > rounding ? b : 0)], new double[remainder.Length]);
    }

    private static double[] Remainder(Design design, DesignColumn response, double[] coefficients)
    {
        double[] remainder = [.. response.Values];
        for (var j = 0; j < coefficients.Length; j++)
        {
            var column = design.Columns[j].Span;
            for (var i = 0; i < remainder.Length; i++)
            {
                remainder[i] -= coefficients[j] * column[i];
            }
        }

        return remainder;
    }

    /// <summary>
    /// How long the residuals of a perfect fit can be by rounding: each is a sum of p + 1 terms and takes p + 2 roundings
    /// of at most half an epsilon of the summed magnitudes (Higham 2002, Accuracy and Stability of Numerical Algorithms,
    /// 2nd ed., section 3.1); a whole epsilon is allowed, for the data are rounded too.
    /// </summary>
    private static double Rounding(DesignColumn response, double[] coefficients, double[] lengths)
    {
        var summed = ScaledQr.Length(response.Span) + coefficients.Zip(lengths, (b, d) => Math.Abs(b) * d).Sum();
        return (coefficients.Length + 2) * LeastSquares.Epsilon * summed;
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
