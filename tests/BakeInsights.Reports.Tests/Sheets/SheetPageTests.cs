using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

public sealed partial class SheetPageTests : IDisposable
{
    private const string Hostile = "<script>alert(1)</script>\"><img src=x onerror=y>'&";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Journals_text_is_never_markup()
    {
        var quoted = "\"" + Hostile.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
        var file = _folder.Write(
            "bakes.csv", $"baked_on,formula,flour_kind,flour_g,water_g,salt_g,{quoted}\n2026-10-05,{quoted},{quoted},1000,650,20,{quoted}\n");
        var html = Page(
            Sheets.Of(Journal.Read(file), BakeForm.Open(file), new() { Formula = Hostile, Bakes = [new() { Name = Hostile }] }, UnitSystem.Us).Value,
            Paper.Letter);

        // Its own tags only: not one of the hostile name's.
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.True(html.Split("&lt;script&gt;alert(1)&lt;/script&gt;").Length > 4, html);
        Assert.All(Tags().Matches(html), tag => Assert.DoesNotContain("onerror", tag.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Page_lets_nothing_in_from_outside()
    {
        var html = Page(Demo(), Paper.A4);
        Assert.Contains(
            "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'\">",
            html, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)https?:|url\\(|@import|<link|<script|<iframe|src=|href=", html);
    }

    [Theory]
    [InlineData(Paper.A4, "@page { size: A4; margin: 10mm }")]
    [InlineData(Paper.Letter, "@page { size: letter; margin: 10mm }")]
    public void Page_names_its_paper(Paper paper, string rule) => Assert.Contains(rule, Page(Demo(), paper), StringComparison.Ordinal);

    [Fact]
    public void Same_sheets_give_the_same_bytes_in_every_culture() =>
        Assert.Equal(Page(Demo(), Paper.A4), InCulture.Run("tr-TR", () => Page(Demo(), Paper.A4)));

    [Fact]
    public void Letters_get_smaller_with_more_columns_and_stay_on_the_page()
    {
        var all = _folder.Write("all.csv", string.Join(',', BakeColumns.All.Select(column => column.Name)) + "\n");
        var sheets = Demo();
        var many = sheets[0] with { Blanks = SheetBlank.Of(BakeForm.Open(all), UnitSystem.Metric, new Dictionary<JournalColumn, string>()) };
        var (usual, tight) = (SheetScale.Of(sheets[0], Paper.Letter, UnitSystem.Metric), SheetScale.Of(many, Paper.Letter, UnitSystem.Metric));
        Assert.True(tight.Points < usual.Points);
        Assert.True(SheetScale.Of(many, Paper.A4, UnitSystem.Metric).Points > tight.Points);
        Assert.True(tight.Points >= 5);
    }

    [Fact]
    public void Timetable_is_a_table_with_its_spreads()
    {
        var day = new BakingDay(new Duration(90, 70, 115), new Duration(45, 35, 60), Duration.Exactly(36));
        Approved.Matches("tests/BakeInsights.Reports.Tests/Approved/timetable-us.txt", TimetableView.Of(Timetable.From(day, new TimeOnly(8, 0)), UnitSystem.Us).ToText());
    }

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    private static IReadOnlyList<Sheet> Demo()
    {
        var path = Repository.Path("data-demo/millpond-lane");
        return Sheets.Of(Journal.Read(path), BakeForm.Open(path), new() { FinishBy = new(13, 0) }, UnitSystem.Metric).Value;
    }

    private static string Page(IReadOnlyList<Sheet> sheets, Paper paper)
    {
        using var writer = new StringWriter(System.Globalization.CultureInfo.InvariantCulture);
        SheetPage.Write(sheets, paper, UnitSystem.Metric, writer);
        return writer.ToString();
    }
}
