using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

public class LoafVolumeTests
{
    [Fact]
    public void Volume_is_a_curved_surface_and_its_top_in_hydration_is_found()
    {
        var answer = Ask((dough, _) => dough);
        Assert.Equal(
            [
                "intercept", "hydration", "dough_temperature", "hydration_squared", "dough_temperature_squared",
                "hydration_x_dough_temperature",
            ],
            answer.Terms.Select(term => term.Name));
        Assert.Equal("specific volume in mL/g, a curved surface in hydration less 65 % and dough temperature less 24 °C", answer.Model);
        Assert.InRange(answer.BestHydration!.Value, answer.BestHydration.Low!.Value, answer.BestHydration.High!.Value);
        Assert.InRange(70, answer.BestHydration.Low.Value, answer.BestHydration.High.Value);
        Assert.Equal("", answer.WhyNoBestHydration);
    }

    [Fact]
    public void Two_levels_make_a_line_and_a_line_has_no_top()
    {
        var answer = Ask((dough, i) => dough with { HydrationPct = i % 2 == 0 ? 62 : 68 });
        Assert.Contains(
            new LeftOutTerm("hydration_squared", "Hydration was tried at 2 levels, and a curve takes 3."), answer.LeftOutTerms);
        Assert.Null(answer.BestHydration);
        Assert.Equal("The model is a straight line in hydration, and a line has no top.", answer.WhyNoBestHydration);
    }

    [Fact]
    public void Without_squares_and_product_the_model_is_a_plane()
    {
        var plane = LoafVolume.Ask(Dough.Bakes(6, (dough, _) => dough)).Value;
        Assert.Equal("specific volume in mL/g, a plane in hydration less 65 % and dough temperature less 24 °C", plane.Model);
    }

    [Fact]
    public void A_curve_that_bends_up_has_no_top()
    {
        var answer = Ask((dough, _) => dough with { SpecificVolume = 3 + (0.01 * Square(dough.HydrationPct - 66)) + (0.01 * dough.SaltPct) });
        Assert.Null(answer.BestHydration);
        Assert.Equal("The fitted curve doesn't bend down, so it has no top.", answer.WhyNoBestHydration);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(80)]
    public void A_top_outside_the_hydrations_baked_is_not_named(double top)
    {
        var answer = Ask((dough, _) => dough with { SpecificVolume = 5 - (0.004 * Square(dough.HydrationPct - top)) + (0.01 * dough.SaltPct) });
        Assert.True(answer.Coefficient(LoafVolume.HydrationSquaredTerm)!.Estimate < 0);
        Assert.Null(answer.BestHydration);
        Assert.Equal("The curve's top lies outside the hydrations that were baked.", answer.WhyNoBestHydration);
    }

    [Fact]
    public void A_bend_that_can_not_be_told_from_none_leaves_the_interval_open()
    {
        var hardlyBent = new KitchenTruth { VolumeHydration = 0, VolumeHydrationSquared = -0.0003 };
        var open = Enumerable.Range(1, 40)
            .Select(seed => LoafVolume.Ask(ExactKitchen.Month(seed, hardlyBent)).Value)
            .Where(answer => answer.BestHydration is not null && answer.Coefficient(LoafVolume.HydrationSquaredTerm)!.PValue > 0.05)
            .ToList();
        Assert.NotEmpty(open);
        Assert.All(open, answer =>
        {
            Assert.Null(answer.BestHydration!.Low);
            Assert.Null(answer.BestHydration.High);
            Assert.Equal(
                "The best hydration has no closed interval: the journal can't rule out that volume hardly bends with hydration.",
                answer.Caveats[0]);
        });
    }

    [Fact]
    public void Causes_that_moved_together_are_told_without_the_intercept()
    {
        var answer = Ask((dough, _) => dough with { HydrationPct = 60 + (2 * (dough.Celsius - 20)) });
        Assert.Equal(
            [
                ("dough_temperature", "It moved together with hydration, so this journal can't tell them apart."),
                ("dough_temperature_squared", "It moved together with hydration and hydration squared, so this journal can't tell them apart."),
                ("hydration_x_dough_temperature", "It moved together with hydration and hydration squared, so this journal can't tell them apart."),
            ],
            answer.LeftOutTerms.Select(left => (left.Name, left.Reason)));
    }

    [Fact]
    public void Changing_one_cause_at_a_time_leaves_nothing_for_their_product()
    {
        var answer = Ask((dough, i) => i % 2 == 0 ? dough with { Celsius = 24 } : dough with { HydrationPct = 65 });
        Assert.Equal(
            new LeftOutTerm("hydration_x_dough_temperature", "It had the same value in every bake."), Assert.Single(answer.LeftOutTerms));
    }

    [Fact]
    public void A_journal_without_temperatures_is_answered_by_hydration_alone()
    {
        var answer = Ask((dough, _) => dough with { Celsius = null });
        Assert.Equal(["intercept", "hydration", "hydration_squared"], answer.Terms.Select(term => term.Name));
        Assert.All(answer.LeftOutTerms, left => Assert.Equal("It is not in the journal.", left.Reason));
        Assert.NotNull(answer.BestHydration);
    }

    [Fact]
    public void Bakes_without_a_volume_are_set_aside_and_without_any_there_is_a_problem()
    {
        var answer = Ask((dough, i) => i < 2 ? dough with { SpecificVolume = null } : dough);
        var aside = Assert.Single(answer.LeftOutBakes);
        Assert.Equal("no loaf volume or loaf weight", aside.Reason);
        Assert.Equal(["B1", "B2"], aside.Bakes.Select(bake => bake.Id));

        Assert.False(LoafVolume.Ask(Dough.Bakes(5, (dough, _) => dough with { SpecificVolume = null })).TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.TooFewRows, problem.Kind);
        Assert.Equal(["loaf volume"], problem.Columns);
        Assert.Equal("No bake has a loaf volume that can be used.", problem.Message);
    }

    [Fact]
    public void The_surface_is_the_sum_of_its_terms()
    {
        var answer = DemoJournal.LoafVolume;
        double B(string term) => answer.Coefficient(term)!.Estimate;
        const double h = 3;
        const double t = -2;
        var points = answer.OverHydration([65 + h, 70], 24 + t);
        Nearly.Equal(
            B("intercept") + (B("hydration") * h) + (B("dough_temperature") * t) + (B("hydration_squared") * h * h)
            + (B("dough_temperature_squared") * t * t) + (B("hydration_x_dough_temperature") * h * t),
            points[0].Estimate);
        Assert.Equal([68, 70], points.Select(point => point.X));
        Assert.All(points, point => Assert.True(point.Prediction.Low < point.Mean.Low && point.Mean.High < point.Prediction.High));
        Assert.Throws<ArgumentException>(() => answer.At(DoughSettings.MedianOf([])));
    }

    private static double? Square(double? value) => value * value;

    private static LoafVolumeAnswer Ask(Func<Dough, int, Dough> change) => LoafVolume.Ask(Dough.Bakes(24, change)).Value;
}
