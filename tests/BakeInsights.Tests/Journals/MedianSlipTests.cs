using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Values ten times too large or too small for the journal that they stand in.</summary>
public class MedianSlipTests
{
    private const string Code = "DECIMAL_SLIP_POSSIBLE";

    [Theory]
    [InlineData("proof_min", "20", "200")]
    [InlineData("mix_min", "80", "8")]
    [InlineData("mix_min", "0.08", "8")]
    [InlineData("rise_temp_c", "2.6", "26")]
    public void One_value_a_moved_point_away_from_the_median_is_doubted_and_kept(string column, string odd, string usual)
    {
        var journal = Read($"bake_id,baked_on,{column}", [odd, .. Enumerable.Repeat(usual, 7)]);

        var notice = Assert.Single(journal.Notices, notice => notice.Code == Code);
        Assert.Equal((2, column, odd, Gravity.Doubted), (notice.Line, notice.Column, notice.Text, notice.Gravity));
        Assert.Equal(8, journal.Bakes.Count);
    }

    [Fact]
    public void It_takes_eight_values()
    {
        Assert.Empty(Read("bake_id,baked_on,mix_min", ["80", .. Enumerable.Repeat("8", 6)]).Notices);
        Assert.Single(Read("bake_id,baked_on,mix_min", ["80", .. Enumerable.Repeat("8", 7)]).Notices);
    }

    [Fact]
    public void Two_of_a_few_bakes_alike_are_a_way_of_working() =>
        Assert.Empty(Read("bake_id,baked_on,mix_min", ["80", "78", .. Enumerable.Repeat("8", 30)]).Notices);

    [Fact]
    public void Two_of_a_hundred_bakes_are_slips() =>
        Assert.Equal(2, Read("bake_id,baked_on,mix_min", ["80", "78", .. Enumerable.Repeat("8", 98)]).Notices.Count);

    [Fact]
    public void A_column_that_varies_much_says_nothing_of_one_value() =>
        Assert.Empty(Read("bake_id,baked_on,mix_min", ["60", "1", "2", "3", "6", "9", "14", "20", "30"]).Notices);

    [Fact]
    public void A_value_far_off_that_no_moved_point_brings_back_is_left_alone() =>
        Assert.Empty(Read("bake_id,baked_on,mix_min", ["40", .. Enumerable.Repeat("8", 9)]).Notices);

    [Fact]
    public void A_batch_ten_times_as_large_is_no_slip() => Assert.Empty(Read(
        "bake_id,baked_on,flour_g,water_g,salt_g", ["5000,3250,100", .. Enumerable.Repeat("500,325,10", 9)]).Notices);

    [Theory]
    [InlineData("rise_min,cold_min", "900,800", "90,")]
    [InlineData("yeast_g,yeast_kind,flour_g,preferment_g,preferment_hydration_pct", "0.6,instant,1000,400,100", "6,instant,1000,,")]
    public void Cold_hours_and_preferments_change_time_and_yeast_tenfold_by_intent(string columns, string one, string others) =>
        Assert.DoesNotContain(
            Read($"bake_id,baked_on,{columns}", [one, .. Enumerable.Repeat(others, 9)]).Notices, notice => notice.Code == Code);

    [Fact]
    public void It_stands_in_the_place_of_a_doubt_that_names_no_cause_with_the_cell_as_written()
    {
        var journal = Read("bake_id,baked_on,Bulk_h", ["16", .. Enumerable.Repeat("1.5", 7)]);

        Assert.Equal(
            new Notice(
                "bakes.csv", 2, "Bulk_h", Code, Gravity.Doubted, "16",
                "960 min is far from the journal's median, 90 min; with the decimal point moved it would be 96 min.",
                "Correct the decimal point; nothing to do if it is so."),
            journal.Notices.Single(notice => notice.Line == 2));
        Assert.False(journal.Reading.NoticeCounts.ContainsKey("RISE_LONG"));
    }

    [Fact]
    public void Demo_journals_raise_no_false_alarm()
    {
        var demo = new DirectoryInfo(Repository.Path("data-demo/messy")).GetFiles("*.csv").Select(file => file.FullName)
            .Append(Repository.Path("data-demo/millpond-lane"))
            .Where(path => !path.EndsWith("no-header.csv", StringComparison.Ordinal) && !path.EndsWith("workbook-named-csv.csv", StringComparison.Ordinal));

        Assert.All(demo, path => Assert.DoesNotContain(Journal.Read(path).Notices, notice => notice.Code == Code));
    }

    private static Journal Read(string header, IEnumerable<string> cells) =>
        Csv.Read([header, .. cells.Select((each, place) => $"b{place},2026-10-01,{each}")]);
}
