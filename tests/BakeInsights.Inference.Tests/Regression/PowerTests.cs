using Xunit;

namespace BakeInsights.Inference.Tests;

public class PowerTests
{
    /// <summary>The first certified coefficient of NIST's Filip, a polynomial of degree 10.</summary>
    [Theory]
    [InlineData(false, 5, 10)]
    [InlineData(true, 13, 15)]
    public void Powers_kept_in_doubled_precision_have_the_digits_that_rounded_ones_lose(
        bool kept, double fewest, double most)
    {
        var data = ReferenceTable.Read("nist/Filip.csv");
        var x = data.Numbers("x");
        var powers = Enumerable.Range(1, 10).Select(k => DesignColumn.Power($"B{k}", x, k))
            .Select(power => kept ? power : new DesignColumn(power.Name, power.Values));

        var fit = LeastSquares.Fit(
            new Design([DesignColumn.Constant(x.Length), .. powers]), data.Numbers("y")).Value;

        Assert.InRange(Close.Digits(fit.Terms[0].Estimate, -1467.48961422980), fewest, most);
    }

    [Fact]
    public void Power_holds_the_rounded_power_as_its_value() =>
        Assert.Equal([0.25, 2.25, 1.0000000000000002 * 1.0000000000000002],
            DesignColumn.Power("x", [0.5, -1.5, 1.0000000000000002], 2).Values);

    [Fact]
    public void Power_that_leaves_the_range_of_doubles_is_refused_by_the_fit()
    {
        var design = new Design(DesignColumn.Power("x", [1e100, 2e100, 3e100, 1], 4));

        Assert.False(LeastSquares.Fit(design, [1, 2, 3, 4]).TryGet(out _, out var problem));

        Assert.Equal(FitProblemKind.MissingValue, problem.Kind);
    }

    [Fact]
    public void Degree_below_one_is_a_programming_error() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DesignColumn.Power("x", [1, 2], 0));
}
