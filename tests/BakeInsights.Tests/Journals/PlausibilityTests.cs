using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>What is plain is left alone, what can't be is taken out, and what is only unusual stays.</summary>
public class PlausibilityTests
{
    private const string Header =
        "baked_on,flour_g,water_g,milk_g,egg_g,salt_g,sugar_g,fat_g,yeast_g,yeast_kind,preferment_g,preferment_hydration_pct,"
        + "room_temp_c,flour_temp_c,water_temp_c,dough_temp_c,oven_temp_c,rise_min,rise_not_ready_min,cold_min,proof_min,"
        + "dough_g,loaf_count,loaf_g,loaf_volume_ml";

    // Formulas of the trade's textbooks in round figures: a lean loaf, brioche, sourdough overnight in the cold, a
    // Tuscan loaf without salt, milk bread without water, and baguettes, which lose the most in the oven.
    [Theory]
    [InlineData("2026-10-01,1000,650,,,20,,,7,instant,,,21,20,27,24.5,230,90,80,,50,1660,2,735,3000")]
    [InlineData("2026-10-01,500,60,,250,10,60,250,15,fresh,,,22,21,,24,190,90,,,120,1100,2,480,1900")]
    [InlineData("2026-10-01,900,660,,,20,,,0,instant,200,100,21,20,30,25,240,960,900,720,60,1770,2,770,2600")]
    [InlineData("2026-10-01,1000,620,,,0,,,10,active_dry,,,21,20,28,24,230,100,,,45,1620,2,720,2700")]
    [InlineData("2026-10-01,500,0,330,,9,40,40,5,instant,,,21,20,,26,185,75,,,60,910,1,820,3600")]
    [InlineData("2026-10-01,1000,680,,,20,,,6,instant,,,21,20,24,24,250,100,,,40,1700,5,265,1400")]
    public void Plain_rows_give_no_notice(string row) => Assert.Empty(Csv.Read(Header, row).Notices);

    [Fact]
    public void Demo_month_gives_no_notice_but_that_of_its_mistyped_day() => Assert.Equal(
        ["DATE_UNREAD"], Journal.Read(Repository.Path("data-demo/millpond-lane")).Notices.Select(notice => notice.Code));

    [Fact]
    public void Ends_of_usual_ranges_are_usual() => Assert.All(UsualRanges.OfColumns, range =>
    {
        var high = range.Column == BakeColumns.Rise ? UsualRanges.LongestWarmRiseMin : range.High;
        Assert.Empty(Csv.Read($"baked_on,{range.Column}", FormattableString.Invariant($"2026-10-01,{range.Low}"), FormattableString.Invariant($"2026-10-02,{high}")).Notices);
    });

    [Fact]
    public void Usual_ranges_lie_inside_those_that_the_columns_can_mean()
    {
        Assert.All(UsualRanges.OfColumns, range => Assert.True(
            range.Column.Low <= range.Low && range.Low < range.High && range.High <= range.Column.High));
        Assert.All(UsualRanges.OfRatios, range => Assert.True(
            range.Low <= range.UsualLow && range.UsualLow < range.UsualHigh && range.UsualHigh < range.High));
    }

    [Theory]
    [InlineData("salt_g", "50", "RATIO_SLIP", "salt_pct")]
    [InlineData("salt_g", "125.5", "RATIO_IMPOSSIBLE", "salt_pct")]
    [InlineData("sugar_g", "1000", "RATIO_SLIP", "sugar_pct")]
    [InlineData("fat_g", "600", "RATIO_SLIP", "fat_pct")]
    [InlineData("water_g", "3250", "RATIO_SLIP", "hydration_pct")]
    [InlineData("water_g", "100", "RATIO_IMPOSSIBLE", "hydration_pct")]
    public void Percentage_that_can_not_be_is_taken_out(string column, string cell, string code, string measure)
    {
        var journal = column == "water_g"
            ? Csv.Read("baked_on,flour_g,water_g", $"2026-10-01,500,{cell}")
            : Csv.Read($"baked_on,flour_g,water_g,{column}", $"2026-10-01,500,325,{cell}");

        Assert.Equal((code, Gravity.Unread), (journal.Notices.Single().Code, journal.Notices.Single().Gravity));
        Assert.Null(Measures.All.Single(each => each.Name == measure).Of(journal.Bakes.Single()));
        Assert.Equal(500, journal.Bakes.Single()[BakeColumns.Flour]);
    }

