using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Expected values computed by R's survival with tests/reference-data/r/censored.R, from the data of
/// tests/reference-data/censored and r/tobin.csv.
/// </summary>
public class CensoredOracleTests
{
    private const double EstimateTolerance = 1e-6, ErrorTolerance = 1e-5;

    [Theory]
    [InlineData("cosmesis", "chemotherapy")]
    [InlineData("all-kinds", "temperature_c")]
    [InlineData("looks", "temperature_c")]
    public void Bounded_times_have_the_expected_fit(string file, string column)
    {
        var data = ReferenceTable.Read($"censored/{file}.csv");

        var fit = CensoredLogNormal.Fit(
            new Design(DesignColumn.Constant(data.RowCount), data.Column(column)), Times(data)).Value;

        IsAsExpected(fit, $"{file} {column}");
        var interval = fit.Interval(1, 0.95);
        Close.Relative(Expected($"{file} {column}", "95 low"), interval.Low, EstimateTolerance);
        Close.Relative(Expected($"{file} {column}", "95 high"), interval.High, EstimateTolerance);
    }

    [Fact]
    public void Mean_of_looks_has_the_expected_fit()
    {
        var data = ReferenceTable.Read("censored/looks.csv");

        var fit = CensoredLogNormal.Fit(new Design(DesignColumn.Constant(data.RowCount)), Times(data)).Value;

        Close.Relative(Expected("looks", "constant"), fit.Terms[0].Estimate, EstimateTolerance);
        Close.Relative(Expected("looks", "constant SE"), fit.Terms[0].StandardError, ErrorTolerance);
        Close.Relative(Expected("looks", "ln spread"), fit.LogSpread!.Estimate, EstimateTolerance);
        Close.Relative(Expected("looks", "log-likelihood"), fit.Summary.LogLikelihood, EstimateTolerance);
        Close.Absolute(59.61, fit.Median([1]), 5e-3);
    }

    [Fact]
    public void Purchases_censored_at_zero_have_the_expected_fit()
    {
        // Tobin (1958): the normal model of y is the log-normal model of e^y.
        var data = ReferenceTable.Read("r/tobin.csv");
        CensoredValue[] response = [.. data.Numbers("durable").Select(
            y => y > 0 ? CensoredValue.Exact(Math.Exp(y)) : CensoredValue.Below(1))];

        var fit = CensoredLogNormal.Fit(
            new Design(DesignColumn.Constant(data.RowCount), data.Column("age"), data.Column("liquidity")),
            response).Value;

        var jacobian = data.Numbers("durable").Sum();
        IsAsExpected(fit, "tobin", jacobian);
    }

    internal static CensoredValue[] Times(ReferenceTable data) =>
    [
        .. data.Texts("low").Zip(data.Texts("high"), (low, high) => (low, high) switch
        {
            ("", _) => CensoredValue.Below(ReferenceTable.Number(high)),
            (_, "") => CensoredValue.Above(ReferenceTable.Number(low)),
            _ => CensoredValue.Between(ReferenceTable.Number(low), ReferenceTable.Number(high)),
        }),
    ];

    private static void IsAsExpected(CensoredFit fit, string @case, double jacobian = 0)
    {
        Assert.False(fit.IsFromMidpoints);
        foreach (var term in fit.Terms.Append(fit.LogSpread!))
        {
            Close.Relative(Expected(@case, term.Name), term.Estimate, EstimateTolerance);
            Close.Relative(Expected(@case, $"{term.Name} SE"), term.StandardError, ErrorTolerance);
        }

        Close.Relative(Expected(@case, "covariance"), fit.Covariance(0, 1), ErrorTolerance);
        Close.Relative(
            Expected(@case, "log-likelihood"), fit.Summary.LogLikelihood + jacobian, EstimateTolerance);
    }

    private static double Expected(string @case, string quantity)
    {
        var table = ReferenceTable.Read("r/censored-expected.csv");
        var row = table.Texts("case").Zip(table.Texts("quantity")).ToList().IndexOf((@case, quantity));
        return table.Numbers("value")[row];
    }
}
