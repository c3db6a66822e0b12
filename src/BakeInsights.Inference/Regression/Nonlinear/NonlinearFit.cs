namespace BakeInsights.Inference;

/// <summary>A nonlinear least-squares fit.</summary>
public sealed class NonlinearFit : IFit
{
    private readonly NonlinearRows _rows;
    private readonly double[] _point;
    private readonly double[,] _covariance;

    internal NonlinearFit(NonlinearModel model, Design predictors, NonlinearRows rows, NonlinearSolution found)
    {
        Model = model;
        Predictors = predictors;
        _rows = rows;
        _point = found.Point;
        _covariance = found.Plane.Covariance();
        var n = found.Residuals.Length;
        ResidualDegreesOfFreedom = n - _point.Length;
        ResidualSumOfSquares = found.SumOfSquares;
        ResidualStandardDeviation = Math.Sqrt(ResidualSumOfSquares / ResidualDegreesOfFreedom);
        Terms = Array.AsReadOnly([.. model.Parameters.Select((name, j) => new Term(
            name,
            _point[j],
            ResidualStandardDeviation * Math.Sqrt(_covariance[j, j]),
            ResidualDegreesOfFreedom))]);
        double? logLikelihood = ResidualSumOfSquares > 0
            ? -n / 2.0 * (Math.Log(2 * Math.PI * ResidualSumOfSquares / n) + 1)
            : null;
        Summary = new FitSummary(
            "nonlinear least squares",
            n,
            ResidualDegreesOfFreedom,
            ResidualStandardDeviation,
            null,
            logLikelihood,
            logLikelihood is { } l ? AkaikeCriterion.Of(l, n, _point.Length + 1) : null);
        var leverage = found.Plane.Leverage();
        Rows = Array.AsReadOnly([.. found.Residuals.Select((r, i) => new FitRow(
            i, rows.Response[i], rows.Response[i] - r, r, leverage[i], null))]);
    }

    /// <summary>The model that was fitted.</summary>
    public NonlinearModel Model { get; }

    /// <summary>The predictors.</summary>
    public Design Predictors { get; }

    /// <summary>
    /// The parameters, in the model's order. Their standard errors are those of the linear model at the solution;
    /// the intervals of <see cref="Interval"/> are to be preferred to those of a term.
    /// </summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>
    /// The fit as a whole. It has no share accounted for: a nonlinear model need not contain the mean.
    /// </summary>
    public FitSummary Summary { get; }

    /// <summary>The rows. Their leverage is that in the linear model at the solution.</summary>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>Rows minus parameters, at least 1.</summary>
    public int ResidualDegreesOfFreedom { get; }

    /// <summary>The sum of the squared residuals, in the response's unit squared.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>The square root of the residual mean square, in the response's unit.</summary>
    public double ResidualStandardDeviation { get; }

    /// <summary>The covariance of two parameters in the linear model at the solution, by their places from 0.</summary>
    public double Covariance(int i, int j)
    {
        Checked(i);
        Checked(j);
        return ResidualSumOfSquares / ResidualDegreesOfFreedom * _covariance[i, j];
    }

    /// <summary>The model's response at a row of predictors.</summary>
    public double Value(IReadOnlyList<double> row) => Model.Value(_point, row);

    /// <summary>
    /// The confidence interval of a parameter: every value with which the best fit's sum of squares exceeds the least
    /// by no more than t t residual mean squares. An end is null where no such value bounds it.
    /// </summary>
    /// <remarks>Bates and Watts (1988), Nonlinear Regression Analysis and Its Applications, section 6.1.</remarks>
    /// <param name="place">The parameter, from 0.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The place or the level doesn't fit.</exception>
    public ProfileInterval Interval(int place, double level)
    {
        Checked(place);
        var critical = Tails.StudentQuantile(level, ResidualDegreesOfFreedom);
        var term = Terms[place];
        if (term.StandardError == 0)
        {
            return new ProfileInterval(term.Estimate, term.Estimate);
        }

        var near = _point;
        double? Distance(double value)
        {
            if (NonlinearProfile.Least(_rows, near, place, value) is not { } found)
            {
                return null;
            }

            near = found.Point;
            var excess = Math.Max(found.SumOfSquares - ResidualSumOfSquares, 0);
            return Math.Sqrt(excess) / ResidualStandardDeviation;
        }

        return ProfileEnds.Find(Distance, term.Estimate, term.StandardError, critical);
    }

    private void Checked(int place)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(place);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(place, _point.Length);
    }
}
