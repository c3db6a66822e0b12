using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What holds for every censored fit.</summary>
public class CensoredPropertyTests
{
    private static readonly Gen<(Design Design, double[] Logs)> Any =
        RandomDesigns.Any.Select(data => (data.Design, data.Response.Select(y => y / 5).ToArray()));

    [Fact]
    public void Exact_values_give_least_squares_of_their_logarithms() => Any.Sample((design, logs) =>
    {
        var fit = CensoredLogNormal.Fit(design, [.. logs.Select(y => CensoredValue.Exact(Math.Exp(y)))]).Value;
        var linear = LeastSquares.Fit(design, logs).Value;
        return fit.IsFromMidpoints && fit.Caveats.Count == 0
            && fit.Terms.Zip(linear.Terms).All(pair => Near(pair.First.Estimate, pair.Second.Estimate)
                && Near(pair.First.StandardError, pair.Second.StandardError))
            && Near(Math.Log(fit.PredictionInterval(design.Row(0), 0.9).High),
                linear.PredictionInterval(design.Row(0), 0.9).High);
    });

    [Fact]
    public void Row_that_is_sure_to_be_so_changes_nothing()
    {
        // The wide row makes the fit one by likelihood, and adds no information to that of the exact rows.
        Any.Sample((design, logs) =>
        {
            var row = design.Columns.Select(c => new DesignColumn(c.Name, [.. c.Values, c.Values[0]]));
            var fit = CensoredLogNormal.Fit(
                new Design(row),
                [.. logs.Select(y => CensoredValue.Exact(Math.Exp(y))), CensoredValue.Between(1e-200, 1e200)]).Value;
            var linear = LeastSquares.Fit(design, logs).Value;
            var spread = Math.Sqrt(linear.ResidualSumOfSquares / linear.N);
            return !fit.IsFromMidpoints
                && fit.Terms.Zip(linear.Terms).All(pair => Near(pair.First.Estimate, pair.Second.Estimate))
                && Near(fit.LogSpread!.Estimate, Math.Log(spread));
        }, iter: 30);
    }

    [Fact]
    public void Narrow_interval_is_as_good_as_a_value_to_the_likelihood() => Any.Sample((design, logs) =>
    {
        CensoredValue[] With(Func<double, CensoredValue> known) =>
            [CensoredValue.Above(Math.Exp(logs[0] - 0.1)), .. logs.Skip(1).Select(y => known(Math.Exp(y)))];
        var exact = CensoredLogNormal.Fit(design, With(CensoredValue.Exact));
        var narrow = CensoredLogNormal.Fit(design, With(t => CensoredValue.Between(t * (1 - 1e-9), t * (1 + 1e-9))));
        return exact.Succeeded == narrow.Succeeded && (!exact.Succeeded
            || exact.Value.Terms.Zip(narrow.Value.Terms).All(pair =>
                Near(pair.First.Estimate, pair.Second.Estimate)
                && Near(pair.First.StandardError, pair.Second.StandardError)));
    }, iter: 30);

    [Fact]
    public void Unit_of_time_only_moves_the_constant() => Gen.Select(Any, Gen.Double[-40, 40]).Sample((data, shift) =>
    {
        Attempt<CensoredFit> Fit(double by) => CensoredLogNormal.Fit(data.Design, [.. data.Logs.Select((y, i) => i % 4 == 0
            ? CensoredValue.Above(Math.Exp(y - 0.1 + by))
            : CensoredValue.Between(Math.Exp(y - 0.3 + by), Math.Exp(y + 0.2 + by)))]);

        // With few rows the columns may meet every span, and then no spread is left: in any unit, or in none.
        if (!Fit(0).TryGet(out var first, out var problem))
        {
            return Fit(shift).Match(_ => false, other => other.Kind == problem.Kind);
        }

        var second = Fit(shift).Value;
        return Near(first.Terms[0].Estimate + shift, second.Terms[0].Estimate)
            && Near(first.Terms[1].Estimate, second.Terms[1].Estimate)
            && Near(first.Interval(1, 0.9).High ?? 0, second.Interval(1, 0.9).High ?? 0);
    }, iter: 20);

    [Fact]
    public void Interval_widens_with_its_level_and_holds_the_estimate() => Any.Sample((design, logs) =>
    {
        CensoredValue[] response = [.. logs.Select((y, i) => i % 3 == 0
            ? CensoredValue.Above(Math.Exp(y - 0.1)) : CensoredValue.Exact(Math.Exp(y)))];
        return CensoredLogNormal.Fit(design, response).Match(
            fit =>
            {
                var (narrow, wide) = (fit.Interval(1, 0.5), fit.Interval(1, 0.95));
                return narrow.Contains(fit.Terms[1].Estimate)
                    && !(wide.Low > narrow.Low) && !(wide.High < narrow.High)
                    && !(narrow.Low is null && wide.Low is not null) && !(narrow.High is null && wide.High is not null);
            },
            problem => problem.Kind is FitProblemKind.Separation or FitProblemKind.ZeroSpread);
    }, iter: 30);

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= 1e-6 * (1 + Math.Abs(first) + Math.Abs(second));
}
