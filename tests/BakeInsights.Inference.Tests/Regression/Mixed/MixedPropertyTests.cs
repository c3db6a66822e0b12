using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What holds for every mixed model.</summary>
public class MixedPropertyTests
{
    private const double Tolerance = 1e-6;

    private static readonly Gen<double> Number = Gen.Int[-100_000, 100_000].Select(v => v / 10_000.0);

    /// <summary>3 to 8 groups of 3 to 7 rows, with a column x, a response, and spread between groups or none.</summary>
    private static readonly Gen<(DesignColumn X, double[] Y, string[] Labels)> Any =
        from sizes in Gen.Int[3, 7].Array[3, 8]
        from x in Number.Array[sizes.Sum()]
        from noise in Number.Array[sizes.Sum()]
        from level in Number.Array[sizes.Length]
        from share in Gen.Double[0, 2]
        select Of(sizes, x, noise, level, share);

    [Fact]
    public void Every_number_is_finite_and_every_interval_holds_its_estimate() => Any.Sample((x, y, labels) =>
    {
        foreach (var slope in new[] { null, "x" })
        {
            var fit = Fit(x, y, labels, slope);
            Assert.All(fit.Terms, term =>
            {
                Assert.True(double.IsFinite(term.Estimate) && term.StandardError > 0 && term.DegreesOfFreedom > 0);
                Assert.True(term.Interval(0.95).Contains(term.Estimate));
            });
            Assert.All(fit.GroupEffects.SelectMany(e => new[] { e.Intercept, e.Slope }).OfType<PredictedEffect>(), e =>
                Assert.True(double.IsFinite(e.Value) && (e.Interval(0.9)?.Contains(e.Value) ?? e.Value == 0)));
            Assert.All(fit.Rows, row => Assert.Equal(row.Observed!.Value, row.Fitted + row.Residual!.Value, 1e-9));
            Assert.True(double.IsFinite(fit.Summary.LogLikelihood!.Value));
        }
    }, iter: 300);

    [Fact]
    public void Order_of_the_rows_and_names_of_the_groups_do_not_matter() => Any.Sample((x, y, labels) =>
    {
        var other = Fit(
            new DesignColumn("x", [.. x.Values.Reverse()]),
            [.. y.Reverse()],
            [.. labels.Reverse().Select(l => "z" + l)],
            "x");
        return Same(Fit(x, y, labels, "x"), other, 1, 1);
    }, iter: 300);

    [Fact]
    public void Units_of_response_and_column_carry_over() =>
        Gen.Select(Any, Gen.Double[-60, 60], Gen.Double[-60, 60]).Sample((data, first, second) =>
        {
            var (x, y, labels) = data;
            var (xUnit, yUnit) = (Math.Pow(10, first), Math.Pow(10, second));
            var other = Fit(
                new DesignColumn("x", [.. x.Values.Select(v => v * xUnit)]),
                [.. y.Select(v => v * yUnit)],
                labels,
                "x");
            return Same(Fit(x, y, labels, "x"), other, xUnit, yUnit);
        }, iter: 300);

    [Fact]
    public void Shift_of_a_columns_zero_changes_neither_likelihood_nor_slope() =>
        Gen.Select(Any, Gen.Double[-1000, 1000]).Sample((data, shift) =>
        {
            var (x, y, labels) = data;
            var (given, other) = (Fit(x, y, labels, "x"),
                Fit(new DesignColumn("x", [.. x.Values.Select(v => v + shift)]), y, labels, "x"));
            return Near(given.Summary.LogLikelihood!.Value, other.Summary.LogLikelihood!.Value)
                && Near(given.Terms[1].Estimate, other.Terms[1].Estimate)
                && Near(given.Terms[1].StandardError, other.Terms[1].StandardError)
                && Near(given.Variances.Slope!.Value, other.Variances.Slope!.Value);
        }, iter: 300);

    [Fact]
    public void Slope_by_group_never_lowers_the_likelihood() => Any.Sample((x, y, labels) =>
        Fit(x, y, labels, "x").Summary.LogLikelihood >= Fit(x, y, labels, null).Summary.LogLikelihood - 1e-7,
        iter: 300);

