using Microsoft.Playwright;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

[Collection(InBrowser.Name)]
public class PageInBrowserTests(BrowserFixture browser)
{
    private const int PhoneWidth = 390;

    // A4 less the page's own margins, at 96 pixels an inch.
    private const int PaperWidth = 688;

    // So that a page can go by mail.
    private const int LargestBytes = 6_000_000;

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_draws_its_charts_without_a_network(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook);
        var charts = await opened.AssertChartsDrawn();
        opened.AssertQuietAndAlone();
        if (notebook == Notebooks.Small)
        {
            Assert.Equal(2, charts);
            await opened.AssertScriptHasWorked();
        }
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_fits_a_phone(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook, PhoneWidth);
        await opened.AssertChartsDrawn();
        await opened.AssertFitsAsync();
        await opened.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(fold => fold.open = true)");
        await opened.AssertFitsAsync();
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_has_one_title_says_its_language_and_lists_its_sections(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook);
        var page = opened.Page;
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        Assert.Equal("en", await page.Locator("html").GetAttributeAsync("lang"));
        Assert.Equal(
            await page.Locator(".words h2, .provenance h2").AllInnerTextsAsync(),
            await page.Locator(".contents li").AllInnerTextsAsync());
        foreach (var target in await page.Locator(".contents a").EvaluateAllAsync<string[]>("links => links.map(link => link.hash)"))
        {
            Assert.Equal(1, await page.Locator($"[id=\"{Uri.UnescapeDataString(target[1..])}\"]").CountAsync());
        }
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task Pointing_at_a_mark_shows_words_and_the_legend_switches_series(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook);
        var page = opened.Page;
        var charts = page.Locator(".bake-chart");
        for (var i = 0; i < await charts.CountAsync(); i++)
        {
            var chart = charts.Nth(i);
            await chart.ScrollIntoViewIfNeededAsync();
            var marks = chart.Locator(".scatterlayer .point");
            if (await marks.CountAsync() > 0)
            {
                // A tall chart may be in view and its first mark not.
                await marks.First.ScrollIntoViewIfNeededAsync();
                var mark = (await marks.First.BoundingBoxAsync())!;
                await page.Mouse.MoveAsync(mark.X + (mark.Width / 2), mark.Y + (mark.Height / 2));
                await Assertions.Expect(chart.Locator(".hoverlayer .hovertext").First).ToBeVisibleAsync();
            }

            if (await chart.Locator(".legendtoggle").CountAsync() > 0)
            {
                await chart.Locator(".legendtoggle").First.ClickAsync();
                await page.WaitForFunctionAsync("chart => chart.data.some(series => series.visible === 'legendonly')", await chart.ElementHandleAsync());
            }
        }

        opened.AssertQuietAndAlone();
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task On_paper_charts_keep_their_shape_within_it_and_folds_stay_shut(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook);
        var page = opened.Page;
        await opened.AssertChartsDrawn();
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        // The charts were drawn for the screen; paper is narrower, and nobody draws them again.
        await page.EvaluateAsync($"() => {{ document.body.style.width = '{PaperWidth}px'; document.body.style.margin = '0'; }}");
        var outside = await page.EvaluateAsync<string[]>(
            $$"""
            () => [...document.querySelectorAll('svg.main-svg, td, th, p, pre, li')]
              .filter(part => part.getBoundingClientRect().width > 0 && part.getBoundingClientRect().right > {{PaperWidth}} + 1)
              .map(part => part.tagName + ' ' + part.textContent.slice(0, 60))
            """);
        Assert.Empty(outside);
        Assert.Equal(0, await page.Locator("details > pre:visible, .bake-save:visible").CountAsync());
        var shapes = await page.Locator(".bake-chart svg.main-svg:first-child").EvaluateAllAsync<double[]>(
            "drawings => drawings.map(one => one.getBoundingClientRect().width / one.getBoundingClientRect().height / (one.viewBox.baseVal.width / one.viewBox.baseVal.height))");
        Assert.All(shapes, shape => Assert.InRange(shape, 0.97, 1.03));
        var paper = await page.PdfAsync(new() { Format = "A4", PrintBackground = true });
        Assert.Equal("%PDF"u8.ToArray(), paper[..4]);
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_chart_is_saved_as_svg_from_the_keyboard_and_without_a_network(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook);
        var save = opened.Page.Locator(".bake-save").First;
        if (await opened.Page.Locator(".bake-chart").CountAsync() == 0)
        {
            return;
        }

        await save.FocusAsync();
        var file = await opened.Page.RunAndWaitForDownloadAsync(() => opened.Page.Keyboard.PressAsync("Enter"));
        Assert.EndsWith(".svg", file.SuggestedFilename, StringComparison.Ordinal);
        var path = browser.Folder.File(file.SuggestedFilename);
        await file.SaveAsAsync(path);
        var drawing = System.Xml.Linq.XDocument.Load(path);
        Assert.Equal("svg", drawing.Root!.Name.LocalName);
        Assert.Contains(drawing.Descendants(), part => part.Attribute("class")?.Value == "trace scatter" || part.Attribute("class")?.Value.StartsWith("trace scatter", StringComparison.Ordinal) == true);
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task Every_chart_has_words_and_a_table_that_the_keyboard_opens(string notebook)
    {
        await using var opened = await browser.OpenPageAsync(notebook);
        var figures = opened.Page.Locator(".bake-figure");
        for (var i = 0; i < await figures.CountAsync(); i++)
        {
            var fold = figures.Nth(i).Locator("details.bake-data");
            await fold.Locator("summary").FocusAsync();
            await opened.Page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(fold.Locator("p").First).ToBeVisibleAsync();
            await Assertions.Expect(fold.Locator("td").First).ToBeVisibleAsync();
            Assert.StartsWith("Chart", await figures.Nth(i).Locator(".bake-chart").GetAttributeAsync("aria-label"), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_is_the_same_to_the_byte_when_made_again_and_not_too_large(string notebook)
    {
        var first = await File.ReadAllBytesAsync(await BakeCommand.RunNotebookAsync(notebook, browser.Folder, ".html"));
        using var elsewhere = new TestKit.TemporaryFolder();
        var second = await File.ReadAllBytesAsync(await BakeCommand.RunNotebookAsync(notebook, elsewhere, ".html"));
        Assert.True(first.AsSpan().SequenceEqual(second));
        Assert.InRange(first.Length, 1, LargestBytes);
    }
}
