using BakeInsights.TestKit;
using Microsoft.Playwright;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>A real browser without a network, and the folder for what it is to open.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    // The machine's own; nothing is downloaded for the tests.
    private const string Chromium = "/usr/bin/chromium";

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Where pages are written.</summary>
    public TemporaryFolder Folder { get; } = new();

    /// <summary>Opens a file and watches what it does.</summary>
    public async Task<OpenedPage> OpenAsync(string path, int width = 1280)
    {
        var context = await _browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 900 } });
        await context.SetOfflineAsync(true);
        return await OpenedPage.OpenAsync(context, new Uri(path).AbsoluteUri);
    }

    /// <inheritdoc/>
    public async Task InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
                "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run",
                "--proxy-server=127.0.0.1:9",
            ],
        });
    }

    /// <inheritdoc/>
    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
        Folder.Dispose();
    }
}
