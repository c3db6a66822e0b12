using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What every method answers, whatever the data: finite numbers, or a problem in whole sentences.</summary>
internal static class Contract
{
    public static void Keeps(string name, Func<Design, double[], Attempt<IFit>> method)
    {
        var (design, response) = HardCases.Of(name);
        if (!method(design, response).TryGet(out var fit, out var problem))
        {
            Told(problem);
            return;
        }

        var summary = fit.Summary;
        Finite(
            summary.ResidualDegreesOfFreedom, summary.ResidualStandardDeviation, summary.RSquared,
            summary.LogLikelihood, summary.CorrectedAic);
        Assert.All(fit.Terms, term =>
        {
            Finite(term.Estimate, term.StandardError, term.TValue, term.PValue);
            Finite(term.Interval(0.95).Low, term.Interval(0.95).High);
        });
        Assert.All(fit.Rows, row =>
        {
            Finite(row.Observed, row.Fitted, row.Residual, row.Leverage, row.Weight);
            Assert.InRange(row.Leverage ?? 0, 0, 1);
        });
    }

    public static void Finite(params double?[] values) =>
        Assert.All(values, value => Assert.True(value is null || double.IsFinite(value.Value), $"{value}"));

    public static void Told(FitProblem problem)
    {
        Assert.NotEmpty(problem.Columns);
        Assert.EndsWith(".", problem.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", problem.Remedy, StringComparison.Ordinal);
    }
}
