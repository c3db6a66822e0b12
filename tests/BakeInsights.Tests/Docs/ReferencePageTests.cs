using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public class ReferencePageTests
{
    [Theory]
    [InlineData("class-plans")]
    [InlineData("compare")]
    [InlineData("long-journals")]
    [InlineData("next-bakes")]
    [InlineData("reference/formula")]
    [InlineData("reference/dough-temperature")]
    [InlineData("reference/yeast-and-temperature")]
    [InlineData("reference/rise-curves")]
    [InlineData("reference/looks")]
    [InlineData("reference/cautions")]
    public async Task Examples_of_a_page_compile_and_give_what_the_page_says(string name)
    {
        // The pages show what a notebook would, and those run in the invariant culture.
        Thread.CurrentThread.CurrentCulture = CultureInfo.InvariantCulture;
        var path = $"docs/{name}.md";
        var page = await File.ReadAllTextAsync(Repository.Path(path));
        Assert.Contains("```csharp", page, StringComparison.Ordinal);
        Approved.Matches(path, await DocumentationPage.WithFreshOutputAsync(page));
    }

    [Fact]
    public async Task Example_of_the_page_on_sheets_gives_what_the_page_says()
    {
        Thread.CurrentThread.CurrentCulture = CultureInfo.InvariantCulture;
        const string path = "docs/sheets.md";
        const string demo = "\"data-demo/millpond-lane\"";
        var page = await File.ReadAllTextAsync(Repository.Path(path));

        // A reader starts in the checkout's folder; tests don't.
        var here = $"@\"{Repository.Path("data-demo/millpond-lane")}\"";
        var fresh = await DocumentationPage.WithFreshOutputAsync(page.Replace(demo, here, StringComparison.Ordinal));
        Approved.Matches(path, fresh.Replace(here, demo, StringComparison.Ordinal));
    }
}
