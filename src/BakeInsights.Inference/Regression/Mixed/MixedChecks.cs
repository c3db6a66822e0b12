namespace BakeInsights.Inference;

/// <summary>What can be said against a mixed model before it is fitted, beyond what least squares would say.</summary>
internal static class MixedChecks
{
    /// <summary>The problem of there being one group only.</summary>
    public static FitProblem OneGroup(string groups) => new(
        FitProblemKind.TooFewGroups,
        [groups],
        $"All rows belong to one group of {groups}, so a spread between groups can't be estimated.",
        $"Add rows of other groups of {groups}, or fit by least squares.");

    /// <summary>The problem of a slope column that is constant in every group.</summary>
    public static FitProblem SlopeConstantWithin(string slope, string groups) => new(
        FitProblemKind.DependentColumn,
        [slope, groups],
        $"Column {slope} is the same in all rows of each group of {groups}, so groups' slopes can't be estimated.",
        $"Leave the slope by group out, or add rows in which {slope} varies within groups.");

    /// <summary>The problem of a search that didn't come to rest.</summary>
    public static FitProblem NotAtRest(string response, string groups) => new(
        FitProblemKind.NoConvergence,
        [response, groups],
        $"The search for the spread between groups of {groups} didn't come to rest.",
        "Leave the slope by group out, or add groups.");

    /// <summary>The problem of no row being left over within groups.</summary>
    public static FitProblem NothingWithin(string groups, string parts, int rowsMissing) => new(
        FitProblemKind.TooFewRows,
        [groups],
        $"Once each group of {groups} has its own {parts}, no row is left over to estimate the spread "
            + "within groups from.",
        $"Add {rowsMissing} or more rows to groups that are there.");

    /// <summary>The problem of columns that are the groups.</summary>
    public static FitProblem ToldApart(string groups) => new(
        FitProblemKind.TooFewGroups,
        [groups],
        $"The columns by themselves tell all groups of {groups} apart, so nothing is left to estimate "
            + "the spread between groups from.",
        $"Add groups of {groups}, or leave out columns that are the same throughout each group.");

    /// <summary>The problem of a response that groups and columns explain entirely.</summary>
    public static FitProblem NoSpreadWithin(string response, string groups) => new(
        FitProblemKind.NoSpread,
        [response, groups],
        $"Within the groups of {groups} the columns explain {response} entirely, so there is no "
            + "spread within groups to compare with.",
        $"Add rows in which {response} varies within a group.");

    /// <summary>The first problem of the rows' division into groups; null if there is none.</summary>
    /// <param name="reduction">The rows along orthonormal columns, the response's residuals last.</param>
    /// <param name="rows">The number of rows.</param>
    /// <param name="totals">The sum of squares of each column and of the response, before the groups.</param>
    /// <param name="names">The names of response and groups.</param>
    public static FitProblem? Find(
        GroupReduction reduction, int rows, double[] totals, (string Response, string Groups) names)
    {
        var (rank, leftOver) = WithinRank(reduction, totals, rows);
        var within = rows - reduction.GroupColumnCount - rank;
        var between = rows - (reduction.Width - 1) - within;
        var parts = reduction.HasSlope ? "level and slope" : "level";
        if (within < 1)
        {
            return NothingWithin(names.Groups, parts, 1 - within);
        }

        if (between < 1)
        {
            return ToldApart(names.Groups);
        }

        return leftOver ? null : NoSpreadWithin(names.Response, names.Groups);
    }

    /// <summary>
    /// How many columns vary within groups independently of each other, and whether the response does so beyond them.
    /// </summary>
    private static (int Rank, bool LeftOver) WithinRank(GroupReduction reduction, double[] totals, int rows)
    {
        var width = reduction.Width;
        double[] table = [.. reduction.Within];

        // A sum of n squares is off by n epsilon of the whole at most; a margin of 100 for the elimination. Common
        // practice, no source.
        var tolerance = 100 * rows * LeastSquares.Epsilon;
        var rank = 0;
        for (var j = 0; j < width; j++)
        {
            var pivot = table[(j * width) + j];
            if (pivot <= tolerance * tolerance * totals[j] || pivot <= tolerance * reduction.Within[(j * width) + j])
            {
                continue;
            }

            if (j == width - 1)
            {
                return (rank, true);
            }

            rank++;
            for (var i = j + 1; i < width; i++)
            {
                var share = table[(i * width) + j] / pivot;
                for (var k = j + 1; k < width; k++)
                {
                    table[(i * width) + k] -= share * table[(j * width) + k];
                }
            }
        }

        return (rank, false);
    }
}
