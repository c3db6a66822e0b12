using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Expected values computed by R with tests/reference-data/r/diagnostics.R: stackloss-checks.csv, cement-checks.csv on
/// cement.csv, cars-checks.csv, and series-checks.csv on series.csv.
/// </summary>
public class DiagnosticOracleTests
{
    private const double Tolerance = 1e-9;

    [Theory]
    [InlineData("stackloss", "loss")]
    [InlineData("cement", "heat")]
    public void Diagnostics_have_the_expected_values(string set, string response)
    {
        var data = ReferenceTable.Read($"r/{set}.csv");
        var expected = ReferenceTable.Read($"r/{set}-checks.csv");
        var fit = LeastSquares.Fit(
            new Design([
                DesignColumn.Constant(data.RowCount),
                .. data.Header.Where(name => name != response).Select(data.Column)]),
            data.Numbers(response)).Value;

        foreach (var row in RowInfluence.Of(fit))
        {
            Close.Relative(expected.Value($"studentised {row.Row + 1}"), row.Studentised, Tolerance);
            Close.Relative(expected.Value($"deletion studentised {row.Row + 1}"), row.DeletionStudentised, Tolerance);
            Close.Relative(expected.Value($"Cook {row.Row + 1}"), row.CooksDistance, Tolerance);
        }

        Close.Relative(expected.Value("adjusted R-squared"), fit.AdjustedRSquared, Tolerance);
        Close.Relative(expected.Value("log likelihood"), fit.Summary.LogLikelihood, Tolerance);
        Close.Relative(expected.Value("AICc"), fit.Summary.CorrectedAic, Tolerance);
        Close.Relative(expected.Value("leave-one-out error"), fit.LeaveOneOutError, Tolerance);
        Close.Relative(expected.Value("Bonferroni p"), Influence.LargestResidual(fit).Value.PValue, Tolerance);
        IsExpected("Breusch-Pagan", ConstantSpread.BreuschPagan(fit).Value);
        IsExpected("Durbin-Watson", SerialCorrelation.DurbinWatson(fit).Value, 1e-6);
        IsExpected("Shapiro-Wilk", Normality.ShapiroWilk(fit).Value, 1e-6);

        var inflations = Collinearity.VarianceInflation(fit);
        Assert.Equal(fit.Terms.Count - 1, inflations.Count);
        foreach (var inflation in inflations)
        {
            var column = inflation.Name["variance inflation of ".Length..];
            var name = expected.Texts("quantity")
                .Where(quantity => quantity.StartsWith("variance inflation", StringComparison.Ordinal))
                .ElementAt(fit.Design.IndexOf(column) - 1);
            Close.Relative(expected.Value(name), inflation.Value, Tolerance);
        }

        var directions = Collinearity.ConditionIndices(fit);
        for (var k = 0; k < directions.Count; k++)
        {
            Close.Relative(expected.Value($"condition index {k + 1}"), directions[k].Index, Tolerance);
            Close.Relative(expected.Value($"last share {k + 1}"), directions[^1].Shares[k], 1e-7);
        }

        void IsExpected(string name, Diagnostic diagnostic, double pTolerance = Tolerance)
        {
            Assert.Equal(name, diagnostic.Name);
            Close.Relative(expected.Value(name), diagnostic.Value, Tolerance);
            Close.Relative(expected.Value($"{name} p"), diagnostic.PValue, pTolerance);
        }
    }

    [Fact]
    public void Straight_line_of_stopping_distances_shows_no_lack_of_fit()
    {
        var expected = ReferenceTable.Read("r/cars-checks.csv");

        var check = LackOfFit.FromReplicates(Cars(null)).Value;

        Close.Relative(expected.Value("lack of fit F"), check.Value, Tolerance);
        Close.Relative(expected.Value("lack of fit p"), check.PValue, Tolerance);
        Assert.False(check.IsConcern);
        Assert.Equal("F with 17 and 31 degrees of freedom", check.Reference);
    }

    [Fact]
    public void Weighted_fit_has_the_expected_values()
    {
        var expected = ReferenceTable.Read("r/cars-checks.csv");
        var speeds = ReferenceTable.Read("r/cars.csv").Numbers("speed");
        double[] weights = [.. speeds.Select(speed => 1 / speed)];

        var fit = Cars(weights);
        var level = LeastSquares.Fit(fit.Design.Select("constant"), fit.Response, weights).Value;

        foreach (var term in fit.Terms)
        {
            Close.Relative(expected.Value($"weighted {term.Name}"), term.Estimate, Tolerance);
            Close.Relative(expected.Value($"weighted {term.Name} SE"), term.StandardError, Tolerance);
        }

        Close.Relative(expected.Value("weighted residual SD"), fit.ResidualStandardDeviation, Tolerance);
        Close.Relative(expected.Value("weighted R-squared"), fit.RSquared, Tolerance);
        Close.Relative(expected.Value("weighted adjusted R-squared"), fit.AdjustedRSquared, Tolerance);
        Close.Relative(expected.Value("weighted log likelihood"), fit.Summary.LogLikelihood, Tolerance);
        Close.Relative(expected.Value("weighted F"), LeastSquares.Compare(level, fit).FValue, Tolerance);
        foreach (var row in RowInfluence.Of(fit))
        {
            Close.Relative(expected.Value($"weighted leverage {row.Row + 1}"), row.Leverage, Tolerance);
            Close.Relative(
                expected.Value($"weighted deletion studentised {row.Row + 1}"), row.DeletionStudentised, Tolerance);
            Close.Relative(expected.Value($"weighted Cook {row.Row + 1}"), row.CooksDistance, Tolerance);
        }
    }

    [Fact]
    public void Shapiro_and_Wilks_test_has_the_expected_values_from_four_rows_on()
    {
        var expected = ReferenceTable.Read("r/series-checks.csv");
        var y = ReferenceTable.Read("r/series.csv").Numbers("y");
        for (var n = 4; n <= 30; n++)
        {
            var check = Normality.ShapiroWilk(
                LeastSquares.Fit(new Design(DesignColumn.Constant(n)), y[..n]).Value).Value;
            Close.Relative(expected.Value($"Shapiro-Wilk {n}"), check.Value, Tolerance);
            Close.Relative(expected.Value($"Shapiro-Wilk p {n}"), check.PValue, 1e-6);
        }
    }

    /// <summary>
    /// R's exact p of 60 rows is good to about six digits; for 200 rows it has only the normal one, which is near.
    /// </summary>
    [Theory]
    [InlineData(60, "Durbin-Watson exact p of 60", 1e-5)]
    [InlineData(200, "Durbin-Watson normal p of 200", 5e-3)]
    [InlineData(240, "Durbin-Watson normal p of 240", 1e-9)]
    public void Durbin_and_Watsons_ratio_has_the_expected_p(int rows, string name, double tolerance) => Close.Relative(
        ReferenceTable.Read("r/series-checks.csv").Value(name),
        SerialCorrelation.DurbinWatson(Series(rows)).Value.PValue,
        tolerance);

    private static LeastSquaresFit Series(int rows)
    {
        var data = ReferenceTable.Read("r/series.csv");
        return LeastSquares.Fit(
            new Design(DesignColumn.Constant(rows), new DesignColumn("x", data.Numbers("x")[..rows])),
            data.Numbers("y")[..rows]).Value;
    }

    private static LeastSquaresFit Cars(double[]? weights)
    {
        var data = ReferenceTable.Read("r/cars.csv");
        return LeastSquares.Fit(
            new Design(DesignColumn.Constant(data.RowCount), data.Column("speed")), data.Numbers("distance"),
            weights).Value;
    }
}
