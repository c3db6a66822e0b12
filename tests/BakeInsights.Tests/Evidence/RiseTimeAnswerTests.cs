using Xunit;

namespace BakeInsights.Tests;

/// <summary>What is worked out from the terms, against the same by hand.</summary>
public class RiseTimeAnswerTests
{
    private static readonly RiseTimeAnswer Answer = DemoJournal.RiseTime;

    [Fact]
    public void The_typical_dough_is_the_median_of_each_setting_over_the_bakes_used()
    {
        foreach (var measure in new[] { Measures.DoughTemperature, Measures.Hydration, Measures.Yeast, Measures.Salt })
        {
            var values = Answer.Used.Select(bake => measure.Of(bake)!.Value).Order().ToList();
            Assert.Equal((values[19] + values[20]) / 2, Answer.Typical[measure]);
        }

        Assert.Null(Answer.Typical[Measures.Sugar]);
        Assert.DoesNotContain(Measures.Sugar, Answer.Typical.Known);
    }

    [Fact]
    public void The_rise_time_at_a_setting_is_the_exponential_of_the_sum_of_its_terms()
    {
        var dough = Answer.Typical
            .With(Measures.DoughTemperature, 26)
            .With(Measures.Hydration, 70)
            .With(Measures.Yeast, 0.8)
            .With(Measures.Salt, 1.8);
        var point = Answer.At(dough);
        Nearly.Equal(
            Math.Exp(B("intercept") + (2 * B("dough_temperature")) + (5 * B("hydration")) + (Math.Log(0.8) * B("log_yeast")) + (1.8 * B("salt"))),
            point.Estimate);
        Assert.Equal(26, point.X);
        Assert.True(point.Prediction.Low < point.Mean.Low && point.Mean.Low < point.Estimate);
        Assert.True(point.Estimate < point.Mean.High && point.Mean.High < point.Prediction.High);
    }

    [Fact]
    public void Over_temperature_all_else_is_typical_and_warmer_is_quicker_by_the_slope()
    {
        var curve = Answer.OverTemperature([20, 22, 25]);
        Assert.Equal([20, 22, 25], curve.Select(point => point.X));
        Nearly.Equal(Math.Exp(2 * B("dough_temperature")), curve[1].Estimate / curve[0].Estimate);
        Nearly.Equal(Math.Exp(3 * B("dough_temperature")), curve[2].Estimate / curve[1].Estimate);
        Nearly.Equal(Answer.At(Answer.Typical.With(Measures.DoughTemperature, 22)).Estimate, curve[1].Estimate);
    }

    [Fact]
    public void A_change_in_minutes_is_that_of_the_typical_dough()
    {
        var minutes = Answer.At(Answer.Typical).Estimate;
        var slope = Answer.Coefficient(RiseTime.DoughTemperatureTerm)!;
        var ends = slope.Interval(ModelAnswer.Level);
        var change = Answer.ChangeInMinutes(2)!;
        Nearly.Equal(minutes * (Math.Exp(2 * slope.Estimate) - 1), change.Value);
        Nearly.Equal(minutes * (Math.Exp(2 * ends.Low) - 1), change.Low);
        Nearly.Equal(minutes * (Math.Exp(2 * ends.High) - 1), change.High);
        Nearly.Equal(100 * (Math.Exp(2 * slope.Estimate) - 1), Answer.ChangePct(2)!.Value);

        // Colder is longer: the ends change places and stay in order.
        var colder = Answer.ChangeInMinutes(-2)!;
        Assert.True(0 < colder.Low && colder.Low < colder.Value && colder.Value < colder.High);
    }

    [Fact]
    public void Moved_to_the_typical_dough_a_bake_keeps_its_temperature_and_its_chance()
    {
        var moved = Answer.MinutesAsTypical();
        Assert.Equal(Answer.Used.Count, moved.Count);
        foreach (var (bake, minutes) in Answer.Used.Zip(moved))
        {
            var byHand = Math.Log(Middle(bake))
                + (B("hydration") * (Answer.Typical[Measures.Hydration]!.Value - Measures.Hydration.Of(bake)!.Value))
                + (B("log_yeast") * Math.Log(Answer.Typical[Measures.Yeast]!.Value / Measures.Yeast.Of(bake)!.Value))
                + (B("salt") * (Answer.Typical[Measures.Salt]!.Value - Measures.Salt.Of(bake)!.Value))
                - LevelOf(bake[BakeColumns.Baker]!);
            Nearly.Equal(Math.Exp(byHand), minutes);
        }
    }

    [Fact]
    public void Expected_times_are_in_minutes_and_off_by_the_residuals()
    {
        foreach (var ((bake, expected), residual) in Answer.Used.Zip(Answer.Expected).Zip(Answer.Fit.Residuals))
        {
            Nearly.Equal(Middle(bake), expected * Math.Exp(residual));
        }
    }

    // The bakers' levels sum to zero, and the last baker in order has no coefficient of his own.
    private static double LevelOf(string baker)
    {
        var levels = Answer.Fit.Terms.Where(term => term.Name.StartsWith("baker ", StringComparison.Ordinal)).ToList();
        return levels.Find(term => term.Name == $"baker {baker}")?.Estimate ?? -levels.Sum(term => term.Estimate);
    }

    // The middle of the two looks, or the time itself where there was one look only.
    private static double Middle(Bake bake) =>
        (bake[BakeColumns.Rise]!.Value + (bake[BakeColumns.RiseNotReady] ?? bake[BakeColumns.Rise]!.Value)) / 2;

    [Fact]
    public void Without_temperatures_there_is_no_word_on_temperature_and_no_abscissa()
    {
        var answer = RiseTime.Ask(Dough.Bakes(24, (dough, _) => dough with { Celsius = null })).Value;
        Assert.Null(answer.Q10);
        Assert.Null(answer.ChangePct(1));
        Assert.Null(answer.ChangeInMinutes(1));
        Assert.Null(answer.At(answer.Typical).X);
        Assert.All(answer.MinutesAsTypical(), minutes => Assert.True(double.IsFinite(minutes)));
        Assert.Null(answer.ChangePct(RiseTime.SugarTerm, 1));
    }

    [Fact]
    public void A_setting_that_the_model_needs_and_nobody_gave_is_named()
    {
        var failure = Assert.Throws<ArgumentException>(() => Answer.At(DoughSettings.MedianOf([])));
        Assert.StartsWith("The dough's dough_temp_c is not given.", failure.Message, StringComparison.Ordinal);
    }

    private static double B(string term) => Answer.Coefficient(term)!.Estimate;
}
