using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public class ReferencePageTests
{
    [Theory]
    [InlineData("class-plans")]
    [InlineData("compare")]
    [InlineData("groups")]
    [InlineData("long-journals")]
    [InlineData("next-bakes")]
    [InlineData("own-columns")]
    [InlineData("sheets")]
    [InlineData("tuning")]
    [InlineData("virtual-kitchen")]
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
}
