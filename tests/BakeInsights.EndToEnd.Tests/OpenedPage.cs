using Microsoft.Playwright;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>A page in the browser, with all that it asked for and complained of.</summary>
public sealed class OpenedPage : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly string _address;
    private readonly List<string> _requests = [];
    private readonly List<string> _complaints = [];

    private OpenedPage(IBrowserContext context, IPage page, string address)
    {
        _context = context;
        _address = address;
        Page = page;
        page.Request += (_, request) => _requests.Add(request.Url);
        page.PageError += (_, error) => _complaints.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                _complaints.Add(message.Text);
            }
        };
    }

    /// <summary>The page itself.</summary>
    public IPage Page { get; }

    /// <summary>Opens an address and waits until it has loaded.</summary>
    public static async Task<OpenedPage> OpenAsync(IBrowserContext context, string address)
    {
        var opened = new OpenedPage(context, await context.NewPageAsync(), address);
        await opened.Page.GotoAsync(address, new() { WaitUntil = WaitUntilState.Load });
        return opened;
    }

    /// <summary>The page asked for nothing but itself and nothing went wrong in it.</summary>
    public void AssertQuietAndAlone()
    {
        Assert.Empty(_complaints);
        Assert.Equal([_address], _requests);
    }

    /// <summary>Every chart is drawn.</summary>
    /// <returns>How many charts there are.</returns>
    public async Task<int> AssertChartsDrawn()
    {
        var charts = Page.Locator(".bake-chart");
        var count = await charts.CountAsync();
        for (var i = 0; i < count; i++)
        {
            await Assertions.Expect(charts.Nth(i).Locator("svg.main-svg").First).ToBeVisibleAsync();
        }

        return count;
    }

    /// <summary>The JavaScript cell of the small notebook has worked with what C# handed over.</summary>
    public async Task AssertScriptHasWorked() => await Assertions.Expect(Page.Locator("#mean-place")).ToHaveTextAsync("25.125 °C </script><b>&");

    /// <summary>The page fits its window: nothing has to be pushed sideways.</summary>
    public async Task AssertFitsAsync()
    {
        var (page, window) = (await Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), Page.ViewportSize!.Width);
        Assert.True(page <= window, $"The page is {page} pixels wide in a window of {window}.");
        var charts = await Page.EvaluateAsync<int[]>(
            "() => [...document.querySelectorAll('.bake-chart svg.main-svg')].map(svg => Math.ceil(svg.getBoundingClientRect().right))");
        Assert.All(charts, right => Assert.True(right <= window, $"A chart reaches to {right} pixels in a window of {window}."));
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await _context.CloseAsync();
}
