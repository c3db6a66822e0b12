using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// Both regressions of the demo journal against base R (r/demo_fit.R, run once with R 4.2), which reads the journal, sets
/// bakes aside and finds Fieller's interval by itself.
/// </summary>
public class DemoFitTests
{
    private static readonly Dictionary<(string Model, string Quantity, string Term), double> Expected =
        File.ReadLines(Repository.ReferenceData("r/demo_fit.csv"))
            .Skip(1)
            .Select(line => line.Split(','))
            .ToDictionary(cells => (cells[0], cells[1], cells[2]), cells => double.Parse(cells[3], CultureInfo.InvariantCulture));

    public static TheoryData<string> Models => new("rise_time", "loaf_volume");

    [Theory]
    [MemberData(nameof(Models))]
    public void Coefficients_errors_intervals_and_p_values_are_those_of_R(string model)
    {
        var answer = Answer(model);
        Assert.Equal(
            Expected.Keys.Where(key => key.Model == model && key.Quantity == "estimate").Select(key => key.Term),
            answer.Terms.Select(term => term.Name));
        foreach (var (name, _, term) in answer.Terms)
        {
            var interval = term.Interval(ModelAnswer.Level);
            Nearly.Equal(Expected[(model, "estimate", name)], term.Estimate);
            Nearly.Equal(Expected[(model, "standard_error", name)], term.StandardError);
            Nearly.Equal(Expected[(model, "p", name)], term.PValue);
            Nearly.Equal(Expected[(model, "low", name)], interval.Low);
            Nearly.Equal(Expected[(model, "high", name)], interval.High);
        }
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Bakes_used_spread_and_diagnostics_are_those_of_R(string model)
    {
        var answer = Answer(model);
        Assert.Equal(Expected[(model, "used", "")], answer.Used.Count);
        Nearly.Equal(Expected[(model, "residual_sd", "")], answer.ResidualSd);
        Nearly.Equal(Expected[(model, "r_squared", "")], answer.RSquared);
        Nearly.Equal(Expected[(model, "largest_leverage", "")], answer.Checks.Single(check => check.Name == "largest_leverage").Value);
        Nearly.Equal(Expected[(model, "largest_residual", "")], answer.Checks.Single(check => check.Name == "largest_residual").Value);
    }

    [Theory]
    [InlineData("centre", 24, 65, 1, 2)]
    [InlineData("cool", 21, 70, 0.8, 1.8)]
    public void Expected_results_and_their_bands_are_those_of_R(
        string setting, double celsius, double hydration, double yeast, double salt)
    {
        var dough = DoughSettings.MedianOf([])
            .With(Measures.DoughTemperature, celsius)
            .With(Measures.Hydration, hydration)
            .With(Measures.Yeast, yeast)
            .With(Measures.Salt, salt);
        SameAsR("rise_time", DemoJournal.RiseTime.At(dough));
        SameAsR("loaf_volume", DemoJournal.LoafVolume.At(dough));

        void SameAsR(string model, CurvePoint point)
        {
            Nearly.Equal(Expected[(model, "expected", setting)], point.Estimate);
            Nearly.Equal(Expected[(model, "mean_low", setting)], point.Mean.Low);
            Nearly.Equal(Expected[(model, "mean_high", setting)], point.Mean.High);
            Nearly.Equal(Expected[(model, "prediction_low", setting)], point.Prediction.Low);
            Nearly.Equal(Expected[(model, "prediction_high", setting)], point.Prediction.High);
        }
    }

    [Fact]
    public void Best_hydration_and_its_interval_are_those_of_R()
    {
        var best = DemoJournal.LoafVolume.BestHydration!;
        Nearly.Equal(Expected[("loaf_volume", "optimum", "hydration")], best.Value);
        Nearly.Equal(Expected[("loaf_volume", "optimum_low", "hydration")], best.Low);
        Nearly.Equal(Expected[("loaf_volume", "optimum_high", "hydration")], best.High);
    }

    [Fact]
    public void Q10_and_its_interval_are_those_of_R()
    {
        var q10 = DemoJournal.RiseTime.Q10!;
        Nearly.Equal(Expected[("rise_time", "q10", "")], q10.Value);
        Nearly.Equal(Expected[("rise_time", "q10_low", "")], q10.Low);
        Nearly.Equal(Expected[("rise_time", "q10_high", "")], q10.High);
    }

    private static ModelAnswer Answer(string model) =>
        model == "rise_time" ? DemoJournal.RiseTime : DemoJournal.LoafVolume;
}
