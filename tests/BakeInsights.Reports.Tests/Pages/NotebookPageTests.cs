using System.Text.RegularExpressions;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class NotebookPageTests
{
    private const string Hostile = "</pre></code><script>alert(1)</script><img src=x onerror=alert(1)> & \"quoted\" 'too'";

    [Fact]
    public void The_same_notebook_gives_the_same_bytes() => Assert.Equal(Page(Everything()), Page(Everything()));

    [Fact]
    public void Text_from_outside_is_never_markup()
    {
        var page = Page(
            new PageNotebook(Hostile,
            [
                new PageMarkdown(Hostile),
                new PageCode(Hostile, Hostile, [new PageText(Hostile), new PageMarkdownOutput(Hostile), new PageImage(Hostile, Hostile)])
                {
                    Error = Hostile,
                },
            ]) { Language = Hostile });
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_loaded_from_an_address()
    {
        var page = WithoutScripts(Page(Everything()));
        Assert.DoesNotMatch(new Regex("""\b(src|srcset|data|poster|background)\s*=\s*(?!["']?data:)""", RegexOptions.IgnoreCase), page);
        Assert.DoesNotMatch(new Regex("""<(link|iframe|object|embed|base)\b|@import|url\(""", RegexOptions.IgnoreCase), page);
        Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_from_elsewhere_becomes_a_link_and_one_from_the_text_stays()
    {
        var page = Page(Words("![far](https://example.org/a.png) ![near](data:image/png;base64,AA==)"));
        Assert.Contains("<a href=\"https://example.org/a.png\">far</a>", page, StringComparison.Ordinal);
        Assert.Contains("<img src=\"data:image/png;base64,AA==\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](data:text/html,x)")]
    [InlineData("<javascript:alert(1)>")]
    [InlineData("![x](javascript:alert(1))")]
    public void A_link_that_would_run_something_leads_nowhere(string markdown)
    {
        var page = Page(Words(markdown));
        Assert.DoesNotContain("href=\"javascript:", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("href=\"data:", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_first_heading_is_the_title_and_the_only_one_of_its_level()
    {
        var page = Page(new PageNotebook("file name",
        [
            new PageMarkdown("# How *warm*?\n\ntext\n\n# Again"),
            new PageMarkdown("# And again"),
        ]));
        Assert.Contains("<title>How warm?</title>", page, StringComparison.Ordinal);
        Assert.Equal("<h1>How <em>warm</em>?</h1>", Assert.Single(Regex.Matches(page, "<h1.*?</h1>")).Value);
        Assert.Equal(2, Regex.Matches(page, "<h2 ").Count);
    }

    [Fact]
    public void A_notebook_without_a_heading_gets_the_title_it_was_given()
    {
        var page = Page(Words("## Only a section"));
        Assert.Equal("<h1>Title</h1>", Assert.Single(Regex.Matches(page, "<h1.*?</h1>")).Value);
    }

    [Fact]
    public void Code_is_folded_under_its_name()
    {
        var page = Page(new PageNotebook("t", [new PageCode("Fit", "var a = 1 < 2;", [])]));
        Assert.Contains("<details><summary>Code: Fit</summary>\n<pre tabindex=\"0\"><code>var a = 1 &lt; 2;</code></pre>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failure_is_announced_at_the_top_and_told_in_place()
    {
        var page = Page(new PageNotebook("t",
        [
            new PageCode("Read", "1", []),
            new PageCode("Fit", "2", [new PageText("so far")]) { Error = "too few bakes" },
            new PageCode("Chart", "3", []) { HasRun = false },
        ]));
        var places = new[] { "This page is incomplete", "so far", "Code cell 2 failed: Fit", "too few bakes", "Not run" }
            .Select(text => page.IndexOf(text, StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void The_chart_library_comes_only_with_a_chart_and_then_once()
    {
        const string Mark = "plotly.js v2";
        Assert.DoesNotContain(Mark, Page(Words("no chart")), StringComparison.Ordinal);
        Assert.Single(Regex.Matches(Page(Everything()), Regex.Escape(Mark)));
    }

    [Fact]
    public void Tables_scroll_in_a_box_of_their_own() =>
        Assert.Matches("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"Table\"><table>", Page(Words("| a |\n|---|\n| 1 |")).Replace("\n", ""));

    [Fact]
    public void Text_in_columns_keeps_its_lines_and_sentences_wrap()
    {
        var page = Page(new PageNotebook("t", [new PageCode("c", "c", [new PageText("a  1\nb  2\n\nOne sentence.\n")])]));
        Assert.Contains("<pre class=\"columns\">a  1\nb  2\n</pre><pre>One sentence.</pre>", page, StringComparison.Ordinal);
    }

    internal static PageNotebook Everything()
    {
        var chart = Plotly.NET.CSharp.Chart.Point<int, int, string>([1, 2], [3, 4]);
        return new PageNotebook("Title",
        [
            new PageMarkdown("# Title\n\n![far](https://example.org/a.png)\n\n| a | b |\n|---|---|\n| 1 | 2 |"),
            new PageCode("c", "code", [new PageHtml(ChartHtml.Fragment(chart)), new PageHtml(ChartHtml.Fragment(chart)), new PageText("x")]),
            new PageCode("d", "code", [new PageImage("image/png", "AA==")]) { Error = "e" },
        ]);
    }

    private static PageNotebook Words(string markdown) => new("Title", [new PageMarkdown(markdown)]);

    private static string Page(PageNotebook notebook)
    {
        using var writer = new StringWriter();
        NotebookPage.Write(notebook, writer);
        return writer.ToString();
    }

    private static string WithoutScripts(string page) =>
        Regex.Replace(page, "<script.*?</script>", "", RegexOptions.Singleline);
}
