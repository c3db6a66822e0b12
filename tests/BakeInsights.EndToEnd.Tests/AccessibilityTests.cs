using Deque.AxeCore.Commons;
using Microsoft.Playwright;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>Pages under the rules of axe-core, https://github.com/dequelabs/axe-core, which follow WCAG 2.</summary>
[Collection(InBrowser.Name)]
public class AccessibilityTests(BrowserFixture browser)
{
    private const string Look =
        """
        async () => (await axe.run(document, { resultTypes: ['violations'] })).violations
          .filter(found => found.impact === 'serious' || found.impact === 'critical')
          .map(found => found.id + ': ' + found.help + ' | ' + found.nodes.slice(0, 3).map(node => node.html.slice(0, 160)).join(' | '))
        """;

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public Task A_page_keeps_every_serious_rule(string notebook) => AssertNothingFoundAsync(notebook, 1280, ColorScheme.Light);

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public Task A_page_keeps_every_serious_rule_in_the_dark_and_on_a_phone(string notebook) =>
        AssertNothingFoundAsync(notebook, 390, ColorScheme.Dark);

    private async Task AssertNothingFoundAsync(string notebook, int width, ColorScheme colours)
    {
        await using var opened = await browser.OpenPageAsync(notebook, width, colours);
        await opened.AssertChartsDrawn();
        await opened.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(fold => fold.open = true)");
        await opened.Page.EvaluateAsync(new BundledAxeScriptProvider().GetScript());
        Assert.Empty(await opened.Page.EvaluateAsync<string[]>(Look));
    }
}
