using BakeInsights.TestKit;
using Microsoft.Playwright;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>The tests that share one browser and the pages made for it.</summary>
[CollectionDefinition(Name)]
public sealed class InBrowser : ICollectionFixture<BrowserFixture>
{
    /// <summary>The collection's name.</summary>
    public const string Name = "in the browser";
}

/// <summary>The tests that execute notebooks in Jupyter, and look at some of them in a browser of their own meanwhile.</summary>
[CollectionDefinition(Name)]
public sealed class InJupyter : ICollectionFixture<BrowserFixture>
{
    /// <summary>The collection's name.</summary>
    public const string Name = "in Jupyter";
}

/// <summary>A real browser without a network, and the folder for what it is to open.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    // The machine's own; nothing is downloaded for the tests.
    private const string Chromium = "/usr/bin/chromium";

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Where pages are written.</summary>
    public TemporaryFolder Folder { get; } = new();

    /// <summary>The page of a notebook, opened; the command runs once for all tests.</summary>
    public async Task<OpenedPage> OpenPageAsync(string notebook, int width = 1280, ColorScheme colours = ColorScheme.Light) =>
        await OpenAsync(await BakeCommand.RunNotebookAsync(notebook, Folder, ".html"), width, colours);

    /// <summary>Opens a file and watches what it does.</summary>
    public async Task<OpenedPage> OpenAsync(string path, int width = 1280, ColorScheme colours = ColorScheme.Light)
    {
        var context = await _browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 900 }, ColorScheme = colours });
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
