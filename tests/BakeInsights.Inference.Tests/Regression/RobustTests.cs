using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Robust fits; expected values in stackloss-robust.csv and phones-robust.csv, written by r/robust.R.
/// </summary>
public class RobustTests
{
    private const double Tolerance = 1e-8;

    [Theory]
    [InlineData("stackloss", "loss")]
    [InlineData("phones", "calls")]
    public void Robust_fits_have_the_expected_coefficients_standard_errors_scale_and_weights(
        string set, string response)
    {
        var data = ReferenceTable.Read($"r/{set}.csv");
        var expected = ReferenceTable.Read($"r/{set}-robust.csv");
        var design = new Design([
            DesignColumn.Constant(data.RowCount),
            .. data.Header.Where(name => name != response).Select(data.Column)]);
        var y = data.Numbers(response);

        IsExpected("Huber", RobustRegression.Huber(design, y).Value);
        IsExpected("bisquare", RobustRegression.Bisquare(design, y).Value);
        IsExpected("MM", RobustRegression.MmEstimate(design, y, 1).Value);

        void IsExpected(string name, RobustFit fit)
        {
            for (var j = 0; j < fit.Terms.Count; j++)
            {
                Close.Relative(expected.Value($"{name} {j + 1}"), fit.Terms[j].Estimate, Tolerance);
                Close.Relative(expected.Value($"{name} {j + 1} SE"), fit.Terms[j].StandardError, Tolerance);
            }

            Close.Relative(expected.Value($"{name} scale"), fit.Scale, Tolerance);
            foreach (var row in fit.Rows)
            {
                Close.Absolute(expected.Value($"{name} weight {row.Row + 1}"), row.Weight, Tolerance);
            }
        }
    }

    [Fact]
    public void Years_in_which_minutes_were_recorded_are_weighed_down()
    {
        var data = ReferenceTable.Read("r/phones.csv");

        var fit = RobustRegression.MmEstimate(
            new Design(DesignColumn.Constant(data.RowCount), data.Column("year")), data.Numbers("calls"), 2).Value;

        var years = fit.WeighedDown.Select(row => data.Numbers("year")[row.Row]).Order();
        Assert.Equal([64, 65, 66, 67, 68, 69, 70], years);
        Assert.Equal("MM-estimate", fit.Summary.Method);
        Assert.Equal(fit.Scale, fit.Summary.ResidualStandardDeviation);
    }

    [Fact]
    public void Seed_does_not_move_an_estimate_that_is_found()
    {
        var data = ReferenceTable.Read("r/phones.csv");
        var design = new Design(DesignColumn.Constant(data.RowCount), data.Column("year"));

        var estimates = Enumerable.Range(1, 5).Select(seed =>
            RobustRegression.MmEstimate(design, data.Numbers("calls"), seed).Value.Terms[1].Estimate).ToArray();

        Assert.All(estimates, slope => Close.Relative(estimates[0], slope, 1e-9));
    }

    [Fact]
    public void Clean_line_with_four_wild_rows_of_ten_is_found()
    {
        double[] x = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
        double[] y = [1.1, 1.9, 3.1, 3.9, 5.1, 5.9, 40, 42, 39, 45];

        var fit = RobustRegression.MmEstimate(
            new Design(DesignColumn.Constant(10), new DesignColumn("x", x)), y, 3).Value;

        Close.Absolute(1, fit.Terms[1].Estimate, 0.05);
        Assert.Equal([6, 7, 8, 9], fit.WeighedDown.Select(row => row.Row).Order());
    }

    [Fact]
    public void Rows_that_lie_on_a_line_for_the_most_part_are_refused()
    {
        double[] y = [1, 2, 3, 4, 5, 6, 7, 20];
        var design = new Design(DesignColumn.Constant(8), new DesignColumn("x", [1, 2, 3, 4, 5, 6, 7, 8]));

        Assert.False(RobustRegression.MmEstimate(design, y, 1).TryGet(out _, out var problem));

        Assert.Equal(FitProblemKind.ZeroSpread, problem.Kind);
    }

    [Fact]
    public void Problems_are_those_of_least_squares()
    {
        var twice = new Design(new DesignColumn("a", [1, 2, 3, 4]), new DesignColumn("b", [2, 4, 6, 8]));

        Assert.False(RobustRegression.Huber(twice, [1, 2, 2, 5]).TryGet(out _, out var problem));

        Assert.Equal(FitProblemKind.DependentColumn, problem.Kind);
    }
}
