using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

public class ReadmePictureTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int Width = 1280;
    private const string Picture = "docs/images/rise-time.png";

    // Pixels differ from one machine's fonts to another's, so the words are compared: they change with the fit.
    [Fact]
    public async Task The_README_shows_the_chart_that_the_demo_journal_gives()
    {
        var path = await BakeCommand.RunNotebookAsync("notebooks/review-a-month.ipynb", browser.Folder, ".html");
        await using var opened = await browser.OpenAsync(path, Width);
        await opened.AssertChartsDrawn();
        var figure = opened.Page.Locator("figure", new() { HasText = "A stroke lies between two looks" }).First;
        var title = (await figure.Locator("figcaption").First.InnerTextAsync()).Trim();
        if (Environment.GetEnvironmentVariable("BAKEINSIGHTS_ACCEPT") == "1")
        {
            await figure.ScreenshotAsync(new() { Path = Repository.Path(Picture) });
        }

        var readme = await File.ReadAllTextAsync(Repository.Path("README.md"));
        Assert.Contains($"![{title}]({Picture})", readme, StringComparison.Ordinal);
    }
}
