namespace BakeInsights.Inference;

/// <summary>The runs, chosen from a list of candidates, that tell most about a model's coefficients.</summary>
/// <remarks>
/// Fedorov's exchange: from random starts, the pair of a run and a candidate whose exchange gains most is exchanged
/// until none gains. Cook and Nachtsheim (1980), A comparison of algorithms for constructing exact D-optimal designs,
/// Technometrics 22, 315-324. Constraints are kept by leaving candidates out. The best of several starts is nearly
/// always the best there is, but nothing proves it.
/// </remarks>
/// <param name="Candidates">The places of the chosen candidates, in increasing order, with repeats.</param>
/// <param name="LogDeterminant">The logarithm of the determinant of X'X, earlier runs included.</param>
/// <param name="Efficiency">
/// The determinant to the power 1 / columns, over the number of runs, earlier ones included.
/// </param>
/// <param name="AverageVariance">
/// The variance of a prediction over the residual variance, on average over the candidates or the aims.
/// </param>
public sealed record OptimalDesign(
    IReadOnlyList<int> Candidates, double LogDeterminant, double Efficiency, double AverageVariance)
{
    /// <summary>Chooses runs.</summary>
    /// <param name="candidates">A row for each possible run, a column for each coefficient of the model.</param>
    /// <param name="runs">How many runs to choose, at least 1.</param>
    /// <param name="criterion">What is made best.</param>
    /// <param name="seed">The seed of the starts.</param>
    /// <param name="earlier">Runs that were made already, in the same columns; null if there are none.</param>
    /// <param name="starts">How many random starts, at least 1; 20 is usual.</param>
    /// <param name="aims">
    /// What <see cref="DesignCriterion.AveragePrediction"/> predicts in place of the candidates: rows of weights on the
    /// coefficients, such as the slope of a curve at some places. Null for the candidates.
    /// </param>
    /// <returns>
    /// The design, or a problem: a number is missing, the candidates' columns depend on each other, or there are fewer
    /// runs than columns.
    /// </returns>
    /// <exception cref="ArgumentException">The earlier runs or the aims have other columns, or a number is below 1.</exception>
    public static Attempt<OptimalDesign> Find(
        Design candidates,
        int runs,
        DesignCriterion criterion,
        int seed,
        Design? earlier = null,
        int starts = 20,
        Design? aims = null)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        ArgumentOutOfRangeException.ThrowIfLessThan(runs, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(starts, 1);
        if (earlier is not null && !earlier.Names.SequenceEqual(candidates.Names))
        {
            throw new ArgumentException("The earlier runs have other columns than the candidates.", nameof(earlier));
        }

        if (aims is not null && !aims.Names.SequenceEqual(candidates.Names))
        {
            throw new ArgumentException("The aims have other columns than the candidates.", nameof(aims));
        }

        if (DesignChecks.Find(candidates, earlier, aims, runs) is { } problem)
        {
            return problem;
        }

        var search = new ExchangeSearch(candidates, earlier, criterion, aims);
        var tries = new (int[] Rows, double Gain)?[starts];
        Parallel.For(0, starts, start => tries[start] = search.From(new SeededStream(seed, start), runs));
        var best = tries.OfType<(int[] Rows, double Gain)>().ToArray();
        if (best.Length == 0)
        {
            return DesignChecks.NoDesign(runs);
        }

        // Equal designs differ by rounding; the first of them is taken, so that the answer is the same everywhere.
        var (rows, gain) = best[0];
        foreach (var other in best.Where(other => other.Gain > gain + 1e-9))
        {
            (rows, gain) = other;
        }

        var (logDeterminant, average) = search.Measures(rows);
        var total = runs + (earlier?.RowCount ?? 0);
        return new OptimalDesign(
            [.. rows.Order()], logDeterminant, Math.Exp(logDeterminant / candidates.Columns.Count) / total, average);
    }
}
