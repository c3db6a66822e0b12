using System.Text;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Encodings, separators and decimal marks, found from the file as a whole.</summary>
public class FileFormTests
{
    private const string Table =
        """
        bake_id,baked_on,flour_kind,flour_g,dough_temp_c,notes
        a,2026-10-01,épeautre,500.5,24.5,"crème, 76 °F"
        b,2026-10-02,rye,1250,24,

        """;

    public static TheoryData<string, byte[], string?> Encodings => new()
    {
        { Table, [], null },
        { Table, [0xEF, 0xBB, 0xBF], null },
        { Table, [0xFF, 0xFE], "UTF-16 (low byte first)" },
        { Table, [0xFE, 0xFF], "UTF-16 (high byte first)" },
        { Table, [1], "UTF-16 (low byte first)" },
        { Table, [2], "UTF-16 (high byte first)" },
        { Table, [3], "Windows-1252" },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Encoding_is_found_with_or_without_a_mark(string table, byte[] mark, string? name)
    {
        var encoding = mark switch
        {
            [0xFF, 0xFE] or [1] => Encoding.Unicode,
            [0xFE, 0xFF] or [2] => Encoding.BigEndianUnicode,
            [3] => FileEncoding.Windows1252,
            _ => Encoding.UTF8,
        };

        var journal = Csv.ReadBytes([.. mark.Length > 1 ? mark : [], .. encoding.GetBytes(table)]);

        Assert.Equal(Csv.Canonical(Csv.ReadText(table).Bakes), Csv.Canonical(journal.Bakes));
        Assert.Equal([2, 3], journal.Bakes.Select(bake => bake.Origin.Line));
        Assert.Equal(name is null ? [] : [$"The text is in {name}."], journal.Notices.Select(notice => notice.Message));
    }

    [Fact]
    public void Letter_of_several_bytes_may_lie_across_any_place_of_the_file()
    {
        foreach (var blanks in Enumerable.Range(65_500, 40))
        {
            var journal = Csv.ReadText("bake_id,baked_on,notes\n" + new string('x', blanks) + ",2026-10-01,漢🥖é\n");

            Assert.Equal("漢🥖é", journal.Bakes.Single()[BakeColumns.Notes]);
            Assert.Empty(journal.Notices);
        }
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    [InlineData('|')]
    [InlineData(',')]
    public void Separator_is_the_one_under_which_the_header_names_most_columns(char separator)
    {
        var journal = Csv.ReadText(
            "bake_id,baked_on,\"my, own; column|with\tall\",notes\na,2026-10-01,x,y\n".Replace(",", $"{separator}")
                .Replace("my" + separator, "my,", StringComparison.Ordinal));

        Assert.Equal(("a", "y"), (journal.Bakes.Single().Id, journal.Bakes.Single()[BakeColumns.Notes]));
        Assert.Equal("my, own; column|with\tall", journal.Bakes.Single().OwnColumns.Keys.Single());
    }

    [Theory]
    [InlineData("sep=;\nbake_id;baked_on\na;2026-10-01\n", 3)]
    [InlineData("\"sep=;\"\r\nbake_id;baked_on\r\na;2026-10-01\r\n", 3)]
    [InlineData("SEP=,\nbake_id,baked_on\na,2026-10-01\n", 3)]
    [InlineData("\uFEFFsep=\t\n\nbake_id\tbaked_on\na\t2026-10-01\n", 4)]
    [InlineData("sep=:\nbake_id,baked_on\na,2026-10-01\n", 3)]
    public void Line_that_spreadsheets_write_before_the_header_is_understood(string text, int line)
    {
        var journal = Csv.ReadText(text);

        Assert.Equal((1, "a", line), (journal.Rows, journal.Bakes.Single().Id, (int)journal.Bakes.Single().Origin.Line));
    }

    [Fact]
    public void Separator_line_alone_is_no_table_of_bakes() =>
        Assert.Throws<JournalFileException>(() => Csv.ReadText("sep=;\n"));

    [Theory]
    [InlineData("1,250", "24.5", 1250)]
    [InlineData("1,250", "24,5", 1.25)]
    [InlineData("1.250", "24,5", 1250)]
    [InlineData("1.250", "24.5", 1.25)]
    [InlineData("1.250", "24", 1.25)]
    [InlineData("1250", "24,5", 1250)]
    public void Number_that_could_be_either_goes_by_the_other_cells(string water, string temperature, double grams)
    {
        var journal = Csv.Read(
            "bake_id,baked_on,water_g,dough_temp_c", $"a,2026-10-01,\"{water}\",24", $"b,2026-10-02,,\"{temperature}\"");

        Assert.Equal(grams, journal.Bakes[0][BakeColumns.Water]);
    }

    [Theory]
    [InlineData("1,250", "24")]
    [InlineData("1,250", "24,5\",\"24.5")]
    [InlineData("1.250", "24,5\",\"24.5")]
    public void Number_that_the_other_cells_do_not_decide_is_not_read(string water, string temperatures)
    {
        var journal = Csv.Read(
            "bake_id,baked_on,water_g,dough_temp_c,room_temp_c", $"a,2026-10-01,\"{water}\",,", $"b,2026-10-02,,\"{temperatures}\"");

        Assert.Null(journal.Bakes[0][BakeColumns.Water]);
        Assert.Contains(journal.Notices, notice => notice.Code == "NUMBER_EITHER");
    }

    [Theory]
    [InlineData("03/04/2026", "31/10/2026", "2026-04-03")]
    [InlineData("03/04/2026", "10/31/2026", "2026-03-04")]
    [InlineData("3.4.2026", "31.10.2026", "2026-04-03")]
    [InlineData("3-4-2026", "31-10-2026", "2026-04-03")]
    [InlineData("05/05/2026", "2026-01-01", "2026-05-05")]
    [InlineData("31/10/2026", "2026-01-01", "2026-10-31")]
    [InlineData("2026/10/31", "2026-01-01", "2026-10-31")]
    [InlineData("2026.10.31", "2026-01-01", "2026-10-31")]
    [InlineData("20261031", "2026-01-01", "2026-10-31")]
    [InlineData("2026-1-5", "2026-01-01", "2026-01-05")]
    [InlineData("2026-10-31", "2026-01-01", "2026-10-31")]
    public void Day_that_could_be_either_goes_by_the_other_days(string text, string other, string day)
    {
        var journal = Csv.Read("bake_id,baked_on", $"a,{text}", $"b,{other}");

        Assert.Equal(DateOnly.ParseExact(day, "yyyy-MM-dd", null), journal.Bakes[0].BakedOn);
    }

    [Fact]
    public void Where_days_contradict_each_other_only_those_that_can_be_one_are_read()
    {
        var journal = Csv.Read("bake_id,baked_on", "a,03/04/2026", "b,31/10/2026", "c,10/31/2026");

        Assert.Equal(["b", "c"], journal.Bakes.Select(bake => bake.Id));
        Assert.Equal("DATE_EITHER", journal.Notices.Single().Code);
    }
}