    [Fact]
    public void Effects_in_equal_groups_are_departures_of_the_mean_shrunk_by_one_share() =>
        Number.Array[4].Array[6].Where(groups => groups.All(g => g.Max() > g.Min())).Sample(groups =>
        {
            var y = groups.SelectMany(g => g).ToArray();
            string[] labels = [.. groups.SelectMany((g, i) => g.Select(_ => $"g{i}"))];
            var fit = MixedModel.Fit(new Design(DesignColumn.Constant(24)), y, "group", labels).Value;
            var share = fit.Variances.Intercept / (fit.Variances.Intercept + (fit.Variances.Residual / 4));
            return fit.GroupEffects.Zip(groups).All(pair =>
                Near(share * (pair.Second.Average() - y.Average()), pair.First.Intercept.Value));
        }, iter: 300);

    [Theory]
    [InlineData(1e-7)]
    [InlineData(1e9)]
    public void Spread_between_groups_of_any_size_is_found(double spread)
    {
        // Equal groups, so that the estimates are those of the analysis of variance: (mean square between - within) /
        // rows.
        double[] level = [0.3, -1.2, 0.8, 1.7, -0.6, -1], noise = [0.1, -0.3, 0.25, -0.05];
        double[] y =
        [
            .. level.SelectMany((m, g) =>
                noise.Select((_, i) => (spread * m) + (noise[(i + g) % 4] * (1 + (0.1 * g))))),
        ];
        string[] labels = [.. level.SelectMany((_, g) => noise.Select(_ => $"g{g}"))];
        var means = y.Chunk(4).Select(rows => rows.Average()).ToArray();
        var between = 4 * means.Sum(m => (m - means.Average()) * (m - means.Average())) / 5;
        var within = y.Chunk(4).Sum(rows => rows.Sum(v => (v - rows.Average()) * (v - rows.Average()))) / 18;

        var fit = MixedModel.Fit(new Design(DesignColumn.Constant(24)), y, "group", labels).Value;

        if (between > within)
        {
            Close.Relative((between - within) / 4, fit.Variances.Intercept, 1e-6);
            Close.Relative(within, fit.Variances.Residual, 1e-6);
            Close.Relative(5, fit.Terms[0].DegreesOfFreedom, 1e-6);
        }
        else
        {
            Assert.Equal(MixedBoundary.NoVariance, fit.Boundary);
            Close.Relative(23, fit.Terms[0].DegreesOfFreedom, 1e-9);
        }

        Assert.All(fit.GroupEffects, effect => Assert.True((effect.Intercept.DegreesOfFreedom ?? 1) > 0));
    }

    private static (DesignColumn X, double[] Y, string[] Labels) Of(
        int[] sizes, double[] x, double[] noise, double[] level, double share)
    {
        var group = sizes.SelectMany((size, g) => Enumerable.Repeat(g, size)).ToArray();
        return (
            new DesignColumn("x", x),
            [.. group.Select((g, i) => (0.5 * x[i]) + noise[i] + (share * level[g]))],
            [.. group.Select(g => $"g{g}")]);
    }

    private static MixedFit Fit(DesignColumn x, double[] y, string[] labels, string? slope) =>
        MixedModel.Fit(new Design(DesignColumn.Constant(y.Length), x), y, "group", labels, slope).Value;

    private static bool Same(MixedFit first, MixedFit second, double xUnit, double yUnit) =>
        Near(first.Terms[0].Estimate, second.Terms[0].Estimate / yUnit)
        && Near(first.Terms[1].Estimate, second.Terms[1].Estimate * xUnit / yUnit)
        && Near(first.Terms[1].StandardError, second.Terms[1].StandardError * xUnit / yUnit)
        && Near(first.Variances.Residual, second.Variances.Residual / yUnit / yUnit)
        && Near(first.Variances.Slope!.Value, second.Variances.Slope!.Value * xUnit / yUnit * xUnit / yUnit);

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= Tolerance * (1 + Math.Abs(first) + Math.Abs(second));
}
