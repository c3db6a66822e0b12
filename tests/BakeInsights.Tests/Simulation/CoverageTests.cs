using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>How often the intervals hold the truth of a kitchen whose truth is known.</summary>
public class CoverageTests
{
    private const int Months = 500;

    // Of 500 intervals of 95 %, between 458 and 489 hold the truth but for one time in a thousand:
    // qbinom(c(0.0005, 0.9995), 500, 0.95) in R 4.2.
    private const int Fewest = 458;
    private const int Most = 489;

    private static readonly KitchenTruth Truth = new();

    [Fact]
    public void Intervals_of_the_rise_time_terms_hold_their_truth_in_95_of_100_months()
    {
        var truths = new Dictionary<string, double>
        {
            ["intercept"] = Math.Log(Truth.RiseMinutesAtCentre),
            [RiseTime.DoughTemperatureTerm] = Truth.RiseDoughTemperature,
            [RiseTime.LogYeastTerm] = Truth.RiseLogYeast,
            [RiseTime.HydrationTerm] = Truth.RiseHydration,
            [RiseTime.SaltTerm] = Truth.RiseSalt,
        };
        var answers = AllMonths(Truth, null, RiseTime.Ask);
        Assert.All(truths, truth => Assert.InRange(Held(answers, truth.Key, truth.Value), Fewest, Most));
    }

    [Fact]
    public void Intervals_of_the_volume_terms_hold_their_truth_in_95_of_100_months()
    {
        var kitchen = Truth with { VolumeHydrationXDoughTemperature = 0.01 };
        var truths = new Dictionary<string, double>
        {
            ["intercept"] = kitchen.VolumeAtCentre,
            [LoafVolume.HydrationTerm] = kitchen.VolumeHydration,
            [LoafVolume.HydrationSquaredTerm] = kitchen.VolumeHydrationSquared,
            [LoafVolume.DoughTemperatureTerm] = kitchen.VolumeDoughTemperature,
            [LoafVolume.DoughTemperatureSquaredTerm] = kitchen.VolumeDoughTemperatureSquared,
            [LoafVolume.ProductTerm] = kitchen.VolumeHydrationXDoughTemperature,
        };
        var answers = AllMonths(kitchen, null, LoafVolume.Ask);
        Assert.All(truths, truth => Assert.InRange(Held(answers, truth.Key, truth.Value), Fewest, Most));

        // 65 + 0.06 / (2 x 0.006) at the centre's temperature, whatever the product's coefficient.
        const double best = 70;
        Assert.All(answers, answer => Assert.NotNull(answer.BestHydration));
        Assert.InRange(answers.Count(answer => answer.BestHydration!.Low <= best && best <= answer.BestHydration.High), Fewest, Most);
    }

    [Fact]
    public void Prediction_bands_hold_one_more_bake_in_95_of_100_months()
    {
        var held = Enumerable.Range(1, Months).Count(seed =>
        {
            var bakes = ExactKitchen.Month(seed, Truth, bakes: 47);
            var next = bakes[^1];
            var settings = DoughSettings.MedianOf([next]);
            var answer = RiseTime.Ask([.. bakes.SkipLast(1)]).Value;
            return answer.At(settings).Prediction.Contains(Measures.RiseTime.Of(next)!.Value);
        });
        Assert.InRange(held, Fewest, Most);
    }

    [Fact]
    public void Looks_every_ten_minutes_leave_times_slopes_and_bands_as_they_are()
    {
        var answers = AllMonths(Truth, 10, RiseTime.Ask);
        var centre = DoughSettings.MedianOf([])
            .With(Measures.DoughTemperature, 24).With(Measures.Hydration, 65).With(Measures.Yeast, 1).With(Measures.Salt, 2);
        var truth = Truth.RiseMinutesAtCentre * Math.Exp(2 * Truth.RiseSalt);

        // Four standard errors of the mean over the months: a month's middle is good to about 1 %, its slope to 0.007.
        var room = 4 / Math.Sqrt(Months);
        Assert.InRange(answers.Average(answer => answer.At(centre).Estimate) / truth, 1 - (0.012 * room), 1 + (0.012 * room));
        var bias = answers.Average(answer => answer.Coefficient(RiseTime.DoughTemperatureTerm)!.Estimate) - Truth.RiseDoughTemperature;
        Assert.InRange(bias, -0.007 * room, 0.007 * room);
        Assert.InRange(answers.Count(answer => answer.At(centre).Mean.Contains(truth)), Fewest, Most);
        Assert.InRange(Held(answers, RiseTime.DoughTemperatureTerm, Truth.RiseDoughTemperature), Fewest, Most);
        Assert.All(answers, answer => Assert.StartsWith(
            "46 of 46 rise times are only known to lie between two looks; the middle", answer.Caveats[0], StringComparison.Ordinal));
    }

    private static List<TAnswer> AllMonths<TAnswer>(
        KitchenTruth truth, double? lookEveryMin, Func<IReadOnlyList<Bake>, Attempt<TAnswer>> ask)
        where TAnswer : ModelAnswer =>
        [.. Enumerable.Range(1, Months).Select(seed => ask(ExactKitchen.Month(seed, truth, lookEveryMin: lookEveryMin)).Value)];

    private static int Held(IEnumerable<ModelAnswer> answers, string term, double truth) =>
        answers.Count(answer => answer.Coefficient(term)!.Interval(ModelAnswer.Level).Contains(truth));
}
