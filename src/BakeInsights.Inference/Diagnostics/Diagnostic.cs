using System.Globalization;

namespace BakeInsights.Inference;

/// <summary>One check of a fit: a number, what it is held against, and what it says.</summary>
/// <param name="Name">What is checked, as the field calls it.</param>
/// <param name="Value">The statistic.</param>
/// <param name="Reference">The distribution of the statistic if nothing is amiss; null if none is defined.</param>
/// <param name="PValue">The probability of so extreme a statistic if nothing is amiss; null with the reference.</param>
/// <param name="Threshold">What the p value or, where there is none, the statistic is held against.</param>
/// <param name="IsConcern">Whether the threshold is passed.</param>
/// <param name="Statement">The finding in plain words.</param>
public sealed record Diagnostic(
    string Name,
    double Value,
    string? Reference,
    double? PValue,
    Threshold Threshold,
    bool IsConcern,
    string Statement)
{
    /// <summary>A test, which speaks where p is below its threshold.</summary>
    internal static Diagnostic Test(
        string name, double value, string reference, double p, string ifConcern, string ifNot)
    {
        var concern = p < Thresholds.PValue.Value;
        return new Diagnostic(
            name, value, reference, p, Thresholds.PValue, concern,
            $"{(concern ? ifConcern : ifNot)} (p = {Short(p)}).");
    }

    /// <summary>A number to three figures.</summary>
    internal static string Short(double value) => value.ToString("G3", CultureInfo.InvariantCulture);

    /// <summary>What stands in the way of judging residuals that are all zero.</summary>
    internal static FitProblem? PerfectFit(LeastSquaresFit fit) => fit.ResidualSumOfSquares > 0 ? null : new FitProblem(
        FitProblemKind.ZeroSpread,
        fit.Design.Names,
        "The fit is perfect, so there are no residuals to judge.",
        "Nothing is amiss with a perfect fit, unless the response was computed from the columns.");
}
