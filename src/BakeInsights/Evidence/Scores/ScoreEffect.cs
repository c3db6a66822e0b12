using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Effects on ratings, with standard errors that never claim more than the steps of the scale can show.</summary>
internal static class ScoreEffect
{
    /// <summary>
    /// The change of the rating by a step of a cause; null when the model has no term of it. Its standard error is
    /// s / sqrt(S), s being the residual spread or, where that is smaller, the spread that rounding to the scale's steps
    /// brings, and S the sum of squares of the cause that the model's other columns leave over (Frisch and Waugh 1933,
    /// Econometrica 1, 387-401). So a few coarse scores that happen to lie on a line are no proof.
    /// </summary>
    public static Term? Of(FittedModel model, ScoreCause cause, ScoreTable table)
    {
        if (model.Coefficient(cause.Name) is not { } slope)
        {
            return null;
        }

        var fit = (LeastSquaresFit)model.Fit;
        var column = fit.Design.Columns.Single(one => one.Name == cause.Name);
        var own = LeastSquares
            .Fit(new Design([.. fit.Design.Columns.Where(one => one.Name != cause.Name)]), column.Values)
            .Match(rest => rest.ResidualSumOfSquares, problem => throw new InvalidOperationException(problem.Message));
        var error = Math.Max(fit.ResidualStandardDeviation, table.RoundingSd) / Math.Sqrt(own);
        return new Term(cause.Name, slope.Estimate * cause.Step.Size, error * cause.Step.Size, fit.ResidualDegreesOfFreedom);
    }

    /// <summary>How far the mean rating lies from a point of the scale.</summary>
    public static Term Mean(IReadOnlyList<double> ratings, double from, ScoreTable table)
    {
        var mean = ratings.Average();
        var spread = Math.Sqrt(ratings.Sum(rating => (rating - mean) * (rating - mean)) / (ratings.Count - 1));
        return new Term(
            "mean", mean - from, Math.Max(spread, table.RoundingSd) / Math.Sqrt(ratings.Count), ratings.Count - 1);
    }
}
