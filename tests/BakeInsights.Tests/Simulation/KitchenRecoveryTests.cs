using Xunit;

namespace BakeInsights.Tests;

/// <summary>Whether the answers find the virtual kitchen's truth, on average over months.</summary>
public class KitchenRecoveryTests
{
    // Beyond 3.5 standard errors a mean lies once in 2,000 times (standard normal distribution).
    private const double StandardErrors = 3.5;

    private static readonly VirtualKitchen Exact = VirtualKitchen.Usual.Exactly();

    // The trade's 10 % a degree, and slopes that a prior about it would pull at: three of 0.02 off either way.
    public static TheoryData<double> Slopes => [-0.0953, -0.0353, -0.1553];

    [Theory]
    [MemberData(nameof(Slopes))]
    public void Rise_time_answers_average_to_the_truth_when_everything_is_exact(double slope)
    {
        var kitchen = Exact with { Truth = Exact.Truth with { RiseDoughTemperature = slope } };
        var answers = KitchenMonths.Ask(kitchen, RiseTime.Ask);

        Assert.Equal(slope, kitchen.RiseTimeTruth[RiseTime.DoughTemperatureTerm]);
        Assert.All(kitchen.RiseTimeTruth.Where(truth => truth.Key != RiseTime.SugarTerm), truth => AssertFound(answers, truth));

        // So many months would show a bias of one part in fifty of the trade's slope.
        Assert.InRange(KitchenMonths.Average(answers, RiseTime.DoughTemperatureTerm).StandardError, 0, 0.0006);
    }

    [Fact]
    public void Sugar_is_found_where_doughs_have_it()
    {
        var kitchen = Exact with { Practice = Exact.Practice with { SugarPct = new(0, 8) } };
        var answers = KitchenMonths.Ask(kitchen, RiseTime.Ask);
        Assert.All(kitchen.RiseTimeTruth, truth => AssertFound(answers, truth));
        Assert.Equal(0.02, kitchen.RiseTimeTruth[RiseTime.SugarTerm]);
    }

    [Fact]
    public void Loaf_volume_answers_average_to_the_truth_when_everything_is_exact()
    {
        var kitchen = Exact with { Truth = Exact.Truth with { VolumeHydrationXDoughTemperature = 0.004 } };
        var answers = KitchenMonths.Ask(kitchen, LoafVolume.Ask);
        Assert.All(kitchen.LoafVolumeTruth, truth => AssertFound(answers, truth));

        // 65 + 0.06 / (2 x 0.006).
        Assert.Equal(70, kitchen.Truth.BestHydrationPct!.Value, 1e-12);
        var best = answers.Cast<LoafVolumeAnswer>().Select(answer => answer.BestHydration?.Value).OfType<double>().Order().ToList();
        Assert.InRange(best[best.Count / 2], 69.7, 70.3);
    }

    [Fact]
    public void Trade_effects_come_with_the_spreads_that_were_asked_for()
    {
        var kitchen = VirtualKitchen.TradeEffects(0.15);
        var answers = KitchenMonths.Ask(kitchen, RiseTime.Ask);
        Assert.All(kitchen.RiseTimeTruth.Where(truth => truth.Key != RiseTime.SugarTerm), truth => AssertFound(answers, truth));

        // The residual variance is unbiased, so its mean over months is the truth's.
        var (variance, error) = KitchenMonths.Average([.. answers.Select(answer => answer.ResidualSd * answer.ResidualSd)]);
        Assert.InRange(variance, (0.15 * 0.15) - (StandardErrors * error), (0.15 * 0.15) + (StandardErrors * error));

        // Of 4,000 doughs the standard deviation is known to 0.02 (1.8 / root of 8,000).
        var celsius = KitchenMonths.Bakes(kitchen, 100).Select(bake => bake[BakeColumns.DoughTemp]!.Value).ToList();
        Assert.InRange(KitchenMonths.Average(celsius).StandardError * Math.Sqrt(celsius.Count), 1.73, 1.87);
    }

