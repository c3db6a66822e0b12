namespace BakeInsights.Inference;

/// <summary>Ratings of things by judges, each thing by every judge.</summary>
public sealed class RatingTable
{
    private readonly double[,] _ratings;

    private RatingTable(double[,] ratings) => _ratings = ratings;

    /// <summary>The number of rated things.</summary>
    public int ThingCount => _ratings.GetLength(0);

    /// <summary>The number of judges.</summary>
    public int JudgeCount => _ratings.GetLength(1);

    /// <summary>A rating.</summary>
    public double this[int thing, int judge] => _ratings[thing, judge];

    /// <summary>Takes ratings: a row for each thing, a column for each judge. They are copied.</summary>
    /// <returns>The table, or a problem: fewer than two things or judges, or a rating is missing.</returns>
    public static Attempt<RatingTable> Of(double[,] ratings)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        if (ratings.GetLength(0) < 2 || ratings.GetLength(1) < 2)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                ["ratings"],
                $"There are {ratings.GetLength(0)} things and {ratings.GetLength(1)} judges, and at least 2 of each "
                    + "are needed.",
                "Add things or judges.");
        }

        foreach (var (thing, judge) in
            from thing in Enumerable.Range(0, ratings.GetLength(0))
            from judge in Enumerable.Range(0, ratings.GetLength(1))
            where !double.IsFinite(ratings[thing, judge])
            select (thing, judge))
        {
            return new FitProblem(
                FitProblemKind.MissingValue,
                ["ratings"],
                $"The rating of thing {thing + 1} by judge {judge + 1} is not a finite number.",
                "Give the missing rating, or leave the thing or the judge out.");
        }

        return new RatingTable((double[,])ratings.Clone());
    }

    /// <summary>The ratings of one thing.</summary>
    internal double[] Thing(int thing) => [.. Enumerable.Range(0, JudgeCount).Select(j => _ratings[thing, j])];

    /// <summary>The ratings by one judge.</summary>
    internal double[] Judge(int judge) => [.. Enumerable.Range(0, ThingCount).Select(i => _ratings[i, judge])];
}
