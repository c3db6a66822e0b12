namespace BakeInsights.Inference;

/// <summary>
/// Linear regression for rows in groups, such as loaves of one dough or bakes of one day: each group has a level of its
/// own, and if asked a slope, drawn from a normal distribution.
/// </summary>
/// <remarks>
/// Assumes that groups are a sample of those to be spoken of, and that departures of groups and of rows are normal,
/// independent of the columns and of equal spread. Laird and Ware (1982), Biometrics 38, 963-974; fitted as by Bates,
/// Maechler, Bolker and Walker (2015), Journal of Statistical Software 67(1).
/// </remarks>
public static class MixedModel
{
    private const string ResponseName = "response";

    /// <summary>Fits the response on the columns of the design, with a level for each group.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="groups">The name of the grouping, such as "day".</param>
    /// <param name="labels">The group of each row.</param>
    /// <param name="slope">A column of the design whose slope differs by group; null if none does.</param>
    /// <param name="criterion">What is maximized.</param>
    /// <returns>
    /// The fit, or a problem: one of least squares, one group only, no row left over within groups or between them, no
    /// spread within groups, or a slope's column that doesn't vary within groups.
    /// </returns>
    /// <exception cref="ArgumentException">
    /// Response or labels have another number of rows than the design, a label or the name of the grouping is blank, or
    /// no column is named as the slope.
    /// </exception>
    public static Attempt<MixedFit> Fit(
        Design design,
        IReadOnlyList<double> response,
        string groups,
        IReadOnlyList<string> labels,
        string? slope = null,
        MixedCriterion criterion = MixedCriterion.Restricted)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentException.ThrowIfNullOrWhiteSpace(groups);
        Refuse(design, groups, labels);
        var slopeColumn = slope is null ? null : design.Columns[design.IndexOf(slope)];
        if (!LeastSquares.Fit(design, response).TryGet(out var start, out var problem))
        {
            return problem;
        }

        var grouping = Grouping.Of(labels);
        if (grouping.Names.Length == 1)
        {
            return MixedChecks.OneGroup(groups);
        }

        var line = slopeColumn is null ? null : CentredColumn.Of(slopeColumn);
        if (slopeColumn is not null && (line is null || grouping.IsConstantWithin(slopeColumn.Values)))
        {
            return MixedChecks.SlopeConstantWithin(slopeColumn.Name, groups);
        }

        var q = OrthonormalColumns.Of(design.Columns);
        double[][] columns = [.. q.Q, [.. start.Residuals]];
        var reduction = GroupReduction.Of(columns, grouping.Rows, line?.Values);
        double[] totals = [.. q.Q.Select(_ => 1.0), response.Sum(y => y * y)];
        if (MixedChecks.Find(reduction, design.RowCount, totals, (ResponseName, groups)) is { } found)
        {
            return found;
        }

        var deviance = new MixedDeviance(
            reduction, design.RowCount, q.LogDeterminant, criterion == MixedCriterion.Restricted);
        return FactorSearch.Find(deviance) is { } minimum
            ? new MixedFit(start, new MixedParts(q, reduction, grouping, line, deviance, minimum), criterion)
            : MixedChecks.NotAtRest(ResponseName, groups);
    }

    private static void Refuse(Design design, string groups, IReadOnlyList<string> labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        if (labels.Count != design.RowCount)
        {
            throw new ArgumentException(
                $"There are {labels.Count} labels of {groups} and {design.RowCount} rows.", nameof(labels));
        }

        if (labels.Any(string.IsNullOrWhiteSpace))
        {
            throw new ArgumentException(
                $"Every row needs a label of {groups}: leave unlabelled rows out.", nameof(labels));
        }
    }
}
