using Xunit;

namespace BakeInsights.Inference.Tests;

public class PowerTests
{
    [Fact]
    public void Power_keeps_what_a_double_rounds_away()
    {
        // Cubes of tenths in a design of their own rounded squares: the fit of exact powers on exact values is perfect
        // only if the powers are. With x = 0.1, x cubed as a double is off by 2e-19.
        double[] x = [0.1, 0.2, 0.3, 0.7, 1.1, 1.3];
        var design = new Design(
            DesignColumn.Constant(6), DesignColumn.Power("x", x, 1), DesignColumn.Power("x2", x, 2),
            DesignColumn.Power("x3", x, 3));

        Assert.Equal(x, design.Columns[1].Values);
        Assert.Equal(x.Select(v => v * v), design.Columns[2].Values);
        Assert.True(LeastSquares.Fit(design, [1, 2, 1, 3, 2, 4]).Succeeded);
    }

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
