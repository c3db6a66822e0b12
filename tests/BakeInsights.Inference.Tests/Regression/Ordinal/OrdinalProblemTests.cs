using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What an ordinal fit says when the data can't carry it.</summary>
public class OrdinalProblemTests
{
    private static readonly Design Line = new(new DesignColumn("x", [1, 2, 3, 4, 5, 6]));
    private static readonly double[] Scores = [1, 2, 1, 2, 3, 2];

    [Fact]
    public void Score_that_a_column_tells_apart_is_separation() => IsRefused(
        new Design(Line.Columns[0], new DesignColumn("w", [0, 1, 0, 0, 1, 0])), [1, 1, 1, 2, 2, 2],
        FitProblemKind.Separation, ["x"],
        "Higher and lower scores are told apart by x without error, so the effects have no finite estimate.",
        "Add rows in which higher and lower scores overlap there, join scores, or leave a column out.");

    [Fact]
    public void Group_that_only_ever_has_the_top_score_is_separation()
    {
        var design = new Design(new DesignColumn("x", [1, 2, 3, 4, 5, 6, 7, 8]),
            new DesignColumn("levain", [0, 0, 0, 0, 0, 0, 1, 1]));

        Assert.Equal(
            (FitProblemKind.Separation, "levain"), Kind(Problem(design, [1, 2, 1, 3, 2, 1, 3, 3])));
    }

    [Fact]
    public void All_scores_the_same_leave_nothing_to_explain() => IsRefused(
        Line, [4, 4, 4, 4, 4, 4], FitProblemKind.NoSpread, ["response"],
        "Column response is the same in every row, so there is nothing to explain.",
        "Add rows in which response differs.");

    [Fact]
    public void Constant_column_is_what_the_thresholds_stand_for() => IsRefused(
        new Design(DesignColumn.Constant(6), Line.Columns[0]), Scores, FitProblemKind.DependentColumn, ["constant"],
        "Column constant is the same in every row, which the thresholds between scores stand for already.",
        "Leave constant out.");

    [Fact]
    public void Fewer_rows_than_columns_and_scores_are_refused() => IsRefused(
        new Design(
            Line.Columns[0], new DesignColumn("w", [0, 1, 0, 0, 1, 0]), new DesignColumn("v", [2, 1, 4, 0, 1, 0])),
        [1, 2, 3, 4, 5, 5], FitProblemKind.TooFewRows, ["response", "x", "w", "v"],
        "There are 6 rows for 3 columns and 5 different scores, and at least 8 are needed.",
        "Add 2 or more rows, join scores, or leave columns out.");

    [Fact]
    public void Missing_score_and_dependent_columns_are_told_as_by_least_squares()
    {
        var groups = GroupColumns.From("oven", ["a", "b", "c", "a", "b", "c"], GroupCoding.EveryGroup);

        Assert.Equal((FitProblemKind.MissingValue, "response"), Kind(Problem(Line, [1, 2, double.NaN, 2, 3, 2])));
        Assert.Equal((FitProblemKind.DependentColumn, "oven = c"), Kind(Problem(new Design(groups), Scores)));
    }

    [Fact]
    public void One_rater_is_not_enough()
    {
        var problem = Problem(Line, Scores, ["Ann", "Ann", "Ann", "Ann", "Ann", "Ann"]);

        Assert.Equal(FitProblemKind.TooFewGroups, problem.Kind);
        Assert.Equal("All scores are one rater's, so nothing says how raters differ.", problem.Message);
        Assert.Equal("Add scores of other raters, or fit without raters.", problem.Remedy);
    }

    [Fact]
    public void A_score_a_rater_is_not_enough()
    {
        var problem = Problem(Line, Scores, ["a", "b", "c", "d", "e", "f"]);

        Assert.Equal(FitProblemKind.TooFewGroups, problem.Kind);
        Assert.Equal("No rater gave two scores, so raters can't be told from rows.", problem.Message);
        Assert.Equal("Add scores of these raters.", problem.Remedy);
    }

    [Fact]
    public void Raters_who_never_contradict_a_column_have_no_finite_spread()
    {
        // Each rater's scores rise with x without error, at heights of their own.
        string[] raters = ["a", "a", "a", "a", "b", "b", "b", "b", "c", "c", "c", "c"];
        var design = new Design(new DesignColumn("x", [1, 2, 3, 4, 1, 2, 3, 4, 1, 2, 3, 4]));

        var problem = Problem(design, [1, 1, 1, 2, 1, 2, 2, 2, 1, 1, 2, 2], raters);

        Assert.Equal(FitProblemKind.NoConvergence, problem.Kind);
        Assert.Equal(
            "The search for the spread of raters came to no end: within raters, the columns tell scores apart almost "
                + "without error.",
            problem.Message);
        Assert.Equal("Add scores that overlap within raters, join scores, or fit without raters.", problem.Remedy);
    }

    [Fact]
    public void Raters_who_agree_have_a_spread_of_zero_and_say_so()
    {
        var design = new Design(new DesignColumn("x", [1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6]));
        double[] scores = [1, 2, 1, 2, 3, 2, 1, 2, 1, 2, 3, 2];

        var fit = CumulativeLogit.Fit(design, scores, ["a", "a", "a", "a", "a", "a", "b", "b", "b", "b", "b", "b"])
            .Value;

        Assert.Equal((0, 0), (fit.RaterSpread!.Estimate, fit.RaterSpread.StandardError));
        Assert.Equal(
            ["The raters differ no more than chance would make them, so their spread is estimated as zero.",
                "With 2 raters the spread between raters is poorly known; 5 or more are advised."],
            fit.Caveats);
        Close.Relative(CumulativeLogit.Fit(design, scores).Value.Terms[0].Estimate, fit.Terms[0].Estimate, 1e-12);
    }

    [Fact]
    public void Programming_errors_throw()
    {
        var fit = CumulativeLogit.Fit(Line, Scores).Value;

        Throws("The scores have 2 rows and the design 6.", () => CumulativeLogit.Fit(Line, [1, 2]));
        Throws("The raters have 1 rows and the design 6.", () => CumulativeLogit.Fit(Line, Scores, ["a"]));
        Throws("There are 2 values for 1 columns.", () => fit.Probabilities([1, 2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.Covariance(0, 1));
    }

    private static (FitProblemKind Kind, string Column) Kind(FitProblem problem) => (problem.Kind, problem.Columns[0]);

    private static FitProblem Problem(Design design, double[] scores, string[]? raters = null) =>
        (raters is null ? CumulativeLogit.Fit(design, scores) : CumulativeLogit.Fit(design, scores, raters))
            .Match(_ => throw new InvalidOperationException("There is a fit."), p => p);

    private static void IsRefused(
        Design design, double[] scores, FitProblemKind kind, string[] columns, string message, string remedy)
    {
        var problem = Problem(design, scores);
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
        Assert.Equal(columns, problem.Columns);
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
