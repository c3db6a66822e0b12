using Xunit;

namespace BakeInsights.Tests;

public class JournalMonthTests
{
    private static readonly Journal Autumn = Csv.Read(
        "bake_id,baked_on", "a,2026-11-02", "b,2026-10-31", "c,2026-10-01", "d,2025-10-15", "e,2026-10-31");

    [Fact]
    public void Months_are_those_with_bakes_in_order() => Assert.Equal(["2025-10", "2026-10", "2026-11"], Autumn.Months);

    [Fact]
    public void Bakes_of_a_month_stand_by_day_and_within_a_day_as_written() =>
        Assert.Equal(["c", "b", "e"], Autumn.BakesOfMonth("2026-10").Select(bake => bake.Id));

    [Fact]
    public void Empty_month_means_the_last_of_the_journal() =>
        Assert.Equal(["a"], Autumn.BakesOfMonth("").Select(bake => bake.Id));

    [Fact]
    public void Month_without_bakes_is_refused_with_those_there_are()
    {
        var failure = Assert.Throws<ArgumentException>(() => Autumn.BakesOfMonth("2026-12"));

        Assert.StartsWith(
            "The journal bakes.csv has no bakes in '2026-12'; it has 2025-10, 2026-10, 2026-11.",
            failure.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Journal_without_bakes_has_no_month_to_give()
    {
        var failure = Assert.Throws<ArgumentException>(() => Csv.Read("baked_on").BakesOfMonth(""));

        Assert.StartsWith("The journal bakes.csv has no bakes yet.", failure.Message, StringComparison.Ordinal);
    }
}
