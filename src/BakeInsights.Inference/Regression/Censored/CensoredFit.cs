namespace BakeInsights.Inference;

/// <summary>A log-normal fit of a response that may be censored. Coefficients are on the natural logarithm.</summary>
public sealed class CensoredFit : IFit
{
    /// <summary>
    /// By maximum likelihood, from how many rows intervals of coefficients hold the truth as often as they say, and
    /// from how many those of new responses nearly do. From the simulation tabled in docs/inference.md.
    /// </summary>
    private const int FewestRows = 20, FewestRowsToPredict = 40;

    private readonly ICensoredEngine _engine;

    internal CensoredFit(Design design, CensoredValue[] values, ICensoredEngine engine)
    {
        Design = design;
        _engine = engine;
        Response = Array.AsReadOnly(values);
        Terms = Array.AsReadOnly([.. design.Names.Select((name, j) => Combination(Unit(j), name))]);
        Summary = engine.Summary(values);
        Rows = Array.AsReadOnly([.. values.Select((value, i) => engine.Row(i, value, Median(design.Row(i))))]);
        Caveats = Array.AsReadOnly(IsFromMidpoints ? [] : FindCaveats(values.Length).ToArray());
    }

    /// <summary>The design that was fitted.</summary>
    public Design Design { get; }

    /// <summary>The response that was fitted, by row.</summary>
    public IReadOnlyList<CensoredValue> Response { get; }

    /// <summary>
    /// The coefficients, in the order of the design's columns, each the change of ln response by one unit of its
    /// column. Their standard errors come from the observed information, as a rule too small with few rows; the
    /// intervals of <see cref="Interval"/> are to be preferred to those of a term.
    /// </summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>
    /// The fit as a whole. The residual standard deviation is that of ln response, by maximum likelihood or, from
    /// midpoints, by the residual mean square; the log-likelihood is that of the response, not of its logarithm.
    /// </summary>
    public FitSummary Summary { get; }

    /// <summary>The rows. What is fitted is the median of the response, in its own unit.</summary>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>What to bear in mind when using the fit, each a sentence; empty if nothing.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>Whether the midpoints were fitted by least squares, and not the bounds by maximum likelihood.</summary>
    public bool IsFromMidpoints => _engine is MidpointEngine;

    /// <summary>
    /// The natural logarithm of the spread of ln response, with its standard error; null from midpoints, where least
    /// squares gives none.
    /// </summary>
    public Term? LogSpread => _engine.LogSpread;

    /// <summary>Rows minus columns, the degrees of freedom of all intervals.</summary>
    public int ResidualDegreesOfFreedom => Response.Count - Design.Columns.Count;

    /// <summary>The covariance of two coefficients, by their places from 0.</summary>
    public double Covariance(int i, int j) => _engine.Covariance(Unit(i), Unit(j));

    /// <summary>The estimate of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column.</param>
    /// <param name="name">What to call it.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public Term Combination(IReadOnlyList<double> weights, string name = "combination") => new(
        name,
        _engine.Estimate(Checked(weights)),
        Math.Sqrt(_engine.Covariance(weights, weights)),
        ResidualDegreesOfFreedom);

    /// <summary>The confidence interval of a coefficient, by its place from 0.</summary>
    /// <inheritdoc cref="CombinationInterval"/>
    public ProfileInterval Interval(int place, double level) => CombinationInterval(Unit(place), level);

    /// <summary>
    /// The confidence interval of a linear combination of the coefficients: from midpoints Student's, otherwise every
    /// value whose profile likelihood lies within n ln(1 + t t / v) of twice the maximum, v = n - p.
    /// </summary>
    /// <remarks>
    /// For a response known exactly this is Student's interval, so the cut-off carries the cost of an estimated spread
    /// that the chi-square cut-off leaves out. Profile likelihood: Venzon and Moolgavkar (1988), Applied Statistics
    /// 37, 87-94; the cut-off inverts the relation of Student's t to the likelihood ratio in normal regression: Seber
    /// and Lee (2003), Linear Regression Analysis, 2nd ed., section 4.1.
    /// </remarks>
    /// <param name="weights">A weight for each column, not all zero.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of weights or the level doesn't fit.</exception>
    public ProfileInterval CombinationInterval(IReadOnlyList<double> weights, double level)
    {
        if (Checked(weights).All(w => w == 0))
        {
            throw new ArgumentException("All weights are zero.", nameof(weights));
        }

        return _engine.Interval(Combination(weights), weights, level);
    }

    /// <summary>The median of the response at a row of column values, in the response's unit.</summary>
    public double Median(IReadOnlyList<double> row) => Math.Exp(_engine.Estimate(Checked(row)));

    /// <summary>The confidence interval of the median response at a row of column values, in its unit.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    public ProfileInterval MedianInterval(IReadOnlyList<double> row, double level)
    {
        var logs = CombinationInterval(row, level);
        return new ProfileInterval(
            logs.Low is { } low ? Math.Exp(low) : null, logs.High is { } high ? Math.Exp(high) : null);
    }

    /// <summary>
    /// The interval that a single new response at a row of column values falls in, in the response's unit. By maximum
    /// likelihood it is approximate: variances are scaled up by n / v, which is exact for a response known exactly.
    /// </summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    public Interval PredictionInterval(IReadOnlyList<double> row, double level)
    {
        var logs = _engine.Prediction(Combination(row)).Interval(level);
        return new Interval(Math.Exp(logs.Low), Math.Exp(logs.High));
    }

    private static IEnumerable<string> FindCaveats(int rows)
    {
        if (rows < FewestRows)
        {
            yield return $"With {rows} rows the likelihood of censored values is far from its large-sample shape: "
                + $"effects may be overstated, and {FewestRows} rows are advised.";
        }

        if (rows < FewestRowsToPredict)
        {
            yield return $"With {rows} rows the interval of a new response is too narrow by maximum likelihood; "
                + $"{FewestRowsToPredict} are advised.";
        }
    }

    private IReadOnlyList<double> Checked(IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Count == Design.Columns.Count
            ? weights
            : throw new ArgumentException(
                $"There are {weights.Count} weights for {Design.Columns.Count} columns.", nameof(weights));
    }

    private double[] Unit(int place)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(place);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(place, Design.Columns.Count);
        var unit = new double[Design.Columns.Count];
        unit[place] = 1;
        return unit;
    }
}
