using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class CanonicalCsvTests
{
    [Fact]
    public void Bakes_written_and_read_again_are_the_same_bakes() => RandomBakes.Any.Sample(bakes =>
    {
        var journal = Csv.ReadText(Csv.Canonical(bakes));

        Assert.Equal(bakes.Count, journal.Bakes.Count);
        Assert.All(bakes.Zip(journal.Bakes), pair => Same(pair.First, pair.Second, Lost(journal, pair.Second)));
    });

    [Fact]
    public void What_was_read_of_the_canonical_form_is_written_as_the_same_bytes() => RandomBakes.Any.Sample(bakes =>
    {
        var written = Csv.Canonical(Csv.ReadText(Csv.Canonical(bakes)).Bakes);

        return written == Csv.Canonical(Csv.ReadText(written).Bakes);
    });

    [Fact]
    public void Journal_in_kitchen_units_is_written_in_canonical_ones()
    {
        var journal = Csv.Read(
            "notes,dough_temp_f,flour_cups,flour_measure,rise_h,mixed_at,baked_on,lot,bake_id",
            "\"dark, crisp\",77,4,spooned,1.5,7:05,2026-10-01,,a",
            ",,,,0.25,19:40:30,2026-10-02,\"B \"\"2\"\"\",b");

        Assert.Equal(
            """"
            bake_id,baked_on,flour_g,flour_measure,dough_temp_c,mixed_at,rise_min,notes,lot
            a,2026-10-01,504,spooned,25,07:05,90,"dark, crisp",
            b,2026-10-02,,,,19:40:30,15,,"B ""2"""

            """",
            Csv.Canonical(journal.Bakes));
    }

    [Fact]
    public void Without_bakes_there_is_still_a_header_that_can_be_read()
    {
        Assert.Equal("bake_id,baked_on\n", Csv.Canonical([]));
        Assert.Empty(Csv.ReadText(Csv.Canonical([])).Notices);
    }

    [Theory]
    [InlineData("9:59:45", "09:59:45")]
    [InlineData("0:00", "00:00")]
    [InlineData("23:59:59", "23:59:59")]
    public void Time_of_day_is_written_to_the_second_where_it_was_so_noted(string text, string written) => Assert.Equal(
        $"bake_id,baked_on,mixed_at\na,2026-10-01,{written}\n",
        Csv.Canonical(Csv.Read("bake_id,baked_on,mixed_at", $"a,2026-10-01,{text}").Bakes));

    [Fact]
    public void Writer_is_left_open()
    {
        using var writer = new StringWriter();
        CanonicalCsv.Write(writer, []);
        writer.Write("after");

        Assert.EndsWith("after", writer.ToString(), StringComparison.Ordinal);
    }

    // Random values contradict each other, and the reader takes out what can't be; never without saying so.
    private static HashSet<string> Lost(Journal journal, Bake bake) =>
    [
        .. journal.Notices
            .Where(notice => notice.Gravity == Gravity.Unread && notice.Line == bake.Origin.Line)
            .Select(notice => notice.Column),
    ];

    private static void Same(Bake one, Bake other, HashSet<string> lost)
    {
        Assert.Equal((one.Id, one.BakedOn), (other.Id, other.BakedOn));
        Assert.All(
            BakeColumns.All.OfType<QuantityColumn>(),
            column => Assert.Equal(lost.Contains(column.Name) ? null : one[column], other[column]));
        Assert.All(BakeColumns.All.OfType<ChoiceColumn>(), column => Assert.Equal(one[column], other[column]));
        Assert.All(BakeColumns.All.OfType<TextColumn>(), column => Assert.Equal(one[column], other[column]));
        Assert.Equal(one.OwnColumns, other.OwnColumns);
    }
}