    [Fact]
    public void Where_nothing_matters_causes_are_found_in_five_of_a_hundred_months()
    {
        var rise = KitchenMonths.Ask(VirtualKitchen.NothingMatters, RiseTime.Ask);
        var volume = KitchenMonths.Ask(VirtualKitchen.NothingMatters, LoafVolume.Ask);

        // qbinom(c(0.0005, 0.9995), 400, 0.05), by summing the terms of the distribution.
        Assert.All(Causes(rise), term => Assert.InRange(Found(rise, term), 7, 36));
        Assert.All(Causes(volume), term => Assert.InRange(Found(volume, term), 7, 36));
        Assert.All(VirtualKitchen.NothingMatters.RiseTimeTruth.Skip(1), truth => Assert.Equal(0, truth.Value));
        Assert.All(VirtualKitchen.NothingMatters.LoafVolumeTruth.Skip(1), truth => Assert.Equal(0, truth.Value));
        Assert.Null(VirtualKitchen.NothingMatters.Truth.BestHydrationPct);
    }

    // A probe of 0.5 °C against a spread of 1.5 °C: 1.5² / (1.5² + 0.5²) of the slope is left (the classical error in a
    // predictor; Fuller 1987, Measurement Error Models, section 1.1).
    [Fact]
    public void Error_of_the_probe_flattens_the_slope_by_its_reliability()
    {
        var kitchen = VirtualKitchen.TradeEffects(0.1, 1.5);
        kitchen = kitchen with { Instruments = kitchen.Instruments with { ProbeSdC = 0.5 } };
        var (mean, error) = KitchenMonths.Average(KitchenMonths.Ask(kitchen, RiseTime.Ask), RiseTime.DoughTemperatureTerm);
        var expected = 0.9 * kitchen.Truth.RiseDoughTemperature;
        Assert.InRange(mean, expected - (StandardErrors * error), expected + (StandardErrors * error));
    }

    // An error of the Berkson kind leaves the slope of a straight line and adds to the spread about it.
    [Fact]
    public void Cups_leave_the_slope_on_hydration_and_widen_the_spread()
    {
        var cups = KitchenMonths.Ask(Exact.ByCup(FlourMeasure.CupUnknown), RiseTime.Ask);
        var weighed = KitchenMonths.Ask(Exact, RiseTime.Ask);
        AssertFound(cups, new(RiseTime.HydrationTerm, Exact.Truth.RiseHydration));

        // 8 % more flour: 5 points drier, yeast and salt thinner; ln(minutes) moves by about 0.07 x 0.08 / 0.08.
        Assert.InRange(cups.Average(answer => answer.ResidualSd), 1.1 * weighed.Average(answer => answer.ResidualSd), 0.15);
    }

    [Fact]
    public void Curved_response_has_its_slope_at_the_centre_for_a_truth()
    {
        var kitchen = Exact with { Response = ExponentialResponse.Trade };
        Assert.Equal(-Math.Log(1.1), kitchen.RiseTimeTruth[RiseTime.DoughTemperatureTerm], 1e-9);

        // The growth curve's rates at 23.5 and 24.5 °C differ by 5 % (facts of Rosso's curve: 8 % at 20 °C, 5 % at 25 °C).
        var growth = kitchen with { Response = CardinalResponse.YeastGrowth };
        Assert.InRange(growth.RiseTimeTruth[RiseTime.DoughTemperatureTerm], -0.065, -0.045);
        var answers = KitchenMonths.Ask(growth, RiseTime.Ask);
        Assert.InRange(KitchenMonths.Average(answers, RiseTime.DoughTemperatureTerm).Mean, -0.075, -0.045);
    }

    private static void AssertFound(IReadOnlyList<ModelAnswer> answers, KeyValuePair<string, double> truth)
    {
        var (mean, error) = KitchenMonths.Average(answers, truth.Key);
        Assert.InRange(mean, truth.Value - (StandardErrors * error), truth.Value + (StandardErrors * error));
    }

    private static IEnumerable<string> Causes(IReadOnlyList<ModelAnswer> answers) => answers[0].Terms.Skip(1).Select(term => term.Name);

    private static int Found(IEnumerable<ModelAnswer> answers, string term) =>
        answers.Count(answer => !answer.Coefficient(term)!.Interval(ModelAnswer.Level).Contains(0));
}
