namespace BakeInsights.Inference;

/// <summary>A fitted mixed model.</summary>
public sealed class MixedFit : IFit
{
    /// <summary>
    /// Groups below which 95 % intervals hold the truth in less than 93.5 % of the simulation in docs/inference.md: in
    /// any model, and with slopes by group for columns that are the same throughout each group.
    /// </summary>
    private const int FewGroups = 5, FewGroupsWithSlopes = 40;

    private readonly double[] _coefficients;
    private readonly OrthonormalColumns _columns;
    private readonly DevianceDerivatives _at;
    private readonly SatterthwaiteDegrees _degrees;
    private readonly MixedParts _parts;

    internal MixedFit(LeastSquaresFit start, MixedParts parts, MixedCriterion criterion)
    {
        _parts = parts;
        (Criterion, Design, Boundary) = (criterion, start.Design, parts.Minimum.Boundary);
        (_columns, _at) = (parts.Columns, parts.Minimum.At);
        _degrees = new SatterthwaiteDegrees(_at, parts.Minimum.Factor, parts.Deviance.Divisor);
        Variances = parts.Variances();
        _coefficients =
        [
            .. _columns.Coefficients(_at.Coordinates).Zip(start.Terms, (shift, term) => shift + term.Estimate),
        ];
        Terms = Array.AsReadOnly(Design.Names.Select((name, j) => Combination(Unit(j), name)).ToArray());
        var effects = parts.Effects(_degrees);
        GroupEffects = Array.AsReadOnly(effects);
        var fitted = parts.Fitted(start.FittedValues, effects);
        Rows = Array.AsReadOnly(fitted
            .Select((f, i) => new FitRow(i, start.Response[i], f, start.Response[i] - f, null, null)).ToArray());
        Summary = Summarize(parts);
        Caveats = Array.AsReadOnly(FindCaveats(parts).ToArray());
    }

    /// <summary>The design that was fitted.</summary>
    public Design Design { get; }

    /// <summary>What was maximized.</summary>
    public MixedCriterion Criterion { get; }

    /// <summary>The coefficients, with Satterthwaite's degrees of freedom.</summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>
    /// The fit as a whole. The log-likelihood is the restricted one under that criterion, without + log |X'X| / 2.
    /// </summary>
    public FitSummary Summary { get; }

    /// <summary>The rows; the fitted values hold the groups' predicted effects.</summary>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>The variances within and between groups.</summary>
    public MixedVariances Variances { get; }

    /// <summary>Whether a variance between groups came out as 0, or a correlation as -1 or 1.</summary>
    public MixedBoundary Boundary { get; }

    /// <summary>The groups' predicted departures, in ordinal order of their labels.</summary>
    public IReadOnlyList<GroupEffect> GroupEffects { get; }

    /// <summary>What has to be said with the fit, one sentence each; none if all is well.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>The estimate of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column.</param>
    /// <param name="name">What to call it.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public Term Combination(IReadOnlyList<double> weights, string name = "combination")
    {
        var z = Whitened(weights);
        var solved = SmallMatrix.Times(_at.Inverse, z);
        var value = OrthonormalColumns.Dot(z, solved);
        var estimate = weights.Zip(_coefficients, (w, b) => w * b).Sum();
        if (!(value > 0))
        {
            return new Term(name, estimate, 0, Summary.ResidualDegreesOfFreedom ?? 1);
        }

        var change = _at.ColumnChange.Select(table => -SmallMatrix.Quadratic(table, solved, solved)).ToArray();
        return new Term(name, estimate, Math.Sqrt(Variances.Residual * value), _degrees.Of(value, change));
    }

    /// <summary>The covariance of two linear combinations of the coefficients.</summary>
    /// <param name="first">A weight for each column.</param>
    /// <param name="second">A weight for each column.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        Variances.Residual * SmallMatrix.Quadratic(_at.Inverse, Whitened(first), Whitened(second));

    /// <summary>
    /// The intervals of the groups' departures, in the order of <see cref="GroupEffects"/>, with the spread between
    /// groups counted as unknown: unlike those of <see cref="PredictedEffect"/> they also hold for a handful of groups,
    /// and where the variance between groups is estimated as 0.
    /// </summary>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <exception cref="InvalidOperationException">The fit is not restricted, or has slopes by group.</exception>
    public IReadOnlyList<Interval> AveragedIntervals(double level) =>
        Criterion == MixedCriterion.Restricted && _parts.Line is null
            ? AveragedEffects.Intervals(_parts, level)
            : throw new InvalidOperationException("Averages are of restricted fits without slopes by group.");

    private FitSummary Summarize(MixedParts parts)
    {
        var rows = Rows.Count;
        var logLikelihood = -parts.Deviance.Value(_at) / 2;
        var parameters = Terms.Count + parts.Deviance.Size + 1;
        double? corrected = Criterion == MixedCriterion.Full && rows > parameters + 1
            ? (-2 * logLikelihood) + (2.0 * parameters * rows / (rows - parameters - 1))
            : null;
        var method = Criterion == MixedCriterion.Restricted
            ? "mixed model by restricted maximum likelihood"
            : "mixed model by maximum likelihood";
        return new FitSummary(
            method, rows, rows - Terms.Count, Math.Sqrt(Variances.Residual), null, logLikelihood, corrected);
    }

    private IEnumerable<string> FindCaveats(MixedParts parts)
    {
        if (Boundary == MixedBoundary.NoVariance)
        {
            yield return "The groups differ no more than chance within them explains: their variance is estimated as "
                + "0, their effects as 0, and the intervals count the rows as if they were independent.";
        }

        if (Boundary == MixedBoundary.OneDirectionOnly)
        {
            yield return "The groups vary in one combination of intercept and slope only: a variance is estimated as "
                + "0, or the correlation as -1 or 1.";
        }

        if (GroupEffects.Count < FewGroups)
        {
            yield return $"There are {GroupEffects.Count} groups; with fewer than {FewGroups} the variance between "
                + "them is hardly known, and intervals can be too narrow.";
        }

        var across = Design.Columns.FirstOrDefault(c => !c.IsConstant && parts.Grouping.IsConstantWithin(c.Values));
        if (parts.Line is not null && GroupEffects.Count < FewGroupsWithSlopes && across is not null)
        {
            yield return $"There are {GroupEffects.Count} groups; beside slopes by group and with fewer than "
                + $"{FewGroupsWithSlopes}, intervals of columns that are the same throughout each group, such as "
                + $"{across.Name}, are too narrow.";
        }
    }

    private double[] Whitened(IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Count == _coefficients.Length
            ? _columns.Whitened(weights)
            : throw new ArgumentException(
                $"There are {weights.Count} weights for {_coefficients.Length} columns.", nameof(weights));
    }

    private double[] Unit(int place)
    {
        var unit = new double[_coefficients.Length];
        unit[place] = 1;
        return unit;
    }
}
