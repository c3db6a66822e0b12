using Xunit;
using static BakeInsights.Inference.Tests.Contract;

namespace BakeInsights.Inference.Tests;

/// <summary>What the methods beyond linear least squares answer on the same hard cases.</summary>
public class MethodContractTests
{
    public static IEnumerable<object[]> Names => HardCases.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Log_normal_fit_of_exact_times_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        CensoredLogNormal.Fit(design, [.. y.Select(CensoredValue.Exact)]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Log_normal_fit_of_wide_looks_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        CensoredLogNormal.Fit(design, [.. y.Select(value => CensoredValue.Between(0.7 * value, 1.3 * value))]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Log_normal_fit_with_every_third_row_cut_short_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        CensoredLogNormal
            .Fit(design, [.. y.Select((value, i) => i % 3 == 2 ? CensoredValue.Above(value) : CensoredValue.Exact(value))])
            .Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Log_normal_fit_with_every_row_cut_short_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        CensoredLogNormal.Fit(design, [.. y.Select(CensoredValue.Above)]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Fit_of_scores_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        CumulativeLogit.Fit(design.WithoutConstant(), Scores(y)).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Fit_of_scores_with_raters_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        CumulativeLogit.Fit(design.WithoutConstant(), Scores(y), [.. y.Select((_, i) => $"{i % 3}")]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Nonlinear_fit_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        NonlinearLeastSquares.Fit(
            new NonlinearModel(["level", "rate"], (b, x) => b[0] * Math.Exp(b[1] * x[0])), design.WithoutConstant(), y, [1, 0.01])
            .Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Fit_with_prior_knowledge_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        PriorRegression.Fit(design, y, [new NormalPrior("x1", 1, 0.5)]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Mixed_fit_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        MixedModel.Fit(design, y, "group", [.. y.Select((_, i) => $"{i % 4}")]).Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Mixed_fit_with_slopes_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        MixedModel.Fit(design, y, "group", [.. y.Select((_, i) => $"{i % 4}")], slope: "x1").Select(fit => (IFit)fit));

    [Theory]
    [MemberData(nameof(Names))]
    public void Mixed_fit_of_one_group_keeps_the_contract(string name) => Keeps(name, (design, y) =>
        MixedModel.Fit(design, y, "group", [.. y.Select(_ => "all")]).Select(fit => (IFit)fit));

    // Scores are whole numbers: the rows' ranks in four steps, missing where the response is.
    private static double[] Scores(double[] response)
    {
        var ordered = response.Order().ToList();
        return [.. response.Select(value => double.IsNaN(value) ? value : 1 + (4 * ordered.IndexOf(value) / ordered.Count))];
    }
}

file static class Designs
{
    public static Design WithoutConstant(this Design design) => design.Without("constant");
}
