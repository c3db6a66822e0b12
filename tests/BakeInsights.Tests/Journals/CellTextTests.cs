using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Texts that a spreadsheet would run, written so that it does not, and read as they were.</summary>
public class CellTextTests
{
    // Texts that a person with bad intent, or none, may log.
    private static readonly Gen<string> Hostile = Gen
        .OneOf("=", "+", "-", "@", "\t", "'", "\"", ",", ";", "＝", "1", "5.5", "e3", "cmd|' /C calc'!A0", "HYPERLINK(", "x", " ", "é")
        .Array[1, 8].Select(string.Concat);

    [Theory]
    [InlineData("=1+2", "'=1+2")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("+see below", "'+see below")]
    [InlineData("- no steam", "'- no steam")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("＝1", "'＝1")]
    [InlineData("'=1", "''=1")]
    [InlineData("''@x", "'''@x")]
    public void Text_that_a_spreadsheet_would_run_is_marked(string text, string cell) =>
        Assert.Equal($"bake_id,baked_on,notes\na,2026-10-01,{cell}\n", Written(draft => draft.Set(BakeColumns.Notes, text)));

    [Theory]
    [InlineData("fine = good")]
    [InlineData("'tis done")]
    [InlineData("'")]
    [InlineData("-5")]
    [InlineData("+1.5")]
    [InlineData("-1.5E-05")]
    [InlineData("'-5")]
    public void Other_text_and_numbers_stay_as_they_are(string text) =>
        Assert.Equal($"bake_id,baked_on,notes\na,2026-10-01,{text}\n", Written(draft => draft.Set(BakeColumns.Notes, text)));

    [Fact]
    public void Negative_temperature_is_written_as_a_number() =>
        Assert.Equal("bake_id,baked_on,room_temp_c\na,2026-10-01,-4.5\n", Written(draft => draft.Set(BakeColumns.RoomTemp, -4.5)));

    [Fact]
    public void Names_of_bakes_and_of_own_columns_are_marked_too()
    {
        var written = Csv.Canonical([new BakeDraft("=a", Day).Keep("@mine", "=1").Finish(Nowhere)]);

        Assert.Equal("bake_id,baked_on,'@mine\n'=a,2026-10-01,'=1\n", written);
        var bake = Csv.ReadText(written).Bakes.Single();
        Assert.Equal(("=a", "=1"), (bake.Id, bake.OwnColumns["@mine"]));
    }

    [Fact]
    public void Two_bakes_whose_names_differ_by_the_mark_alone_are_one() => Assert.Equal(
        ["BAKE_ID_TWICE"],
        Csv.Read("bake_id,baked_on", "=a,2026-10-01", "'=a,2026-10-02").Notices.Select(notice => notice.Code));

    [Fact]
    public void Hostile_texts_come_back_as_they_were_and_none_begins_a_cell_as_a_formula() =>
        Gen.Select(Hostile, Hostile).Sample((text, id) =>
        {
            var bake = new BakeDraft("n" + id, Day).Set(BakeColumns.Notes, text).Keep("my " + id, text).Finish(Nowhere);
            var written = Csv.Canonical([bake]);
            var again = Csv.ReadText(written).Bakes.Single();

            Assert.Equal((bake.Id, bake[BakeColumns.Notes]), (again.Id, again[BakeColumns.Notes]));
            Assert.Equal(bake.OwnColumns, again.OwnColumns);
            var cell = CellText.Marked(text);
            Assert.Equal(text, CellText.Unmarked(cell));
            Assert.True("=+-@\t＝".IndexOf(cell[0], StringComparison.Ordinal) < 0 || double.TryParse(cell.Replace(',', '.'), out _));
        });

    [Theory]
    [InlineData("one\ntwo")]
    [InlineData("one\rtwo")]
    [InlineData("one\0two")]
    public void Text_of_more_than_one_line_is_a_programming_error(string text)
    {
        var failure = Assert.Throws<ArgumentException>(() => new BakeDraft("a", Day).Set(BakeColumns.Notes, text));

        Assert.StartsWith("A cell holds one line of text: write line breaks as blanks.", failure.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new BakeDraft("a", Day).Keep("mine", text));
        Assert.Throws<ArgumentException>(() => new BakeDraft("a", Day).Keep(text, "fine"));
        Assert.Throws<ArgumentException>(() => new BakeDraft(text, Day));
    }

    [Fact]
    public void Half_a_character_is_a_programming_error() =>
        Assert.Throws<ArgumentException>(() => new BakeDraft("a", Day).Set(BakeColumns.Notes, "burnt \ud83e"));

    private static DateOnly Day => new(2026, 10, 1);

    private static SourceLine Nowhere => new("made.csv", 2);

    private static string Written(Action<BakeDraft> set)
    {
        var draft = new BakeDraft("a", Day);
        set(draft);
        return Csv.Canonical([draft.Finish(Nowhere)]);
    }
}
