using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class KitchenWaterTests
{
    private static readonly KitchenWater Kitchen = new(C(18), C(55), iceG: 500);

    [Fact]
    public void Parts_add_up_to_the_water_and_mix_to_the_temperature() => Gen.Double[-20, 80].Sample(needed =>
    {
        var plan = Kitchen.Draw(C(needed), 1_000);

        // Ice at 0 °C is as cold as water of -80 °C.
        var mixed = ((plan.ColdG * 18) + (plan.HotG * 55) + (plan.IceG * -80)) / 1_000;
        return Math.Abs(plan.ColdG + plan.HotG + plan.IceG - 1_000) < 1e-9
            && plan is { ColdG: >= 0, HotG: >= 0, IceG: >= 0 and <= 500 }
            && Math.Abs(mixed - plan.Reached.C) < 1e-9;
    });

    [Fact]
    public void What_the_hot_tap_can_not_reach_is_named()
    {
        var plan = Kitchen.Draw(C(60), 1_000);
        Assert.False(plan.IsReached);
        Assert.Equal(5, plan.OutOfReach.C, 1e-12);
        Assert.True(plan.IsTooWarmForYeast);
        Assert.Collection(
            plan.Warnings(UnitSystem.Us),
            yeast => Assert.Contains("131 °F is above 113 °F", yeast, StringComparison.Ordinal),
            tap => Assert.Contains("9 °F short", tap, StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_ice_at_hand_can_not_reach_is_named()
    {
        // All ice of half the water: half of the way from 18 to -80 °C.
        var plan = Kitchen.Draw(C(-40), 1_000);
        Assert.Equal(500, plan.IceG);
        Assert.Equal(-31, plan.Reached.C, 1e-9);
        Assert.Contains("9.0 °C short", Assert.Single(plan.Warnings(UnitSystem.Metric)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_kitchen_without_ice_reaches_its_cold_tap()
    {
        var plan = new KitchenWater(C(18), C(55)).Draw(C(10), 1_000);
        Assert.Equal(C(18), plan.Reached);
        Assert.Equal(-8, plan.OutOfReach.C, 1e-12);
    }

    [Theory]
    [InlineData(45, false)]
    [InlineData(45.5, true)]
    public void Yeast_is_warned_for_above_45_C(double needed, bool isTooWarm)
    {
        var plan = Kitchen.Draw(C(needed), 1_000);
        Assert.Equal(isTooWarm, plan.IsTooWarmForYeast);
        Assert.Equal(isTooWarm, plan.Warnings(UnitSystem.Metric).Length > 0);
    }

    [Fact]
    public void A_kitchen_with_one_tap_draws_from_it()
    {
        var plan = new KitchenWater(C(20), C(20)).Draw(C(20), 1_000);
        Assert.True(plan.IsReached);
        Assert.Equal((1_000, 0, 0), (plan.ColdG, plan.HotG, plan.IceG));
    }

    private static Temperature C(double degrees) => Temperature.FromC(degrees);
}
