using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What holds for every least-squares fit, by the algebra of projections.</summary>
public class FitPropertyTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void Residuals_are_orthogonal_to_every_column() => ForAny((design, fit) =>
        design.Columns.All(column => Math.Abs(column.Values.Zip(fit.Residuals, (x, r) => x * r).Sum()) < 1e-8));

    [Fact]
    public void Fitted_value_plus_residual_is_the_response() => ForAny((_, fit) =>
        Enumerable.Range(0, fit.N).All(i => Near(fit.FittedValues[i] + fit.Residuals[i], fit.Response[i])));

    [Fact]
    public void Fitted_value_is_the_combination_of_its_row() => ForAny((design, fit) =>
        Enumerable.Range(0, fit.N).All(i => Near(fit.Combination(design.Row(i)).Estimate, fit.FittedValues[i])));

    [Fact]
    public void Leverages_lie_between_0_and_1_and_sum_to_the_number_of_columns() => ForAny((_, fit) =>
        fit.Leverage.All(h => h is >= 0 and <= 1) && Near(fit.Leverage.Sum(), fit.Terms.Count));

    [Fact]
    public void Leverage_is_the_variance_of_the_fitted_value_over_the_residual_variance() => ForAny((design, fit) =>
        Enumerable.Range(0, fit.N).All(i => Near(
            Math.Sqrt(fit.Leverage[i]) * fit.ResidualStandardDeviation,
            fit.Combination(design.Row(i)).StandardError)));

    [Fact]
    public void Variance_of_a_sum_is_the_sum_of_all_covariances() => ForAny((_, fit) =>
    {
        var places = Enumerable.Range(0, fit.Terms.Count).ToArray();
        var variance = places.Sum(i => places.Sum(j => fit.Covariance(i, j)));
        return Near(Math.Sqrt(variance), fit.Combination([.. places.Select(_ => 1.0)]).StandardError);
    });

    [Fact]
    public void Prediction_interval_is_wider_than_mean_interval() => ForAny((design, fit) =>
    {
        var (mean, single) = (fit.MeanInterval(design.Row(0), 0.9), fit.PredictionInterval(design.Row(0), 0.9));
        return single.Low < mean.Low && mean.High < single.High;
    });

    [Fact]
    public void Order_of_the_rows_does_not_matter() => RandomDesigns.Any.Sample((design, response) =>
    {
        static double[] Reversed(IEnumerable<double> values) => [.. values.Reverse()];
        var reversed = new Design(design.Columns.Select(c => new DesignColumn(c.Name, Reversed(c.Values))));
        return Same(Fit(design, response), Fit(reversed, Reversed(response)));
    });

    [Fact]
    public void Order_of_the_columns_does_not_matter() => RandomDesigns.Any.Sample((design, response) =>
    {
        var (given, reversed) = (Fit(design, response), Fit(new Design(design.Columns.Reverse()), response));
        return given.Terms.Zip(reversed.Terms.Reverse()).All(pair => Same(pair.First, pair.Second));
    });

    [Fact]
    public void Coefficient_goes_with_the_inverse_of_its_columns_unit() =>
        Gen.Select(RandomDesigns.Any, Gen.Double[-6, 6]).Sample((data, exponent) =>
        {
            var factor = Math.Pow(10, exponent);
            var rescaled = new Design(data.Design.Columns.Select((c, j) =>
                j == 1 ? new DesignColumn(c.Name, [.. c.Values.Select(x => x * factor)]) : c));
            var (given, other) = (Fit(data.Design, data.Response), Fit(rescaled, data.Response));
            return Near(given.Terms[1].Estimate, other.Terms[1].Estimate * factor)
                && Near(given.Terms[1].StandardError, other.Terms[1].StandardError * factor)
                && Same(given.Terms[0], other.Terms[0]);
        });

    [Fact]
    public void Column_built_from_earlier_ones_is_found_with_the_ones_it_is_built_from() =>
        Gen.Select(RandomDesigns.Any, Gen.Int[-3, 3].Array[5], Gen.Double[-6, 6]).Sample((data, weights, exponent) =>
        {
            var parts = data.Design.Columns.Zip(weights, (column, weight) => (column, weight))
                .Where(part => part.weight != 0).ToArray();
            if (parts.Length == 0)
            {
                return true;
            }

            var sum = Enumerable.Range(0, data.Design.RowCount)
                .Select(i => Math.Pow(10, exponent) * parts.Sum(part => part.weight * part.column.Values[i])).ToArray();
            var attempt = LeastSquares.Fit(
                new Design([.. data.Design.Columns, new DesignColumn("sum", sum)]), data.Response);
            return !attempt.TryGet(out _, out var problem)
                && problem.Kind == FitProblemKind.DependentColumn
                && problem.Columns.SequenceEqual(parts.Select(part => part.column.Name).Prepend("sum"));
        });

    [Fact]
    public void Response_built_from_the_columns_is_a_perfect_fit() =>
        Gen.Select(RandomDesigns.Any, Gen.Int[1, 9].Array[5], Gen.Double[-6, 6]).Sample((data, weights, exponent) =>
        {
            var response = Enumerable.Range(0, data.Design.RowCount)
                .Select(i => Math.Pow(10, exponent) * data.Design.Row(i).Zip(weights, (x, w) => x * w).Sum()).ToArray();
            var fit = Fit(data.Design, response);
            return fit is { ResidualSumOfSquares: 0, RSquared: 1 } && fit.Terms.All(term => term.StandardError == 0);
        });

    private static void ForAny(Func<Design, LeastSquaresFit, bool> holds) =>
        RandomDesigns.Any.Sample((design, response) => holds(design, Fit(design, response)));

    private static LeastSquaresFit Fit(Design design, double[] response) => LeastSquares.Fit(design, response).Value;

    private static bool Same(LeastSquaresFit first, LeastSquaresFit second) =>
        first.Terms.Zip(second.Terms).All(pair => Same(pair.First, pair.Second))
        && Near(first.ResidualSumOfSquares, second.ResidualSumOfSquares)
        && Near(first.RSquared, second.RSquared);

    private static bool Same(Term first, Term second) =>
        first.Name == second.Name && Near(first.Estimate, second.Estimate)
        && Near(first.StandardError, second.StandardError);

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= Tolerance * (1 + Math.Abs(first) + Math.Abs(second));
}
