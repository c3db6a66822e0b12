namespace BakeInsights.Inference;

/// <summary>Asks how often a statistic would be as large if rows were matched with responses by chance.</summary>
/// <remarks>
/// Assumes only that under the hypothesis all orders (within blocks, if given) are equally likely, as randomization
/// makes them. Edgington and Onghena (2007), Randomization Tests, 4th ed.; the p value of drawn orders counts the
/// observed one: Phipson and Smyth (2010), Statistical Applications in Genetics and Molecular Biology 9, article 39.
/// </remarks>
/// <param name="Statistic">The statistic of the data as they are.</param>
/// <param name="PValue">The share of orders whose statistic is at least as large.</param>
/// <param name="OrderCount">How many orders were looked at, the observed one included.</param>
/// <param name="IsExact">Whether these were all there are.</param>
public sealed record PermutationTest(double Statistic, double PValue, int OrderCount, bool IsExact)
{
    /// <summary>
    /// Statistics that differ by less than this, relatively, are one: summing in another order rounds so.
    /// </summary>
    private const double RoundingAllowance = 1e-10;

    /// <summary>Tests any statistic for which large values speak against chance.</summary>
    /// <param name="rowCount">The number of rows.</param>
    /// <param name="statistic">
    /// From an order of rows, counted from 0, to the statistic: row i takes the response of row order[i]. It is called
    /// from several threads at once, so it must not change anything.
    /// </param>
    /// <param name="resamples">How many orders to draw, and the seed.</param>
    /// <param name="blocks">The block of each row, within which rows change places; null if there are none.</param>
    /// <returns>The test, or a problem: the statistic is not finite, or no row can change places.</returns>
    /// <exception cref="ArgumentException">Rows and block labels don't match.</exception>
    public static Attempt<PermutationTest> Of(
        int rowCount,
        Func<IReadOnlyList<int>, double> statistic,
        Resamples resamples,
        IReadOnlyList<string>? blocks = null)
    {
        ArgumentNullException.ThrowIfNull(statistic);
        ArgumentNullException.ThrowIfNull(resamples);
        var units = blocks is null
            ? [[.. Enumerable.Range(0, rowCount)]]
            : ResamplingUnits.Of(rowCount, blocks).Rows;
        if (Array.TrueForAll(units, rows => rows.Length < 2))
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                ["response"],
                "No row can change places with another, so there is nothing to compare with.",
                "Add rows, so that a block has two or more.");
        }

        var observed = statistic([.. Enumerable.Range(0, rowCount)]);
        if (!double.IsFinite(observed))
        {
            return Undefined();
        }

        var larger = new bool[resamples.Count];
        var defined = new bool[resamples.Count];
        resamples.ForEach((from, to) =>
        {
            for (var b = from; b < to; b++)
            {
                var value = statistic(Draw(units, rowCount, new SeededStream(resamples.Seed, b)));
                (larger[b], defined[b]) = (AtLeast(value, observed), double.IsFinite(value));
            }
        });
        return Array.TrueForAll(defined, d => d)
            ? new PermutationTest(
                observed, (larger.Count(l => l) + 1.0) / (resamples.Count + 1), resamples.Count + 1, false)
            : Undefined();
    }

    /// <summary>Tests, to both sides, whether two groups differ in their mean.</summary>
    /// <remarks>All ways of dividing the rows are looked at if they are no more than the resamples asked for.</remarks>
    /// <param name="first">The responses of one group.</param>
    /// <param name="second">The responses of the other.</param>
    /// <param name="resamples">How many divisions to draw, and the seed.</param>
    /// <returns>The test, or a problem: a response is missing, or a group is empty.</returns>
    public static Attempt<PermutationTest> OfMeans(
        IReadOnlyList<double> first, IReadOnlyList<double> second, Resamples resamples)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(resamples);
        if (first.Count == 0 || second.Count == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows, ["response"], "A group has no rows.", "Add rows to the empty group.");
        }

        double[] all = [.. first, .. second];
        if (Array.FindIndex(all, v => !double.IsFinite(v)) is >= 0 and var row)
        {
            return new FitProblem(
                FitProblemKind.MissingValue,
                ["response"],
                $"Column response has no finite number in row {row + 1} of the two groups together.",
                "Give the missing numbers or leave these rows out.");
        }

        var total = all.Sum();
        double Difference(double sum) =>
            Math.Abs((sum / first.Count) - ((total - sum) / second.Count));
        return Divisions.Count(all.Length, first.Count) is { } count && count <= resamples.Count
            ? Exact(all, first.Count, count, Difference)
            : Of(all.Length, order => Difference(order.Take(first.Count).Sum(i => all[i])), resamples);
    }

    private static PermutationTest Exact(double[] all, int size, int count, Func<double, double> difference)
    {
        var observed = difference(all[..size].Sum());
        var larger = Divisions.All(all.Length, size).Count(rows =>
            AtLeast(difference(rows.Sum(i => all[i])), observed));
        return new PermutationTest(observed, (double)larger / count, count, true);
    }

    private static bool AtLeast(double value, double observed) =>
        value >= observed - (RoundingAllowance * Math.Abs(observed));

    private static int[] Draw(int[][] units, int rowCount, SeededStream stream)
    {
        var order = new int[rowCount];
        foreach (var rows in units)
        {
            int[] shuffled = [.. rows];
            stream.Shuffle(shuffled);
            for (var i = 0; i < rows.Length; i++)
            {
                order[rows[i]] = shuffled[i];
            }
        }

        return order;
    }

    private static FitProblem Undefined() => new(
        FitProblemKind.MissingValue,
        ["response"],
        "The statistic is not a finite number for these rows or for an order of them.",
        "Give the missing numbers, or take a statistic that every order has.");
}
