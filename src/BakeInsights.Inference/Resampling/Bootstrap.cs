namespace BakeInsights.Inference;

/// <summary>Draws rows, or clusters of rows, again with replacement, and estimates anew each time.</summary>
/// <remarks>Efron (1979), Bootstrap methods: another look at the jackknife, Annals of Statistics 7, 1-26.</remarks>
public static class Bootstrap
{
    /// <summary>The distribution of any statistic of the rows.</summary>
    /// <param name="name">The name of the statistic.</param>
    /// <param name="rowCount">The number of rows.</param>
    /// <param name="statistic">
    /// From a list of rows, counted from 0 and with repeats, to the estimate; null where they give none. It is called
    /// from several threads at once, so it must not change anything.
    /// </param>
    /// <param name="resamples">How many, and the seed.</param>
    /// <param name="clusters">The cluster of each row, drawn whole; null if rows are drawn singly.</param>
    /// <returns>
    /// The distribution, or a problem: there is one row or cluster, the data or most resamples give no estimate, or all
    /// give the same.
    /// </returns>
    /// <exception cref="ArgumentException">Rows and cluster labels don't match.</exception>
    public static Attempt<BootstrapDistribution> Of(
        string name,
        int rowCount,
        Func<IReadOnlyList<int>, double?> statistic,
        Resamples resamples,
        IReadOnlyList<string>? clusters = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(statistic);
        ArgumentNullException.ThrowIfNull(resamples);
        var units = ResamplingUnits.Of(rowCount, clusters);
        if (units.Find(name) is { } problem)
        {
            return problem;
        }

        var replicates = new double?[resamples.Count];
        resamples.ForEach((from, to) =>
        {
            for (var b = from; b < to; b++)
            {
                replicates[b] = statistic(units.Draw(new SeededStream(resamples.Seed, b)));
            }
        });
        double?[] jackknife = [.. Enumerable.Range(0, units.Count).Select(u => statistic(units.Without(u)))];
        return BootstrapDistribution.Of(
            name,
            statistic([.. Enumerable.Range(0, rowCount)]),
            replicates,
            jackknife,
            BootstrapDistribution.FewUnits);
    }

    /// <summary>Least squares on rows drawn again: every resample's coefficients.</summary>
    /// <remarks>
    /// The columns are made orthonormal once, so that each refit solves well-conditioned equations of the columns'
    /// size, whatever the columns' units and however nearly they depend on each other.
    /// </remarks>
    /// <param name="design">The columns.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="resamples">How many, and the seed.</param>
    /// <param name="clusters">The cluster of each row, drawn whole; null if rows are drawn singly.</param>
    /// <returns>The refits, or a problem: one of least squares, or there is one cluster only.</returns>
    /// <exception cref="ArgumentException">Rows, response and cluster labels don't match.</exception>
    public static Attempt<BootstrapRefits> LeastSquares(
        Design design,
        IReadOnlyList<double> response,
        Resamples resamples,
        IReadOnlyList<string>? clusters = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(resamples);
        var units = ResamplingUnits.Of(design.RowCount, clusters);
        if (!Inference.LeastSquares.Fit(design, response).TryGet(out var fit, out var problem))
        {
            return problem;
        }

        return units.Find("the coefficients") is { } tooFew
            ? tooFew
            : new BootstrapRefits(fit, new RefitTable(fit, units), resamples, errorsOnly: false);
    }

    /// <summary>Least squares on the same columns with errors drawn again from the residuals.</summary>
    /// <remarks>
    /// For planned columns, as in an experiment, where rows drawn again would leave columns that depend on each other.
    /// Assumes, beyond independence, that all rows scatter alike. Davison and Hinkley (1997), Bootstrap Methods and
    /// their Application, section 6.2.3.
    /// </remarks>
    /// <param name="design">The columns.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="resamples">How many, and the seed.</param>
    /// <returns>The refits, or a problem of least squares.</returns>
    /// <exception cref="ArgumentException">Rows and response don't match.</exception>
    public static Attempt<BootstrapRefits> LeastSquaresErrors(
        Design design, IReadOnlyList<double> response, Resamples resamples)
    {
        ArgumentNullException.ThrowIfNull(resamples);
        return Inference.LeastSquares.Fit(design, response).Select(fit => new BootstrapRefits(
            fit, new RefitTable(fit, ResamplingUnits.Of(fit.N, null)), resamples, errorsOnly: true));
    }
}
