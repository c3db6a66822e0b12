using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class ReadmeTests
{
    [Fact]
    public void The_sentence_that_the_README_shows_is_the_one_that_the_demo_journal_gives()
    {
        var answer = RiseTime.Ask(Journal.Read(Repository.Path("data-demo/millpond-lane")).Bakes).Value;
        var headline = RiseTimeView.Headline(answer, new Figures(UnitSystem.Metric));
        var readme = File.ReadAllText(Repository.Path("README.md"));
        Assert.Contains(headline, Regex.Replace(readme, @"\s*\n>? *", " "), StringComparison.Ordinal);
    }
}