    [Theory]
    [InlineData("fresh", "30", false)]
    [InlineData("active_dry", "30", false)]
    [InlineData("instant", "26", true)]
    [InlineData("fresh", "61", true)]
    [InlineData("active_dry", "31", true)]
    public void Yeast_is_judged_by_its_kind(string kind, string grams, bool isTakenOut)
    {
        var bake = Csv.Bake("baked_on,flour_g,water_g,yeast_g,yeast_kind", $"2026-10-01,500,325,{grams},{kind}");

        Assert.Equal(isTakenOut, bake[BakeColumns.Yeast] is null);
    }

    [Fact]
    public void Salt_is_held_against_all_flour_that_of_the_preferment_too() =>
        Assert.Empty(Csv.Read("baked_on,flour_g,water_g,preferment_g,preferment_hydration_pct,salt_g", "2026-10-01,500,300,400,100,14").Notices);

    [Fact]
    public void Preferment_of_unknown_hydration_leaves_percentages_unjudged() =>
        Assert.Empty(Csv.Read("baked_on,flour_g,water_g,preferment_g,salt_g", "2026-10-01,100,300,400,14").Notices);

    [Fact]
    public void Loaves_heavier_than_the_dough_have_no_bake_loss()
    {
        var bake = Csv.Bake("baked_on,dough_g,loaf_g,loaf_volume_ml", "2026-10-01,700,725,2900");

        Assert.Null(Measures.BakeLoss.Of(bake));
        Assert.Equal(4, Measures.SpecificVolume.Of(bake));
    }

    [Fact]
    public void Look_that_found_it_not_ready_after_it_was_ready_is_taken_out_and_the_time_stays()
    {
        var bake = Csv.Bake("baked_on,rise_min,rise_not_ready_min", "2026-10-01,90,95");

        Assert.Equal((90, null), (bake[BakeColumns.Rise], bake[BakeColumns.RiseNotReady]));
    }

    [Fact]
    public void Rise_stopped_at_the_look_that_found_it_not_ready_is_no_fault() =>
        Assert.Empty(Csv.Read("baked_on,rise_min,rise_not_ready_min,rise_outcome", "2026-10-01,90,90,stopped").Notices);

    [Theory]
    [InlineData("22:00", "6:30", "510", "480")]
    [InlineData("22:00", "6:30", "", "480")]
    [InlineData("23:30", "1:00", "", "")]
    [InlineData("10:00", "11:30", "90", "")]
    public void Rise_past_midnight_is_no_fault(string mixed, string ready, string rise, string cold) => Assert.DoesNotContain(
        Csv.Read("baked_on,mixed_at,ready_at,rise_min,cold_min", $"2026-10-01,{mixed},{ready},{rise},{cold}").Notices,
        notice => notice.Gravity != Gravity.Noted);

    [Theory]
    [InlineData("dough_temp_f", "240")]
    [InlineData("dough_temp_c", "170 F")]
    [InlineData("dough_temp", "170 F")]
    public void Number_that_says_it_is_Fahrenheit_is_not_taken_for_a_mistaken_one(string header, string cell) =>
        Assert.Equal("OUT_OF_RANGE", Csv.Read($"baked_on,{header}", $"2026-10-01,{cell}").Notices.Single().Code);

    [Fact]
    public void Hot_water_that_made_a_warm_dough_is_hot_and_not_Fahrenheit() => Assert.Equal("WATER_HOT", Csv.Read(
        "baked_on,flour_g,flour_temp_c,water_g,water_temp_c,dough_temp_c", "2026-10-01,1000,5,650,50,30").Notices.Single().Code);

    [Fact]
    public void Dough_with_milk_is_not_held_against_the_heat_balance() => Assert.Empty(Csv.Read(
        "baked_on,flour_g,flour_temp_c,water_g,water_temp_c,dough_temp_c,milk_g", "2026-10-01,1000,20,500,35,20,200").Notices);
}
