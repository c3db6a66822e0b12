using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>What is remarked only where a journal is long.</summary>
public class LongJournalNoticeTests
{
    /// <summary>Of the row after a million bakes.</summary>
    public static Notice Neighbours { get; } = new(
        "bakes.csv", 1_000_002, "bake_id", "BAKE_ID_NEIGHBOURS", Gravity.Noted, "1000000",
        "1000000 bakes have gone before; from here on a bake_id is compared with that of the row before only.",
        "Nothing, if the rows are sorted by bake_id; otherwise sort them, so that a bake_id that comes twice is found.");

    /// <summary>Of a file beside more bakes than are kept.</summary>
    public static Notice PassedOver { get; } = new(
        "loaves.csv", 1, "", "FILE_PASSED_OVER", Gravity.Noted, "",
        "This file was not read: the journal has more than 50000 bakes.",
        "Nothing, if it is not needed; otherwise part the journal into folders of fewer bakes, such as one for each year.");

    [Fact]
    public void Past_a_million_bakes_repeats_are_found_beside_each_other_only_and_that_is_said()
    {
        using var folder = new TemporaryFolder();
        Write(folder, 1_000_001, "1000000,2026-10-01", "7,2026-10-01");

        var reading = JournalReading.Of(folder.Path);

        var twice = new Notice(
            "bakes.csv", 1_000_003, "bake_id", "BAKE_ID_TWICE", Gravity.Refused, "1000000",
            "This bake_id is already that of bakes.csv, line 1000002; the first stays.",
            "Give each bake a bake_id of its own, or delete the copy.");
        Assert.Equal([Neighbours, twice], reading.Notices);
        Assert.Equal(1_000_003, reading.Rows);
    }

    [Fact]
    public void Up_to_a_million_bakes_every_repeat_is_found_in_any_file()
    {
        using var folder = new TemporaryFolder();
        Write(folder, 999_990, "7,2026-10-01", "1000000,2026-10-01");
        folder.Write("bakes-2.csv", "bake_id,baked_on\n");
        folder.Write("bakes-1.csv", "bake_id,baked_on\n\nx,2026-10-01\n8,2026-10-01\n");

        var reading = JournalReading.Of(folder.Path);

        Assert.Equal(
            [
                ("bakes.csv", 10, "This bake_id is already that of bakes-1.csv, line 4; the first stays."),
                ("bakes.csv", 999_992, "This bake_id is already that of bakes.csv, line 9; the first stays."),
            ],
            reading.Notices.Select(notice => (notice.File, notice.Line, notice.Message)));
    }

    [Theory]
    [InlineData(50_000, false)]
    [InlineData(50_001, true)]
    public void Files_beside_more_bakes_than_are_kept_are_said_to_be_passed_over(int bakes, bool isLong)
    {
        using var folder = new TemporaryFolder();
        Write(folder, bakes);
        folder.Write("loaves.csv", "bake_id,loaf\n");
        folder.Write("cups.csv", "measurer,ingredient,method,cup,mass_g\nDov,flour,scooped,1,150\n");

        IReadOnlyList<Notice> expected = isLong ? [PassedOver] : [];

        Assert.Equal(expected, JournalReading.Of(folder.Path).Notices);
        Assert.Equal(expected, JournalFit.Of(folder.Path).Reading.Notices);
        Assert.Equal(
            expected.Select(notice => notice with { Text = "(not shown)" }), JournalFit.Of(folder.Path, hidesNames: true).Reading.Notices);
    }

    private static void Write(TemporaryFolder folder, int bakes, params string[] last)
    {
        var text = new StringBuilder("bake_id,baked_on\n");
        for (var i = 0; i < bakes; i++)
        {
            text.Append(i).Append(",2026-10-01\n");
        }

        folder.Write("bakes.csv", text.AppendJoin('\n', last).Append('\n').ToString());
    }
}
