using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public class ReferencePageTests
{
    [Theory]
    [InlineData("formula")]
    [InlineData("dough-temperature")]
    [InlineData("yeast-and-temperature")]
    [InlineData("rise-curves")]
    [InlineData("looks")]
    [InlineData("cautions")]
    public async Task Examples_of_a_page_compile_and_give_what_the_page_says(string name)
    {
        // The pages show what a notebook would, and those run in the invariant culture.
        Thread.CurrentThread.CurrentCulture = CultureInfo.InvariantCulture;
        var path = $"docs/reference/{name}.md";
        var page = await File.ReadAllTextAsync(Repository.Path(path));
        Assert.Contains("```csharp", page, StringComparison.Ordinal);
        Approved.Matches(path, await DocumentationPage.WithFreshOutputAsync(page));
    }
}
