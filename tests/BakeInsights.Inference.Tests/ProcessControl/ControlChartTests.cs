using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Charts of the NIST/SEMATECH e-Handbook of Statistical Methods, in the digits printed there.</summary>
public class ControlChartTests
{
    [Fact]
    public void Flow_rates_have_the_printed_limits()
    {
        var chart = IndividualsChart.Of(ReferenceTable.Read("control/flowrate.csv").Numbers("rate")).Value;

        // Section 6.3.2.2, which rounds 2 / root pi to 1.128; the exact figures by arithmetic in R.
        Close.Relative(50.81, chart.Centre, 1e-14);
        Close.Absolute(1.8778, chart.MeanRange, 5e-5);
        Close.Absolute(55.8041, chart.Limits.High, 2e-3);
        Close.Absolute(45.8159, chart.Limits.Low, 2e-3);
        Close.Relative(1.66413722668351, chart.StandardDeviation, 1e-13);
        Close.Relative(55.8024116800505, chart.Limits.High, 1e-13);
        Close.Relative(45.8175883199495, chart.Limits.Low, 1e-13);
        Close.Relative(6.13382104844193, chart.RangeLimit, 1e-13);
        Assert.Empty(chart.OutOfLimits);
        Assert.Empty(chart.RangesOutOfLimit);
        Assert.Empty(chart.Signals(RunRules.WesternElectric));
    }

    [Fact]
    public void Weighted_averages_are_the_printed_ones()
    {
        double[] printed =
        [
            50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
            49.92, 50.73, 51.23, 51.94, 51.99,
        ];

        var chart = WeightedAverageChart.Of(
            ReferenceTable.Read("control/averages.csv").Numbers("x"), 50, 2.0539, 0.3, 3).Value;

        // Section 6.3.2.4; the further digits by arithmetic in R.
        Assert.All(printed.Zip(chart.Averages), pair => Close.Absolute(pair.First, pair.Second, 5e-3));
        Close.Relative(51.9882432586446, chart.Averages[^1], 1e-13);
        Close.Relative(52.5884317381266, chart.FinalLimits.High, 1e-13);
        Close.Relative(47.4115682618734, chart.FinalLimits.Low, 1e-13);
        Close.Relative(51.84851, chart.Limits[0].High, 1e-13);
        Close.Relative(47.4115690858756, chart.Limits[^1].Low, 1e-13);
        Assert.Empty(chart.OutOfLimits);
    }

    [Fact]
    public void Cumulative_sums_are_the_printed_ones()
    {
        double[] upper =
            [0, 0, 0, 0, 0.03, 0, 0, 0, 0, 0, 0, 0, 3.01, 4.94, 7.45, 10.63, 11.99, 14.44, 16, 19.04];
        double[] lower =
            [0, 0.01, 0, 0.33, 0, 0, 0.56, 0.72, 0.17, 0.25, 0.31, 0, 0, 0, 0, 0, 0, 0, 0, 0];

        var chart = CumulativeSumChart.Of(
            ReferenceTable.Read("control/sums.csv").Numbers("x"), 325, 0.3175, 4.1959).Value;

        // Section 6.3.2.3, rounded to two digits there.
        Assert.All(upper.Zip(chart.Upper), pair => Close.Absolute(pair.First, pair.Second, 6e-3));
        Assert.All(lower.Zip(chart.Lower), pair => Close.Absolute(pair.First, pair.Second, 6e-3));
        Close.Relative(19.035, chart.Upper[^1], 1e-12);
        Assert.Equal([13, 14, 15, 16, 17, 18, 19], chart.UpperSignals);
        Assert.Empty(chart.LowerSignals);
        Assert.Equal(8, chart.UpperRun[^1]);
        Assert.Equal(5, chart.LowerRun[10]);
    }

    [Fact]
    public void Value_beyond_the_limits_is_found()
    {
        var chart = IndividualsChart.Of([5, 5.1, 4.9, 5, 5.1, 4.9, 5, 9, 5, 5.1, 4.9, 5]).Value;

        Assert.Equal([7], chart.OutOfLimits);
        Assert.Equal([7, 8], chart.RangesOutOfLimit);
    }

    [Fact]
    public void Series_without_a_chart_are_problems()
    {
        IsProblem(
            IndividualsChart.Of([4]), FitProblemKind.TooFewRows,
            "There are 1 values, and at least 2 are needed.", "Add 1 or more values.");
        IsProblem(
            IndividualsChart.Of([4, double.NaN, 5]), FitProblemKind.MissingValue,
            "1 of 3 values are not finite numbers, the first of them number 2.",
            "Give the missing numbers or leave them out.");
        IsProblem(
            IndividualsChart.Of([4, 4, 4]), FitProblemKind.NoSpread,
            "No value differs from the one before it, so there is no spread to draw limits from.",
            "Record the values to more digits, or add values.");
        Assert.False(WeightedAverageChart.Of([], 1, 1, 0.2, 3).Succeeded);
        Assert.False(CumulativeSumChart.Of([double.NaN], 1, 1, 3).Succeeded);
    }

    [Fact]
    public void Settings_out_of_range_are_refused()
    {
        Assert.ThrowsAny<ArgumentException>(() => WeightedAverageChart.Of([1], 1, 0, 0.2, 3));
        Assert.ThrowsAny<ArgumentException>(() => WeightedAverageChart.Of([1], 1, 1, 1.2, 3));
        Assert.ThrowsAny<ArgumentException>(() => CumulativeSumChart.Of([1], 1, -1, 3));
    }

    private static void IsProblem<T>(Attempt<T> attempt, FitProblemKind kind, string message, string remedy)
        where T : notnull
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
    }
}
