using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What holds for every cumulative logit fit.</summary>
public class OrdinalPropertyTests
{
    /// <summary>Random columns, with scores from 1 to 4 that the first column moves.</summary>
    private static readonly Gen<(Design Design, double[] Scores)> Any =
        from rows in Gen.Int[30, 50]
        from columns in Gen.Int[-1000, 1000].Select(v => v / 500.0).Array[rows].Array[1, 3]
        from noise in Gen.Double[0.01, 0.99].Array[rows]
        select (
            new Design(columns.Select((c, j) => new DesignColumn($"x{j + 1}", c))),
            noise.Select((p, i) =>
            {
                var scale = columns[0][i] + Math.Log(p / (1 - p));
                return 1.0 + (scale > -1 ? 1 : 0) + (scale > 0 ? 1 : 0) + (scale > 1.5 ? 1 : 0);
            }).ToArray());

    [Fact]
    public void Probabilities_are_positive_and_sum_to_one() => Any.Sample((design, scores) =>
        IsFitOrProblem(design, scores, fit => Enumerable.Range(0, scores.Length).All(i =>
            fit.Probabilities(design.Row(i)) is var p && p.All(x => x > 0) && Math.Abs(p.Sum() - 1) < 1e-12)));

    [Fact]
    public void Thresholds_are_in_order_and_everything_is_finite() =>
        Any.Sample((design, scores) => IsFitOrProblem(design, scores, fit =>
            fit.Thresholds.Zip(fit.Thresholds.Skip(1)).All(pair => pair.First.Estimate < pair.Second.Estimate)
            && fit.Terms.All(term => double.IsFinite(term.Estimate) && term.StandardError > 0)));

    [Fact]
    public void Only_the_order_of_scores_counts() => Any.Sample((design, scores) =>
        IsFitOrProblem(design, scores, fit =>
            Same(fit, CumulativeLogit.Fit(design, [.. scores.Select(s => s * s * s)]).Value, 1)));

    [Fact]
    public void Turning_the_scores_round_turns_the_effects_round() => Any.Sample((design, scores) =>
        IsFitOrProblem(design, scores, fit =>
            Same(fit, CumulativeLogit.Fit(design, [.. scores.Select(s => -s)]).Value, -1)));

    [Theory]
    [InlineData(1e60)]
    [InlineData(1e-60)]
    public void Coefficient_goes_with_the_inverse_of_its_columns_unit(double unit) => Any.Sample((design, scores) =>
        IsFitOrProblem(design, scores, fit =>
        {
            var scaled = new Design(design.Columns.Select(
                c => new DesignColumn(c.Name, [.. c.Values.Select(x => x * unit)])));
            var other = CumulativeLogit.Fit(scaled, scores).Value;
            return fit.Terms.Zip(other.Terms).All(pair => Near(pair.First.Estimate, pair.Second.Estimate * unit));
        }), iter: 20);

    [Fact]
    public void Order_of_the_rows_does_not_matter_with_raters() => Any.Sample((design, scores) =>
    {
        string[] raters = [.. scores.Select((_, i) => $"r{i % 6}")];
        static T[] Reversed<T>(IEnumerable<T> values) => [.. values.Reverse()];
        var reversed = new Design(design.Columns.Select(c => new DesignColumn(c.Name, Reversed(c.Values))));
        var first = CumulativeLogit.Fit(design, scores, raters);
        var second = CumulativeLogit.Fit(reversed, Reversed(scores), Reversed(raters));
        return first.Succeeded == second.Succeeded
            && (!first.Succeeded || (Same(first.Value, second.Value, 1)
                && Near(first.Value.RaterSpread!.Estimate, second.Value.RaterSpread!.Estimate)));
    }, iter: 20);

    [Fact]
    public void Rater_spread_never_lowers_the_likelihood() => Any.Sample((design, scores) =>
    {
        string[] raters = [.. scores.Select((_, i) => $"r{i % 6}")];
        return IsFitOrProblem(design, scores, plain =>
            CumulativeLogit.Fit(design, scores, raters).Match(
                fit => fit.Summary.LogLikelihood >= plain.Summary.LogLikelihood - 1e-9, _ => true));
    }, iter: 20);

    private static bool IsFitOrProblem(Design design, double[] scores, Func<OrdinalFit, bool> holds) =>
        CumulativeLogit.Fit(design, scores).Match(holds, problem => problem.Kind is
            FitProblemKind.Separation or FitProblemKind.NoSpread);

    private static bool Same(OrdinalFit first, OrdinalFit second, int sign) =>
        first.Terms.Zip(second.Terms).All(pair =>
            Near(pair.First.Estimate, sign * pair.Second.Estimate)
            && Near(pair.First.StandardError, pair.Second.StandardError));

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= 1e-6 * (1 + Math.Abs(first) + Math.Abs(second));
}
