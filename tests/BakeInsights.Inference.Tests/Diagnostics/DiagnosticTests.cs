using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What diagnostics say, and when they can't.</summary>
public class DiagnosticTests
{
    private static readonly double[] X = [1, 2, 3, 4, 5, 6, 7, 8];

    [Fact]
    public void Row_that_lies_far_off_is_named()
    {
        var fit = Line([1.1, 1.9, 3.2, 3.8, 5.1, 9.5, 7.0, 8.1]);

        var residual = Influence.LargestResidual(fit).Value;

        Assert.True(residual.IsConcern);
        Assert.StartsWith("Row 6 lies farthest off", residual.Statement, StringComparison.Ordinal);
        Assert.Equal("Student's t with 5 degrees of freedom, times 8 rows", residual.Reference);
        Assert.Equal(Thresholds.PValue, residual.Threshold);
    }

    [Fact]
    public void Row_that_lies_apart_in_its_columns_and_moves_the_fit_is_named()
    {
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(8), new DesignColumn("x", [1, 2, 3, 4, 5, 6, 7, 30])),
            [1, 2.1, 2.9, 4.1, 4.9, 6.1, 7, 10]).Value;

        var leverage = Influence.LargestLeverage(fit);
        Assert.True(leverage.IsConcern);
        Assert.StartsWith("Row 8 has the highest leverage, 3", leverage.Statement, StringComparison.Ordinal);
        Assert.True(Influence.LargestCooksDistance(fit).Value.IsConcern);
        Assert.StartsWith("Row 8", Influence.LargestCooksDistance(fit).Value.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Even_rows_give_no_concern()
    {
        var fit = Line([1.1, 1.9, 3.2, 3.8, 5.1, 5.9, 7.2, 7.8]);

        Assert.False(Influence.LargestLeverage(fit).IsConcern);
        Assert.False(Influence.LargestResidual(fit).Value.IsConcern);
        Assert.False(Influence.LargestCooksDistance(fit).Value.IsConcern);
        Assert.False(Normality.ShapiroWilk(fit).Value.IsConcern);
        Assert.False(ConstantSpread.BreuschPagan(fit).Value.IsConcern);
        Assert.False(Collinearity.LargestConditionIndex(fit).IsConcern);
        Assert.All(Collinearity.VarianceInflation(fit), inflation => Close.Relative(1, inflation.Value, 1e-12));
    }

    [Fact]
    public void Alternating_rows_are_told_from_rows_that_err_alike()
    {
        var alternating = SerialCorrelation.DurbinWatson(Line([1, 0, 1, 0, 1, 0, 1, 0])).Value;
        var alike = SerialCorrelation.DurbinWatson(Line([1, 1, 1, 0, 0, 0, 1, 1])).Value;

        Assert.True(alternating.Value > 3 && alternating.IsConcern);
        Assert.True(alike.Value < 2);
        Assert.StartsWith("Neighbouring rows err in opposite ways", alternating.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Perfect_fit_leaves_nothing_to_judge()
    {
        var fit = Line(X);

        Problem(FitProblemKind.ZeroSpread, Influence.LargestResidual(fit));
        Problem(FitProblemKind.ZeroSpread, Influence.LargestCooksDistance(fit));
        Problem(FitProblemKind.ZeroSpread, ConstantSpread.BreuschPagan(fit));
        Problem(FitProblemKind.ZeroSpread, SerialCorrelation.DurbinWatson(fit));
        Problem(FitProblemKind.ZeroSpread, Normality.ShapiroWilk(fit));
        Assert.All(RowInfluence.Of(fit), row => Assert.Equal(
            (null, null, null), (row.Studentised, row.DeletionStudentised, row.CooksDistance)));
    }

    [Fact]
    public void Row_that_the_fit_must_pass_through_has_no_studentised_residual_and_no_leave_one_out_error()
    {
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(4), new DesignColumn("only", [0, 0, 0, 1])), [1, 2, 4, 9]).Value;

        Assert.Null(RowInfluence.Of(fit)[3].Studentised);
        Assert.NotNull(RowInfluence.Of(fit)[0].Studentised);
        Assert.Null(fit.LeaveOneOutError);
        Assert.Equal(1, fit.Leverage[3], 12);
    }

    [Fact]
    public void Without_one_row_two_others_leave_no_spread()
    {
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(3), new DesignColumn("x", [1, 2, 3])), [1, 2, 4]).Value;

        Problem(FitProblemKind.TooFewRows, Influence.LargestResidual(fit));
    }

    [Fact]
    public void Lack_of_fit_needs_repeated_settings_and_more_settings_than_columns()
    {
        Problem(FitProblemKind.NoReplicates, LackOfFit.FromReplicates(Line([1, 3, 2, 4, 5, 7, 6, 8])));
        Problem(FitProblemKind.NoReplicates, LackOfFit.FromReplicates(LeastSquares.Fit(
            new Design(DesignColumn.Constant(4), new DesignColumn("x", [1, 1, 2, 2])), [1, 2, 3, 5]).Value));
        Problem(FitProblemKind.ZeroSpread, LackOfFit.FromReplicates(LeastSquares.Fit(
            new Design(DesignColumn.Constant(6), new DesignColumn("x", [1, 1, 2, 2, 3, 3])),
            [1, 1, 3, 3, 4, 4]).Value));
    }

    [Fact]
    public void Bend_shows_as_lack_of_fit()
    {
        var check = LackOfFit.FromReplicates(LeastSquares.Fit(
            new Design(DesignColumn.Constant(8), new DesignColumn("x", [1, 1, 2, 2, 3, 3, 4, 4])),
            [1, 1.1, 4, 4.1, 9, 9.1, 16, 16.1]).Value).Value;

        Assert.True(check.IsConcern);
    }

    [Fact]
    public void Spread_of_a_level_alone_follows_no_column() => Problem(
        FitProblemKind.TooFewColumns,
        ConstantSpread.BreuschPagan(LeastSquares.Fit(new Design(DesignColumn.Constant(5)), [1, 2, 4, 3, 9]).Value));

    [Fact]
    public void Spread_is_judged_alike_however_groups_are_coded()
    {
        string[] labels = ["a", "a", "a", "b", "b", "b", "c", "c", "c"];
        double[] y = [1, 2, 4, 3, 9, 4, 5, 5.5, 6];
        var every = GroupColumns.From("oven", labels, GroupCoding.EveryGroup);
        var first = GroupColumns.From("oven", labels, GroupCoding.AgainstFirst);

        var one = ConstantSpread.BreuschPagan(LeastSquares.Fit(new Design(every), y).Value).Value;
        var other = ConstantSpread.BreuschPagan(
            LeastSquares.Fit(new Design([DesignColumn.Constant(9), .. first]), y).Value).Value;

        Close.Relative(other.Value, one.Value, 1e-12);
        Assert.Equal(other.Reference, one.Reference);
    }

    [Fact]
    public void Nearly_equal_columns_are_a_concern()
    {
        var fit = LeastSquares.Fit(
            new Design(
                DesignColumn.Constant(8),
                new DesignColumn("x", X),
                new DesignColumn("twin", [1.01, 2, 3, 4.01, 5, 6, 7.01, 8])),
            [1, 3, 2, 4, 5, 7, 6, 8]).Value;

        Assert.All(Collinearity.VarianceInflation(fit), inflation => Assert.True(inflation.IsConcern));
        Assert.True(Collinearity.LargestConditionIndex(fit).IsConcern);
        Assert.All(Enumerable.Range(0, 3), column =>
            Close.Relative(1, Collinearity.ConditionIndices(fit).Sum(direction => direction.Shares[column]), 1e-12));
    }

    private static LeastSquaresFit Line(double[] y) =>
        LeastSquares.Fit(new Design(DesignColumn.Constant(8), new DesignColumn("x", X)), y).Value;

    private static void Problem(FitProblemKind kind, Attempt<Diagnostic> attempt)
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal(kind, problem.Kind);
    }
}
