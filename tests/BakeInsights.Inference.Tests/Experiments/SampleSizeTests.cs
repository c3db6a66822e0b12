using System.Globalization;
using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class SampleSizeTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void Power_and_rows_of_t_tests_are_the_expected_ones()
    {
        static double Value(string quantity) => MethodsExpected.Of("power", quantity);
        static PowerOfT Two(double spread, double significance = 0.05) =>
            new(TTestLayout.TwoGroups, spread, significance, true);
        var oneSided = new PowerOfT(TTestLayout.TwoGroups, 1, 0.05, false);
        var one = new PowerOfT(TTestLayout.OneGroup, 12, 0.05, true);

        Close.Relative(Value("two groups"), Two(1).Power(20, 1), Tolerance);
        Close.Relative(Value("two groups n"), Two(1).RowsNeeded(0.9, 1).Value, Tolerance);
        Close.Relative(Value("one-sided n"), oneSided.RowsNeeded(0.9, 1).Value, Tolerance);
        Close.Relative(Value("unequal spread"), Two(8).Power(12, 6), Tolerance);
        Close.Relative(Value("paired"), new PowerOfT(TTestLayout.OneGroup, 8, 0.05, true).Power(12, 6), Tolerance);
        Close.Relative(Value("one percent"), Two(40, 0.01).Power(10, 25), Tolerance);
        Close.Relative(Value("one sample n"), one.RowsNeeded(0.8, 5).Value, Tolerance);
        Close.Relative(Value("difference"), Two(30).DifferenceFound(15, 0.8), Tolerance);
        Close.Relative(Value("both sides"), (Two(1) with { CountsWrongSide = true }).Power(5, 0.5), Tolerance);
    }

    [Fact]
    public void Power_and_rows_of_F_tests_are_the_expected_ones()
    {
        Close.Relative(MethodsExpected.Of("power", "groups"), PowerOfF.OfGroups(4, 5, 1, 3, 0.05), Tolerance);
        Close.Relative(
            MethodsExpected.Of("power", "groups n"), PowerOfF.RowsNeeded(4, 0.8, 1, 3, 0.05).Value, Tolerance);
    }

    [Fact]
    public void Noncentral_t_and_F_agree_with_integrals_over_the_spread()
    {
        foreach (var (quantity, value) in MethodsExpected.All("noncentral t"))
        {
            var (t, df, effect) = Three(quantity.Split(' '));

            // The power of a one-sided test at the significance whose critical value is t.
            var significance = new Term("t", t, 1, df).PValue!.Value / 2;
            if (effect >= 0 && significance < 0.5)
            {
                var test = new PowerOfT(TTestLayout.OneGroup, 1, significance, false);
                Close.Absolute(1 - value, test.Power(df + 1, effect / Math.Sqrt(df + 1)), 1e-10);
            }
        }

        foreach (var (quantity, value) in MethodsExpected.All("noncentral F"))
        {
            var cells = quantity.Split(' ');
            var (f, df, effect) = Three([cells[0], cells[2], cells[3]]);
            Close.Absolute(value, PowerOfF.Power(3, df, effect, Upper(f, 3, df)), 1e-9);
        }
    }

    [Fact]
    public void Power_rises_with_rows_and_difference_and_starts_at_the_significance() =>
        Gen.Select(Gen.Int[2, 60], Gen.Double[0, 3], Gen.Double[0.001, 0.2]).Sample((rows, difference, significance) =>
        {
            var test = new PowerOfT(TTestLayout.TwoGroups, 1, significance, false);
            Close.Absolute(significance, test.Power(rows, 0), 1e-9);
            Assert.True(test.Power(rows + 1, difference) >= test.Power(rows, difference) - 1e-12);
            Assert.True(test.Power(rows, difference + 0.1) >= test.Power(rows, difference) - 1e-12);
            Close.Absolute(significance, PowerOfF.OfGroups(3, rows, 0, 1, significance), 1e-9);
        });

    [Fact]
    public void Huge_effects_are_found_for_sure()
    {
        Assert.Equal(1, new PowerOfT(TTestLayout.OneGroup, 1, 0.05, true).Power(10, 1e9), 1e-6);
        Assert.Equal(1, PowerOfF.OfGroups(3, 10, 1e12, 1, 0.05), 1e-6);
    }

    [Fact]
    public void Difference_that_no_experiment_finds_is_a_problem()
    {
        var attempt = new PowerOfT(TTestLayout.TwoGroups, 1, 0.05, true).RowsNeeded(0.9, 1e-9);

        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal("More than a billion rows would be needed.", problem.Message);
        Assert.Equal(
            "Look for a larger difference, ask for less power, or measure with less spread.", problem.Remedy);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        var test = new PowerOfT(TTestLayout.TwoGroups, 1, 0.05, true);
        Throws("A t test needs more than one row.", () => test.Power(1, 1));
        Throws("It lies between 0 and 1", () => test.RowsNeeded(80, 1));
        Throws("It lies between 0 and 1", () => new PowerOfT(TTestLayout.TwoGroups, 1, 5, true));
        Throws("An F test of groups needs more than one row in each.", () => PowerOfF.OfGroups(3, 1, 1, 1, 0.05));
        Assert.ThrowsAny<ArgumentException>(() => new PowerOfT(TTestLayout.TwoGroups, 0, 0.05, true));
        Assert.ThrowsAny<ArgumentException>(() => PowerOfF.OfGroups(1, 5, 1, 1, 0.05));
    }

    private static (double, double, double) Three(string[] cells)
    {
        var numbers = cells.Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToArray();
        return (numbers[0], numbers[1], numbers[2]);
    }

    /// <summary>The upper tail of F, from Math.NET's own distribution.</summary>
    private static double Upper(double f, double df1, double df2) =>
        1 - MathNet.Numerics.Distributions.FisherSnedecor.CDF(df1, df2, f);

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
