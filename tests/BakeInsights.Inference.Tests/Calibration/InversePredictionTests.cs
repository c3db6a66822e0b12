using Xunit;

namespace BakeInsights.Inference.Tests;

public class InversePredictionTests
{
    [Theory]
    [InlineData("thermometer one", 0.95, new[] { 104.0 }, false)]
    [InlineData("thermometer ninety", 0.9, new[] { 100.0 }, false)]
    [InlineData("thermometer three", 0.95, new[] { 103.5, 104.1, 104.4 }, false)]
    [InlineData("thermometer mean", 0.95, new[] { 104.0 }, true)]
    [InlineData("arsenic one", 0.95, new[] { 3.0 }, false)]
    [InlineData("arsenic mean", 0.95, new[] { 3.0 }, true)]
    [InlineData("arsenic four", 0.95, new[] { 3.17, 3.09, 3.16, 3.05 }, false)]
    public void Value_of_readings_has_the_expected_set(string name, double level, double[] readings, bool ofMean)
    {
        var (fit, predictor) = Fit(name);

        var found = ofMean
            ? InversePrediction.OfMean(fit, predictor, readings[0], level).Value
            : InversePrediction.Of(fit, predictor, readings, level).Value;

        Close.Relative(MethodsExpected.Of(name, "estimate"), found.Estimate, 1e-12);
        Close.Relative(MethodsExpected.Of(name, "low"), found.Set.Low, 1e-11);
        Close.Relative(MethodsExpected.Of(name, "high"), found.Set.High, 1e-11);
        Close.Relative(MethodsExpected.Of(name, "deviation"), found.StandardDeviation, 1e-11);
        Assert.Equal(fit.ResidualDegreesOfFreedom + (ofMean ? 0 : readings.Length - 1), found.DegreesOfFreedom);
        Assert.Equal(RatioSetKind.Bounded, found.Set.Kind);
        Assert.Equal(found.Estimate, found.Set.Estimate!.Value, 1e-12);
        Assert.Empty(found.Caveats);
    }

    [Fact]
    public void Reading_beyond_the_calibrated_range_is_said() => Assert.Equal(
        "The estimate is outside the calibrated range of x, where the line is a guess.",
        Assert.Single(InversePrediction.Of(Line([1, 2.1, 2.9, 4.2, 5]), "x", [9], 0.95).Value.Caveats));

    [Fact]
    public void Slope_that_may_be_zero_bounds_nothing_and_says_so()
    {
        var flat = Line([1, 3, 2, 1, 3]);

        var middle = InversePrediction.Of(flat, "x", [2.1], 0.95).Value;
        var far = InversePrediction.OfMean(flat, "x", 9, 0.95).Value;

        Assert.Equal(RatioSetKind.WholeLine, middle.Set.Kind);
        Assert.Equal(
            "The slope can't be told from zero, so at 95 % the readings fit every value of x.", middle.Caveats[0]);
        Assert.Equal(RatioSetKind.TwoRays, far.Set.Kind);
        Assert.Equal(
            "The slope can't be told from zero, so at 95 % the readings bound x to one side at most: the set has no "
                + "end.",
            far.Caveats[0]);
    }

    [Fact]
    public void Slope_of_zero_is_a_problem()
    {
        Assert.False(InversePrediction.Of(Line([1, 2, 3, 2, 1]), "x", [2], 0.95).TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.NoSpread, problem.Kind);
        Assert.Equal("The slope of x is zero, so readings say nothing about it.", problem.Message);
        Assert.Equal("Calibrate with rows in which the response changes with x.", problem.Remedy);
    }

    [Fact]
    public void Missing_readings_are_problems()
    {
        var line = Line([1, 2.1, 2.9, 4.2, 5]);

        Assert.False(InversePrediction.Of(line, "x", [2, double.NaN], 0.95).TryGet(out _, out var problem));
        Assert.Equal("A reading is not a finite number.", problem.Message);
        Assert.Equal("Give the missing reading or leave it out.", problem.Remedy);
        Assert.False(InversePrediction.OfMean(line, "x", double.PositiveInfinity, 0.95).TryGet(out _, out problem));
        Assert.Equal("The mean is not a finite number.", problem.Message);
    }

    [Fact]
    public void Fits_that_are_no_lines_are_refused()
    {
        double[] y = [1, 2, 4, 3, 6];
        var x = new DesignColumn("x", [1, 2, 3, 4, 5]);
        var through = LeastSquares.Fit(new Design(x), y).Value;
        var z = new DesignColumn("z", [1, 0, 1, 0, 0]);
        var bent = LeastSquares.Fit(new Design(DesignColumn.Constant(5), x, z), y).Value;

        Throws("A calibration line has a constant and x", () => InversePrediction.Of(through, "x", [2], 0.9));
        Throws("A calibration line has a constant and x", () => InversePrediction.Of(bent, "x", [2], 0.9));
        Throws("There is no reading.", () => InversePrediction.Of(Line(y), "x", [], 0.9));
        Throws("A level lies between 0 and 1", () => InversePrediction.Of(Line(y), "x", [2], 90));
    }

    [Fact]
    public void Scale_and_zero_of_the_predictor_carry_over()
    {
        double[] y = [1, 2.1, 2.9, 4.2, 5];
        var given = InversePrediction.Of(Line(y), "x", [3.3], 0.95).Value;
        foreach (var (unit, zero) in new[] { (1e-60, 0.0), (1e60, 0.0), (1.0, 1e6) })
        {
            var x = new DesignColumn("x", [.. Enumerable.Range(1, 5).Select(i => (i * unit) + zero)]);
            var other = InversePrediction.Of(
                LeastSquares.Fit(new Design(DesignColumn.Constant(5), x), y).Value, "x", [3.3], 0.95).Value;
            Close.Relative(given.Set.Low!.Value, (other.Set.Low - zero) / unit, 1e-9);
            Close.Relative(given.Set.High!.Value, (other.Set.High - zero) / unit, 1e-9);
        }
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);

    private static LeastSquaresFit Line(double[] y) => LeastSquares.Fit(
        new Design(DesignColumn.Constant(5), new DesignColumn("x", [1, 2, 3, 4, 5])), y).Value;

    private static (LeastSquaresFit Fit, string Predictor) Fit(string name)
    {
        var isThermometer = name.StartsWith("thermometer", StringComparison.Ordinal);
        var table = ReferenceTable.Read(isThermometer ? "calibration/thermometer.csv" : "calibration/arsenic.csv");
        var (predictor, response) = isThermometer ? ("true_temperature_f", "reading_f") : ("actual", "measured");
        return (LeastSquares.Fit(
            new Design(DesignColumn.Constant(table.RowCount), table.Column(predictor)), table.Numbers(response)).Value,
            predictor);
    }
}
