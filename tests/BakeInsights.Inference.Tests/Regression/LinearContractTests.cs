using Xunit;
using static BakeInsights.Inference.Tests.Contract;

namespace BakeInsights.Inference.Tests;

/// <summary>What every linear method answers on hard cases: finite numbers, or a problem in whole sentences.</summary>
public class LinearContractTests
{
    public static IEnumerable<object[]> Names => HardCases.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Least_squares_keeps_the_contract(string name) =>
        Keeps(name, (design, y) => LeastSquares.Fit(design, y).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Weighted_least_squares_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        LeastSquares.Fit(design, y, [.. y.Select((_, i) => 1.0 + (i % 3))]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Running_sums_keep_the_contract(string name) =>
        Keeps(name, (design, y) => Gathered(design, y, null).Fit().Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Running_sums_by_block_keep_the_contract(string name) => Keeps(name, (design, y) =>
        Gathered(design.Without("constant"), y, i => $"{i % 2}").Fit().Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Huber_fit_keeps_the_contract(string name) =>
        Keeps(name, (design, y) => RobustRegression.Huber(design, y).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Bisquare_fit_keeps_the_contract(string name) =>
        Keeps(name, (design, y) => RobustRegression.Bisquare(design, y).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void MM_fit_keeps_the_contract(string name) =>
        Keeps(name, (design, y) => RobustRegression.MmEstimate(design, y, 1).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Calibrated_fit_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        LeastSquares.Fit(design, y).Match(
            fit => PredictorError.Classical(fit, "x1", Math.Max(1e-3 * design.Columns[1].Values.Max(), double.Epsilon))
                .Select(calibrated => (IFit)calibrated),
            problem => problem));

    [Theory]
    [MemberData(nameof(Names))]
    public void Diagnostics_keep_the_contract(string name)
    {
        var (design, y) = HardCases.Of(name);
        if (!LeastSquares.Fit(design, y).TryGet(out var fit, out _))
        {
            return;
        }

        Attempt<Diagnostic>[] attempts =
        [
            Influence.LargestLeverage(fit), Influence.LargestResidual(fit), Influence.LargestCooksDistance(fit),
            Collinearity.LargestConditionIndex(fit), ConstantSpread.BreuschPagan(fit),
            SerialCorrelation.DurbinWatson(fit), Normality.ShapiroWilk(fit), LackOfFit.FromReplicates(fit),
            .. Collinearity.VarianceInflation(fit).Select(diagnostic => (Attempt<Diagnostic>)diagnostic),
        ];
        Assert.All(attempts, attempt =>
        {
            if (attempt.TryGet(out var diagnostic, out var problem))
            {
                Finite(diagnostic.Value, diagnostic.PValue);
                Assert.True(diagnostic.PValue is null or (>= 0 and <= 1));
                Assert.EndsWith(".", diagnostic.Statement, StringComparison.Ordinal);
            }
            else
            {
                Told(problem);
            }
        });
        Assert.All(RowInfluence.Of(fit), row =>
            Finite(row.Leverage, row.Studentised, row.DeletionStudentised, row.CooksDistance));
    }

    private static RunningSums Gathered(Design design, double[] response, Func<int, string>? block)
    {
        var sums = new RunningSums(design.Names);
        for (var i = 0; i < response.Length; i++)
        {
            sums.Add([.. design.Row(i)], response[i], block?.Invoke(i));
        }

        return sums;
    }
}
