using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// Both curves against base R's nls (r/rise_curves.R, run with R 4.2; numbers in r/rise_curves.csv): the doughs of the
/// demo journal, and published pasture regrowth (nist/nonlinear.csv, Rat42:
/// Ratkowsky 1983, pp. 61 and 88) as mm above 50.
/// </summary>
public class RiseCurveOracleTests
{
    private const string Pasture = "pasture";
    private const double Estimates = 1e-6, Ends = 1e-5;

    private static readonly Dictionary<(string Case, string Curve, string Quantity), double> Expected =
        File.ReadLines(Repository.ReferenceData("r/rise_curves.csv"))
            .Skip(1)
            .Select(line => line.Split(','))
            .ToDictionary(cells => (cells[0], cells[1], cells[2]), cells => double.Parse(cells[3], CultureInfo.InvariantCulture));

    public static TheoryData<string, string> Cases()
    {
        var cases = new TheoryData<string, string>();
        foreach (var (name, curve) in Expected.Keys.Select(key => (key.Case, key.Curve)).Distinct())
        {
            cases.Add(name, curve);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Estimates_criterion_and_profile_intervals_are_those_of_R(string name, string curve)
    {
        var series = Series(name);
        var fit = RiseCurveFitting.Fit(curve == "Gompertz" ? RiseFamily.Gompertz : RiseFamily.Logistic, series).Value;

        Assert.Equal(E("used"), series.Minutes.Length);
        Near(E("aicc"), fit.Aicc, Estimates);
        Near(E("S"), fit.StartSize, Estimates);
        Near(E("residual_sd"), fit.Scatter * fit.StartSize, Estimates);
        Same("A", new Estimate(fit.Ceiling.Value - 1, fit.Ceiling.Low - 1, fit.Ceiling.High - 1));
        Same("mu", fit.Steepest);
        Same("lag", fit.Lag);
        Assert.Equal(Expected.ContainsKey((name, curve, "two")), fit.Doubling is not null);
        if (fit.Doubling is { } doubling)
        {
            Same("two", doubling);
        }

        double E(string quantity) => Expected[(name, curve, quantity)];

        void Same(string quantity, Estimate estimate)
        {
            Near(E(quantity), estimate.Value, Estimates);
            End($"{quantity} low", estimate.Low);
            End($"{quantity} high", estimate.High);
        }

        // R's script walks 25 standard errors from the estimate; an end farther off is not in its table.
        void End(string quantity, double? end)
        {
            if (Expected.TryGetValue((name, curve, quantity), out var expected))
            {
                Assert.True(end is not null, $"{quantity} is {expected:R} in R and has no end here.");
                Near(expected, end.Value, Ends);
            }
        }
    }

    [Fact]
    public void Curve_with_the_lesser_criterion_is_chosen_as_R_would()
    {
        foreach (var name in Expected.Keys.Select(key => key.Case).Distinct())
        {
            var answer = RiseCurves.Fit(Series(name)).Value;
            var difference = Expected[(name, "Gompertz", "aicc")] - Expected[(name, "logistic", "aicc")];
            Assert.Equal(difference < 0 ? "Gompertz" : "logistic", answer.Chosen.Curve.Name);
            Near(Math.Abs(difference), answer.AiccDifference!.Value, 1e-5);
        }
    }

    private static RiseSeries Series(string name)
    {
        var parts = name.Split(' ');
        if (name != Pasture)
        {
            return RiseCurves.Of(DemoJournal.Journal)
                .Single(a => a.BakeId == parts[0] && a.Stage.ToString()!.Equals(parts[1], StringComparison.OrdinalIgnoreCase))
                .Outcome.Value.Series;
        }

        var rows = File.ReadLines(Repository.ReferenceData("nist/nonlinear.csv")).Select(line => line.Split(','))
            .Where(cells => cells[0] == "Rat42").ToList();
        double[] Numbers(int column) => [.. rows.Select(cells => double.Parse(cells[column], CultureInfo.InvariantCulture))];
        return RiseSeries.Of(Numbers(2), [.. Numbers(1).Select(growth => 50 + growth)], isHeight: true);
    }

    private static void Near(double expected, double actual, double relative) => Assert.True(
        Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"Expected {expected:R}, got {actual:R}.");
}
