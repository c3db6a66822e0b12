using Xunit;

namespace BakeInsights.Tests;

/// <summary>Rows that are not as long, as full or as well quoted as the header asks.</summary>
public class RowTests
{
    [Fact]
    public void Cells_beyond_the_header_are_not_read_and_the_row_stays()
    {
        var bake = Csv.Bake("bake_id,baked_on,notes", "a,2026-10-01,dark,crisp,13");

        Assert.Equal("dark", bake[BakeColumns.Notes]);
        Assert.Empty(bake.OwnColumns);
    }

    [Fact]
    public void Row_too_short_lacks_its_last_cells()
    {
        var journal = Csv.Read("bake_id,baked_on,flour_g,notes", "a,2026-10-01");

        Assert.Empty(journal.Notices);
        Assert.Null(journal.Bakes.Single()[BakeColumns.Flour]);
        Assert.Null(journal.Bakes.Single()[BakeColumns.Notes]);
    }

    [Theory]
    [InlineData(",,")]
    [InlineData(" , ,\t")]
    [InlineData("\"\",\"\",\"\"")]
    [InlineData("   ")]
    public void Row_with_nothing_in_it_is_counted_and_set_aside(string row)
    {
        var journal = Csv.Read("bake_id,baked_on,notes", row, "a,2026-10-01,");

        Assert.Equal((2, 1, 1), (journal.Rows, journal.Bakes.Count, journal.SetAside));
        Assert.Equal("ROW_EMPTY", journal.Notices.Single().Code);
    }

    [Fact]
    public void Line_with_nothing_on_it_is_no_row_but_counts_as_a_line()
    {
        var journal = Csv.Read("bake_id,baked_on", "", "a,2026-10-01", "", "", "b,2026-10-02");

        Assert.Equal(2, journal.Rows);
        Assert.Equal([3, 6], journal.Bakes.Select(bake => bake.Origin.Line));
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Unclosed_quote_ends_at_its_line_and_the_next_row_is_read(string newLine)
    {
        var journal = Csv.ReadText(string.Join(
            newLine,
            "bake_id,baked_on,notes", "a,2026-10-01,\"open", "b,2026-10-02,\"closed, well\"", "c,2026-10-03,\"open again",
            "d,2026-10-04,plain", ""));

        Assert.Equal(["b", "d"], journal.Bakes.Select(bake => bake.Id));
        Assert.Equal("closed, well", journal.Bakes[0][BakeColumns.Notes]);
        Assert.Equal(
            [(2L, "a,2026-10-01,\"open"), (4L, "c,2026-10-03,\"open again")],
            journal.Notices.Select(notice => (notice.Line, notice.Text)));
    }

    [Fact]
    public void Unclosed_quote_at_the_end_of_the_file_costs_only_its_row()
    {
        var journal = Csv.ReadText("bake_id,baked_on,notes\na,2026-10-01,x\nb,2026-10-02,\"open");

        Assert.Equal((2, 1), (journal.Rows, journal.Bakes.Count));
        Assert.Equal("QUOTE_UNCLOSED", journal.Notices.Single().Code);
    }

    [Theory]
    [InlineData("a 12\" tin", "a 12\" tin")]
    [InlineData("\"crisp\" crust", "crisp crust")]
    public void Stray_quote_is_doubted_and_the_row_stays(string cell, string read)
    {
        var journal = Csv.Read("bake_id,baked_on,notes", $"a,2026-10-01,{cell}", "b,2026-10-02,plain");

        Assert.Equal([read, "plain"], journal.Bakes.Select(bake => bake[BakeColumns.Notes]));
        Assert.Equal((2, "QUOTE_STRAY", Gravity.Doubted), Told(journal.Notices.Single()));
    }

    [Fact]
    public void Each_of_many_bad_lines_in_a_row_gets_its_own_notice()
    {
        var rows = Enumerable.Range(2, 500).Select(line => $"b{line},2026-10-01,{(line % 2 == 0 ? "\"open" : "12\" tin")}");

        var journal = Csv.Read(["bake_id,baked_on,notes", .. rows]);

        Assert.Equal(
            Enumerable.Range(2, 500).Select(line => ((long)line, line % 2 == 0 ? "QUOTE_UNCLOSED" : "QUOTE_STRAY")),
            journal.Notices.Select(notice => (notice.Line, notice.Code)));
        Assert.Equal((500, 250), (journal.Rows, journal.Bakes.Count));
    }

    [Fact]
    public void Row_without_a_name_is_named_for_its_line() => Assert.Equal(
        ["bakes:2", "mine", "bakes:4"],
        Csv.Read("bake_id,baked_on", ",2026-10-01", "mine,2026-10-01", " ,2026-10-01").Bakes.Select(bake => bake.Id));

    [Fact]
    public void Name_already_taken_by_an_unnamed_row_is_refused()
    {
        var journal = Csv.Read("bake_id,baked_on", ",2026-10-01", "bakes:2,2026-10-02");

        Assert.Equal(("BAKE_ID_TWICE", 3), (journal.Notices.Single().Code, journal.Notices.Single().Line));
    }

    [Fact]
    public void Row_that_was_refused_leaves_its_name_free()
    {
        var journal = Csv.Read("bake_id,baked_on", "a,soon", "a,2026-10-02");

        Assert.Equal(new DateOnly(2026, 10, 2), journal.Bakes.Single().BakedOn);
    }

    [Fact]
    public void Names_differ_by_letter_case() =>
        Assert.Equal(2, Csv.Read("bake_id,baked_on", "a,2026-10-01", "A,2026-10-01").Bakes.Count);

    [Theory]
    [InlineData("19:40", 1180)]
    [InlineData("7:05", 425)]
    [InlineData("07:05:30", 425.5)]
    [InlineData("0:00", 0)]
    [InlineData("23:59:59", 1439.9833)]
    [InlineData("7:40 pm", 1180)]
    [InlineData("7 pm", 1140)]
    public void Time_of_day_is_kept_in_minutes_after_midnight(string text, double minutes) =>
        Assert.Equal(minutes, Csv.Bake("baked_on,mixed_at", $"2026-10-01,{text}")[BakeColumns.MixedAt]!.Value, 1e-4);

    [Theory]
    [InlineData("24:00")]
    [InlineData("7.30")]
    [InlineData("12:60")]
    [InlineData("7:5")]
    public void Time_of_day_in_another_form_is_not_read(string text) =>
        Assert.Equal("TIME_UNREAD", Csv.Read("baked_on,mixed_at", $"2026-10-01,{text}").Notices.Single().Code);

    private static (long Line, string Code, Gravity Gravity) Told(Notice notice) => (notice.Line, notice.Code, notice.Gravity);
}
