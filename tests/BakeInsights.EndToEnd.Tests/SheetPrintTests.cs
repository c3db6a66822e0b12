using System.Globalization;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>Sheets as they come out of a printer: one page each on its paper, with all that they say.</summary>
public sealed partial class SheetPrintTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int PhoneWidth = 390;

    // The page's own margin of 10 mm is 28 points; no word may reach into it.
    private const double MarginPt = 27;

    private static readonly string[] Benches =
    [
        "--bake", "window bench: dough_temp=78F", "--bake", "middle bench: yeast=1",
        "--bake", "door bench: hydration=72, salt=1.8", "--bake", "oven bench: dough_temp=70F, sugar=3",
    ];

    // In points: 210 x 297 mm, and 8.5 x 11 inches.
    private static readonly Dictionary<string, (double Width, double Height)> Sizes = new() { ["a4"] = (595.3, 841.9), ["letter"] = (612, 792) };

    [Theory]
    [InlineData("a4", "metric")]
    [InlineData("letter", "metric")]
    [InlineData("a4", "us")]
    [InlineData("letter", "us")]
    public async Task One_bake_is_one_page_with_all_that_it_says(string paper, string units)
    {
        var pages = await PrintAsync(
            $"one-{paper}-{units}", "data-demo/millpond-lane", paper, units, "--start", "9:00", "--finish-by", "14:00", "--cups", "scooped");
        AssertHasAll(Assert.Single(pages), units, "does not fit", "More yeast", "crumb_score");
    }

    [Theory]
    [InlineData("a4", "metric")]
    [InlineData("letter", "us")]
    public async Task Class_of_four_benches_is_four_pages(string paper, string units)
    {
        string[] wishes = ["--finish-by", "13:00", "--cups", "spooned", .. Benches];
        var pages = await PrintAsync($"class-{paper}-{units}", "data-demo/osier-yard", paper, units, wishes);
        Assert.Equal(["window bench", "middle bench", "door bench", "oven bench"], pages.Select(page => page.Split('\n')[0].Trim()));
        Assert.All(pages, page => AssertHasAll(page, units, "group"));
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public async Task Journal_with_every_column_and_a_rich_dough_is_still_one_page(string paper)
    {
        string[] logged =
        [
            "flour_g", "water_g", "salt_g", "yeast_g", "yeast_kind", "sugar_g", "fat_g", "milk_g", "egg_g", "honey_g", "preferment_g", "preferment_hydration_pct", "rise_min",
        ];
        const string values = "1000,300,20,10,instant,40,50,200,50,20,200,100,95";
        var all = await File.ReadAllLinesAsync(Repository.Path("docs/columns.md"));
        var names = all.TakeWhile(line => !line.StartsWith("## loaves", StringComparison.Ordinal))
            .Select(line => ColumnLine().Match(line)).Where(match => match.Success).Select(match => match.Groups[1].Value)
            .Where(name => name != "baked_on" && !logged.Contains(name)).ToList();
        Assert.True(names.Count > 30, string.Join(' ', names));
        var journal = browser.Folder.Write(
            $"all-{paper}.csv", $"baked_on,{string.Join(',', logged)},{string.Join(',', names)}\n2026-10-05,{values}{new string(',', names.Count)}\n");
        var pages = await PrintAsync(
            $"all-{paper}", journal, paper, "us", "--start", "9:00", "--finish-by", "13:00", "--cups", "scooped", "--taps", "55F,70F", "--ice", "0",
            "--bake", "a bench with a long name, next to the window at the far end: dough_temp=84F");
        AssertHasAll(Assert.Single(pages), "us", "notes", "preferment_temp", "Long warm rise");
    }

    [Fact]
    public async Task Sheet_is_quiet_in_a_browser_and_fits_a_phone()
    {
        var path = await WriteAsync("phone", "data-demo/osier-yard", "letter", "us", ["--cups", "spooned", "--finish-by", "13:00"]);
        await using var opened = await browser.OpenAsync(path, PhoneWidth);
        opened.AssertQuietAndAlone();
        var width = await opened.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
        Assert.True(width <= PhoneWidth, $"The page is {width} pixels wide.");
    }

    private static void AssertHasAll(string page, string units, params string[] more)
    {
        string[] everywhere =
        [
            "% of flour", "Water at", "Draw", "Look at", "Switch the oven on", "Cut", "Early (before", "Late (not ready", "baked_on",
            "Raw flour and dough", "Allergens", "Burns and steam", "Cutting before cooling", "Your local food code", units == "us" ? "°F" : "°C",
        ];
        Assert.All(everywhere.Concat(more), words => Assert.Contains(words, Plain(page), StringComparison.Ordinal));
    }

    // Lines break anywhere between words.
    private static string Plain(string text) => Blanks().Replace(text, " ");

    private async Task<string> WriteAsync(string name, string journal, string paper, string units, string[] wishes)
    {
        var target = browser.Folder.File(name + ".html");
        var from = File.Exists(journal) ? journal : Repository.Path(journal);
        var run = await BakeCommand.RunAsync(
            browser.Folder.Path, ["sheet", from, "--paper", paper, "--units", units, "--to", target, .. wishes]);
        Assert.True(run.ExitCode == 0, run.Errors);
        return target;
    }

    // As a printer gets it: the paper is the page's own wish. Gives the text of each page, in the order of reading.
    private async Task<string[]> PrintAsync(string name, string journal, string paper, string units, params string[] wishes)
    {
        await using var opened = await browser.OpenAsync(await WriteAsync(name, journal, paper, units, wishes));
        var pdf = browser.Folder.File(name + ".pdf");
        await opened.Page.PdfAsync(new() { Path = pdf, PreferCSSPageSize = true });
        var info = await Started.RunAsync("/usr/bin/pdfinfo", [pdf], browser.Folder.Path);
        var size = PageSize().Match(info.Output);
        Assert.True(size.Success, info.Output + info.Errors);
        Assert.Equal(Sizes[paper].Width, double.Parse(size.Groups[1].Value, CultureInfo.InvariantCulture), 1.0);
        Assert.Equal(Sizes[paper].Height, double.Parse(size.Groups[2].Value, CultureInfo.InvariantCulture), 1.0);
        var boxes = await Started.RunAsync("/usr/bin/pdftotext", ["-bbox", pdf, "-"], browser.Folder.Path);
        Assert.All(Word().Matches(boxes.Output), word =>
        {
            double Edge(int group) => double.Parse(word.Groups[group].Value, CultureInfo.InvariantCulture);
            Assert.True(Edge(1) >= MarginPt && Edge(3) <= Sizes[paper].Width - MarginPt && Edge(4) <= Sizes[paper].Height - MarginPt, word.Value);
        });
        var text = await Started.RunAsync("/usr/bin/pdftotext", [pdf, "-"], browser.Folder.Path);
        return text.Output.Split('\f', StringSplitOptions.RemoveEmptyEntries);
    }

    [GeneratedRegex(@"^\| `([a-z_]+)`")]
    private static partial Regex ColumnLine();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex("<word xMin=\"(.*?)\" yMin=\"(.*?)\" xMax=\"(.*?)\" yMax=\"(.*?)\">.*?</word>")]
    private static partial Regex Word();

    [GeneratedRegex(@"Page size:\s+([\d.]+) x ([\d.]+) pts")]
    private static partial Regex PageSize();
}
