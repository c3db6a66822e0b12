using Xunit;

namespace BakeInsights.EndToEnd.Tests;

public class PageInBrowserTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int PhoneWidth = 390;

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_draws_its_charts_without_a_network(string notebook)
    {
        var path = await BakeCommand.RunNotebookAsync(notebook, browser.Folder, ".html");
        await using var opened = await browser.OpenAsync(path);
        var charts = await opened.AssertChartsDrawn();
        opened.AssertQuietAndAlone();
        if (notebook == Notebooks.Small)
        {
            Assert.Equal(2, charts);
        }
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_fits_a_phone(string notebook)
    {
        var path = await BakeCommand.RunNotebookAsync(notebook, browser.Folder, ".html");
        await using var opened = await browser.OpenAsync(path, PhoneWidth);
        await opened.AssertChartsDrawn();
        var width = await opened.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
        Assert.True(width <= PhoneWidth, $"The page is {width} pixels wide.");
        var charts = await opened.Page.EvaluateAsync<int[]>(
            "() => [...document.querySelectorAll('.bake-chart svg.main-svg')].map(svg => Math.ceil(svg.getBoundingClientRect().right))");
        Assert.All(charts, right => Assert.True(right <= PhoneWidth, $"A chart reaches to {right} pixels."));
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task A_page_has_one_title_and_says_its_language(string notebook)
    {
        var path = await BakeCommand.RunNotebookAsync(notebook, browser.Folder, ".html");
        await using var opened = await browser.OpenAsync(path);
        Assert.Equal(1, await opened.Page.Locator("h1").CountAsync());
        Assert.Equal("en", await opened.Page.Locator("html").GetAttributeAsync("lang"));
    }
}
