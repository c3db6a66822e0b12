using Xunit;
using static System.Math;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Growth and temperature curves, compared with R's nls by tests/reference-data/r/growth.R; data of
/// tests/reference-data/growth (gause, ecoli), r/puromycin.csv and r/chick.csv.
/// </summary>
public class GrowthTests
{
    private const double EstimateTolerance = 1e-6, ErrorTolerance = 1e-5;

    private static readonly NonlinearModel Gompertz = new(
        ["A", "mu", "lambda"], (b, x) => b[0] * Exp(-Exp((b[1] * E / b[0] * (b[2] - x[0])) + 1)));

    private static readonly NonlinearModel Enzyme = new(["V", "K"], (b, x) => b[0] * x[0] / (b[1] + x[0]));

    [Fact]
    public void Enzyme_has_the_expected_fit_and_profile_intervals()
    {
        var fit = EnzymeFit(Enzyme);

        IsAsExpected(fit, "puromycin");
        foreach (var (place, name) in new[] { (0, "V"), (1, "K") })
        {
            var interval = fit.Interval(place, 0.95);
            Close.Relative(Expected("puromycin", $"{name} low"), interval.Low, EstimateTolerance);
            Close.Relative(Expected("puromycin", $"{name} high"), interval.High, EstimateTolerance);
        }

        // Printed by Bates and Watts (1988), appendix A1.3.
        Close.Absolute(212.7, fit.Terms[0].Estimate, 0.05);
        Close.Absolute(0.06412, fit.Terms[1].Estimate, 5e-6);
        Close.Absolute(10.93, fit.ResidualStandardDeviation, 5e-3);
    }

    [Fact]
    public void Slopes_of_the_model_itself_give_the_same_fit()
    {
        var model = new NonlinearModel(
            ["V", "K"],
            Enzyme.Value,
            (b, x) => [x[0] / (b[1] + x[0]), -b[0] * x[0] / ((b[1] + x[0]) * (b[1] + x[0]))]);

        var (own, differences) = (EnzymeFit(model), EnzymeFit(Enzyme));

        foreach (var (first, second) in own.Terms.Zip(differences.Terms))
        {
            Close.Relative(first.Estimate, second.Estimate, 1e-10);
            Close.Relative(first.StandardError, second.StandardError, 1e-10);
        }

        Close.Relative(own.Interval(1, 0.9).High!.Value, differences.Interval(1, 0.9).High, 1e-7);
    }

    [Fact]
    public void Chick_has_the_expected_fit()
    {
        var data = ReferenceTable.Read("r/chick.csv");

        IsAsExpected(
            NonlinearLeastSquares.Fit(
                Logistic("A"), new Design(data.Column("days")), data.Numbers("weight"), [500, 30, 10]).Value,
            "chick");
    }

    [Theory]
    [InlineData(1, 5.7)]
    [InlineData(1, 15)]
    [InlineData(1, 28)]
    [InlineData(1, 39)]
    [InlineData(2, 5.7)]
    [InlineData(2, 15)]
    [InlineData(2, 28)]
    [InlineData(2, 39)]
    public void Yeast_has_the_expected_growth_curves(int series, double temperature)
    {
        var data = ReferenceTable.Read("growth/gause.csv");
        int[] rows = [.. Enumerable.Range(0, data.RowCount).Where(i =>
            data.Numbers("series")[i] == series && data.Numbers("temperature_c")[i] == temperature)];
        double[] hours = [.. rows.Select(i => data.Numbers("hours")[i])];
        double[] yeast = [.. rows.Select(i => data.Numbers("yeast")[i])];
        var design = new Design(new DesignColumn("hours", hours));
        var @case = FormattableString.Invariant($"gause {series} {temperature}");

        var logistic = NonlinearLeastSquares.Fit(
            Logistic("K"), design, yeast, [yeast.Max(), hours.Max() / 2, hours.Max() / 8]).Value;
        var gompertz = NonlinearLeastSquares.Fit(
            Gompertz, design, yeast, [yeast.Max(), 2 * yeast.Max() / hours.Max(), hours.Max() / 10]).Value;

        IsAsExpected(logistic, $"{@case} logistic");
        IsAsExpected(gompertz, $"{@case} gompertz");
    }

    [Fact]
    public void Bacteria_have_the_expected_temperature_curves()
    {
        var data = ReferenceTable.Read("growth/ecoli.csv");
        var design = new Design(data.Column("temperature_c"));
        double[] root = data.Numbers("root_rate");
        var ratkowsky = new NonlinearModel(["b", "low", "c", "high"], (b, x) =>
            b[0] * (x[0] - b[1]) * (1 - Exp(b[2] * (x[0] - b[3]))));
        var cardinal = new NonlinearModel(["most", "low", "best", "high"], (b, x) =>
        {
            var (most, low, best, high) = (b[0], b[1], b[2], b[3]);
            return most * (x[0] - high) * (x[0] - low) * (x[0] - low)
                / ((best - low) * (((best - low) * (x[0] - best)) - ((best - high) * (best + low - (2 * x[0])))));
        });

        IsAsExpected(NonlinearLeastSquares.Fit(ratkowsky, design, root, [0.033, 3, 0.3, 48]).Value, "ecoli root");
        IsAsExpected(
            NonlinearLeastSquares.Fit(cardinal, design, [.. root.Select(r => r * r)], [1.75, 4, 41, 48]).Value,
            "ecoli cardinal");
    }

    private static NonlinearModel Logistic(string top) =>
        new([top, "m", "s"], (b, x) => b[0] / (1 + Exp((b[1] - x[0]) / b[2])));

    private static NonlinearFit EnzymeFit(NonlinearModel model)
    {
        var data = ReferenceTable.Read("r/puromycin.csv");
        return NonlinearLeastSquares.Fit(
            model, new Design(data.Column("concentration")), data.Numbers("rate"), [200, 0.05]).Value;
    }

    private static void IsAsExpected(NonlinearFit fit, string @case)
    {
        foreach (var term in fit.Terms)
        {
            Close.Relative(Expected(@case, term.Name), term.Estimate, EstimateTolerance);
            Close.Relative(Expected(@case, $"{term.Name} SE"), term.StandardError, ErrorTolerance);
        }

        Close.Relative(Expected(@case, "residual SD"), fit.ResidualStandardDeviation, EstimateTolerance);
    }

    private static double Expected(string @case, string quantity)
    {
        var table = ReferenceTable.Read("r/growth-expected.csv");
        var row = table.Texts("case").Zip(table.Texts("quantity")).ToList().IndexOf((@case, quantity));
        return table.Numbers("value")[row];
    }
}
