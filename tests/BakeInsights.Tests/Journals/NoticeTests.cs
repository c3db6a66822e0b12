using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public partial class NoticeTests
{
    public static TheoryData<int, string> Cases
    {
        get
        {
            var data = new TheoryData<int, string>();
            foreach (var (index, each) in NoticeCases.All.Index())
            {
                data.Add(index, each.Expected.Code);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void One_thing_wrong_leaves_one_notice_with_place_words_and_remedy(int index, string code)
    {
        var each = NoticeCases.All[index];

        var journal = each.Read();

        Assert.Equal(each.Expected, Assert.Single(journal.Notices));
        Assert.Equal(code, each.Expected.Code);
        Assert.Equal(each.Bakes, journal.Bakes.Count);
        Assert.Equal(each.Lines.Length - 1, journal.Rows);
    }

    [Fact]
    public void Every_code_of_the_reader_has_a_case()
    {
        var source = File.ReadAllText(Repository.Path("src/BakeInsights/Journals/Notices.cs"));
        var codes = Code().Matches(source).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal);

        Assert.Equal(codes, NoticeCases.AllExpected.Select(expected => expected.Code).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Row_is_set_aside_exactly_when_a_notice_refuses_it() => Assert.All(NoticeCases.All, each =>
    {
        var journal = each.Read();

        Assert.All(journal.Files, file => Assert.Equal(
            file.SetAside, journal.Notices.Count(notice => notice.File == file.Name && notice.Gravity == Gravity.Refused)));
        Assert.Equal(journal.SetAside, journal.Files.Where(file => file.Kind == JournalFileKind.Bakes).Sum(file => file.SetAside));
    });

    [Fact]
    public void Cell_that_was_not_read_counts_as_missing_and_costs_only_itself()
    {
        var bake = Csv.Bake("baked_on,flour_g,water_g,yeast_kind,salt_g", "2026-10-01,500,lots,wild,10");

        Assert.Null(bake[BakeColumns.Water]);
        Assert.Null(bake.YeastKind);
        Assert.Equal(500, bake[BakeColumns.Flour]);
        Assert.Equal(10, bake[BakeColumns.Salt]);
    }

    [Fact]
    public void Notices_stand_in_the_order_of_the_lines()
    {
        var journal = Csv.Read(
            "bake_id,baked_on,flour_g,mine", "a,2026-10-01,x,", ",,,", "b,2026-10-02,y,", "b,2026-10-02,500,", "c,soon,500,");

        Assert.Equal([1, 2, 3, 4, 5, 6], journal.Notices.Select(notice => notice.Line));
    }

    [Theory]
    [InlineData("2026-02-30")]
    [InlineData("2026-13-01")]
    [InlineData("20261301")]
    [InlineData("31-02-2026")]
    [InlineData("31/13/2026")]
    [InlineData("1/1/2026/1")]
    [InlineData("2026-10/01")]
    [InlineData("2026-10-01 08:00")]
    [InlineData("yesterday")]
    [InlineData("46296")]
    public void Day_in_another_form_refuses_its_row(string text)
    {
        var journal = Csv.Read("bake_id,baked_on", $"a,{text}");

        Assert.Equal(("DATE_UNREAD", text), (journal.Notices.Single().Code, journal.Notices.Single().Text));
        Assert.Equal(1, journal.SetAside);
    }

    [GeneratedRegex("\"([A-Z]+(?:_[A-Z]+)+)\"")]
    private static partial Regex Code();
}
