using System.Text.RegularExpressions;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class PageContentsTests
{
    [Fact]
    public void Every_section_is_listed_in_order_and_its_link_leads_there()
    {
        var page = WrittenPage.Of(new PageNotebook("t",
        [
            new PageMarkdown("# Title\n\nwords"),
            new PageMarkdown("## Rise *time*, in minutes\n\n### Finer\n\n## Ünits & more"),
            new PageMarkdown("# Rise time, in minutes"),
            new PageMarkdown("## !?"),
        ]));
        var entries = Regex.Matches(page, "<li><a href=\"#([^\"]+)\">(.*?)</a></li>");
        Assert.Equal(["Rise time, in minutes", "Ünits &amp; more", "Rise time, in minutes", "!?"], entries.Select(entry => entry.Groups[2].Value));
        Assert.Equal(["rise-time-in-minutes", "ünits-more", "rise-time-in-minutes-2", "section"], entries.Select(entry => entry.Groups[1].Value));
        Assert.All(entries, entry => Assert.Single(Regex.Matches(page, $"<h2 id=\"{entry.Groups[1].Value}\">")));
        Assert.True(page.IndexOf("<nav", StringComparison.Ordinal) > page.IndexOf("<p>words</p>", StringComparison.Ordinal));
    }

    [Fact]
    public void The_list_comes_before_the_first_section_even_where_the_titles_cell_goes_on_with_it()
    {
        var page = WrittenPage.Of(new PageNotebook("t", [new PageMarkdown("# Title\n\nwords\n\n## One\n\n## Two")]));
        Assert.Matches("(?s)<p>words</p>\n<nav .*</nav>\n<h2 id=\"one\">", page);
    }

    [Fact]
    public void A_heading_can_not_take_the_place_of_the_failure()
    {
        var page = WrittenPage.Of(new PageNotebook("t",
            [new PageMarkdown("## Failure\n\n## Next"), new PageCode("c", "c", []) { Error = "e" }]));
        Assert.Single(Regex.Matches(page, "id=\"failure\""));
        Assert.Contains("<h2 id=\"failure-2\">", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_section_needs_no_list() =>
        Assert.DoesNotContain("<nav", WrittenPage.Of(new PageNotebook("t", [new PageMarkdown("## One")])), StringComparison.Ordinal);

    [Fact]
    public void What_the_page_was_made_from_stands_at_its_end_and_in_the_list()
    {
        var page = WrittenPage.Of(new PageNotebook("t", [new PageMarkdown("## One"), new PageMarkdown("last words")])
        {
            Provenance = [new PageFact("Journal, <b>", "1 row & more")],
        });
        Assert.Contains("<tr><th scope=\"row\">Journal, &lt;b&gt;</th><td>1 row &amp; more</td></tr>", page, StringComparison.Ordinal);
        Assert.Contains("<a href=\"#where-this-page-comes-from\">", page, StringComparison.Ordinal);
        Assert.True(page.IndexOf("last words", StringComparison.Ordinal) < page.IndexOf("<h2 id=\"where-", StringComparison.Ordinal));
    }
}
