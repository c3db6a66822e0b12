namespace BakeInsights.Inference;

/// <summary>A fit of ordered scores by the cumulative logit model.</summary>
public sealed class OrdinalFit : IFit
{
    private readonly OrdinalData _data;
    private readonly double[] _point;
    private readonly double[,] _covariance;

    internal OrdinalFit(
        Design design, OrdinalData data, NewtonMaximum found, Information factor, RaterEstimates? raters)
    {
        Design = design;
        _data = data;
        _point = found.Point;
        _covariance = factor.Inverse();
        Categories = Array.AsReadOnly(data.Categories);
        Thresholds = Array.AsReadOnly([.. Enumerable.Range(0, data.ThresholdCount).Select(
            k => Parameter($"{Label(k)} | {Label(k + 1)}", k))]);
        Terms = Array.AsReadOnly([.. design.Names.Select((name, j) => Parameter(name, data.ThresholdCount + j))]);
        RaterSpread = raters?.Spread;
        RaterShifts = raters?.Shifts ?? [];
        Caveats = raters?.Caveats ?? [];
        var parameters = _point.Length + (raters is { Spread.StandardError: 0 } ? 1 : 0);
        Summary = new FitSummary(
            raters is null ? "cumulative logit" : "cumulative logit with a random rater",
            data.N,
            data.N - parameters,
            null,
            null,
            found.At.Value,
            AkaikeCriterion.Of(found.At.Value, data.N, parameters));
        Rows = Array.AsReadOnly([.. Enumerable.Range(0, data.N).Select(i => Row(i, raters?.ShiftOfRow(i) ?? 0))]);
    }

    /// <summary>The design that was fitted.</summary>
    public Design Design { get; }

    /// <summary>The different scores, from the lowest.</summary>
    public IReadOnlyList<double> Categories { get; }

    /// <summary>
    /// The coefficients, in the order of the design's columns, each the change of the log odds of a higher score by
    /// one unit of its column. Their intervals are those of the normal, for large samples.
    /// </summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>The thresholds between neighbouring scores, on the logit scale, where all columns are 0.</summary>
    public IReadOnlyList<Term> Thresholds { get; }

    /// <summary>
    /// The standard deviation of the raters' shifts, on the logit scale; 0, with a standard error of 0, if the scores
    /// differ by rater no more than by chance. Null in a fit without raters.
    /// </summary>
    public Term? RaterSpread { get; }

    /// <summary>
    /// How much higher each rater scores than the middle of raters, on the logit scale: the mean given the scores,
    /// with its standard deviation. Empty in a fit without raters.
    /// </summary>
    public IReadOnlyList<Term> RaterShifts { get; }

    /// <summary>What to bear in mind when using the fit, each a sentence; empty if nothing.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>The fit as a whole. It has no residual spread and no share accounted for.</summary>
    public FitSummary Summary { get; }

    /// <summary>The rows. What is fitted is the mean score, scores taken as numbers.</summary>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>The covariance of two coefficients, by their places from 0.</summary>
    public double Covariance(int i, int j)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(i);
        ArgumentOutOfRangeException.ThrowIfNegative(j);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(i, Terms.Count);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(j, Terms.Count);
        return _covariance[_data.ThresholdCount + i, _data.ThresholdCount + j];
    }

    /// <summary>The probability of each score at a row of column values, for a rater in the middle of raters.</summary>
    /// <param name="row">A value for each column.</param>
    /// <exception cref="ArgumentException">The number of values is not the number of columns.</exception>
    public IReadOnlyList<double> Probabilities(IReadOnlyList<double> row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Count == Terms.Count
            ? Probabilities(row.Zip(Terms, (x, term) => x * term.Estimate).Sum())
            : throw new ArgumentException($"There are {row.Count} values for {Terms.Count} columns.", nameof(row));
    }

    private double[] Probabilities(double linear) => [.. Enumerable.Range(0, Categories.Count).Select(
        k => Math.Exp(BoundTerms.Of(
            k == 0 ? double.NegativeInfinity : _point[k - 1] - linear,
            k == _data.ThresholdCount ? double.PositiveInfinity : _point[k] - linear).Value))];

    private FitRow Row(int i, double shift)
    {
        var linear = shift + Design.Row(i).Zip(Terms, (x, term) => x * term.Estimate).Sum();
        var mean = Probabilities(linear).Zip(Categories, (p, score) => p * score).Sum();
        var observed = Categories[_data.Category[i]];
        return new FitRow(i, observed, mean, observed - mean, null, null);
    }

    private Term Parameter(string name, int place) =>
        new(name, _point[place], Math.Sqrt(_covariance[place, place]), double.PositiveInfinity);

    private string Label(int category) =>
        Categories[category].ToString(System.Globalization.CultureInfo.InvariantCulture);
}
