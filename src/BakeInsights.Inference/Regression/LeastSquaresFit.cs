namespace BakeInsights.Inference;

/// <summary>A least-squares fit: coefficients, their uncertainty, and what is left over.</summary>
/// <remarks>
/// A perfect fit is one whose residuals are no larger than the rounding of the response and of the terms that are
/// summed to meet it. Its residuals, residual spread and standard errors are exactly 0, and so is a coefficient whose
/// whole term is no larger than that rounding.
/// </remarks>
public sealed class LeastSquaresFit : ILinearFit
{
    private readonly WorkRows _rows;
    private readonly Coefficients _coefficients;
    private readonly Lazy<IReadOnlyList<double>> _leverage;
    private readonly Lazy<IReadOnlyList<FitRow>> _fitRows;

    internal LeastSquaresFit(Design design, WorkRows rows, Solution solution)
    {
        Design = design;
        _rows = rows;
        Weights = rows.Weights is { } weights ? Array.AsReadOnly(weights) : null;
        Residuals = Array.AsReadOnly(solution.Residuals);
        var fitted = new double[N];
        for (var i = 0; i < fitted.Length; i++)
        {
            fitted[i] = Response[i] - solution.Residuals[i];
        }

        FittedValues = Array.AsReadOnly(fitted);
        var left = DoubledSums.SquaredDistances(solution.Residuals, 0, rows.Weights);
        ResidualSumOfSquares = left.High;
        ResidualDegreesOfFreedom = N - rows.Predictors;
        ResidualStandardDeviation = Math.Sqrt(ResidualSumOfSquares / ResidualDegreesOfFreedom);
        RSquared = (1 - (left / TotalSumOfSquares.About(rows, centred: RSquaredIsCentred))).High;
        _coefficients = new Coefficients(
            design.Names, solution.Triangle, solution.Coefficients,
            ResidualSumOfSquares / ResidualDegreesOfFreedom, ResidualDegreesOfFreedom);
        Terms = Array.AsReadOnly(_coefficients.Terms());
        _leverage = new(() => Array.AsReadOnly(Inference.Leverage.Of(rows, solution.Triangle)));
        _fitRows = new(() => Array.AsReadOnly(Enumerable.Range(0, N).Select(FitRowAt).ToArray()));
    }

    /// <summary>The design that was fitted.</summary>
    public Design Design { get; }

    /// <summary>The response that was fitted, by row.</summary>
    public IReadOnlyList<double> Response => _rows.Response.Values;

    /// <summary>The weights by row, all positive; null where every row counts alike.</summary>
    public IReadOnlyList<double>? Weights { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Term> Terms { get; }

    /// <inheritdoc/>
    public FitSummary Summary => LeastSquaresSummary.Of(this);

    /// <inheritdoc/>
    public IReadOnlyList<FitRow> Rows => _fitRows.Value;

    /// <summary>The number of rows.</summary>
    public int N => Response.Count;

    /// <summary>Rows minus columns, at least 1.</summary>
    public int ResidualDegreesOfFreedom { get; }

    /// <summary>The sum of the squared residuals, each times its weight, in the response's unit squared.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>
    /// The square root of the residual mean square, in the response's unit: the spread of a row of weight 1.
    /// </summary>
    public double ResidualStandardDeviation { get; }

    /// <summary>The share of the response's sum of squares that the fit accounts for, 0 to 1 up to rounding.</summary>
    public double RSquared { get; }

    /// <summary>
    /// R-squared less what chance adds to it: 1 less the ratio of residual to total mean square. Below 0 where the
    /// columns explain less than chance would. Draper and Smith (1998), Applied Regression Analysis, 3rd ed., 5.2.
    /// </summary>
    public double AdjustedRSquared =>
        1 - ((1 - RSquared) * (N - (RSquaredIsCentred ? 1.0 : 0)) / ResidualDegreesOfFreedom);

    /// <summary>
    /// Whether <see cref="RSquared"/> refers to the sum of squares about the mean, which it does if a column is
    /// constant; otherwise it refers to that about zero, and the two can't be compared.
    /// </summary>
    public bool RSquaredIsCentred => Design.HasConstant;

    /// <summary>The fitted values by row.</summary>
    public IReadOnlyList<double> FittedValues { get; }

    /// <summary>Response minus fitted value by row, unweighted.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>
    /// The weight of each row's response in its own fitted value, 0 to 1; the sum is the number of columns.
    /// Hoaglin and Welsch (1978), The American Statistician 32, 17-22.
    /// </summary>
    public IReadOnlyList<double> Leverage => _leverage.Value;

    /// <summary>
    /// The root mean square by which each row is missed by the fit of all other rows, in the response's unit; null if
    /// a row has leverage 1, so that the others can't predict it. Allen (1974), The relationship between variable
    /// selection and data augmentation and a method for prediction, Technometrics 16, 125-127.
    /// </summary>
    public double? LeaveOneOutError => LeastSquaresSummary.LeaveOneOutError(this);

    /// <summary>The triangular factor, for diagnostics.</summary>
    internal Triangle Triangle => _coefficients.Triangle;

    /// <summary>The rows as they were worked on, for diagnostics.</summary>
    internal WorkRows WorkRows => _rows;

    /// <summary>The covariance of two coefficients, by their places from 0.</summary>
    public double Covariance(int i, int j) => Covariance(_coefficients.Unit(i), _coefficients.Unit(j));

    /// <summary>The covariance of two linear combinations of the coefficients.</summary>
    /// <param name="first">A weight for each column.</param>
    /// <param name="second">A weight for each column.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        _coefficients.Covariance(first, second);

    /// <summary>The estimate of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column.</param>
    /// <param name="name">What to call it.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public Term Combination(IReadOnlyList<double> weights, string name = "combination") =>
        _coefficients.Combination(weights, name);

    /// <summary>The confidence interval of the mean response at a row of column values.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    public Interval MeanInterval(IReadOnlyList<double> row, double level) => Combination(row).Interval(level);

    /// <summary>The interval that a single new response of weight 1 at a row of column values falls in.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    public Interval PredictionInterval(IReadOnlyList<double> row, double level)
    {
        var mean = Combination(row);
        var spread = double.Hypot(mean.StandardError, ResidualStandardDeviation);
        return (mean with { StandardError = spread }).Interval(level);
    }

    private FitRow FitRowAt(int row) => new(
        row, Response[row], FittedValues[row], Residuals[row], Leverage[row], _rows.Weights?[row] ?? 1);
}
