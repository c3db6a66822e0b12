using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class PageScriptsTests
{
    private const string Authors = "document.title = 'by the cell';";
    private const string Datas = "document.title = 'by a note';";

    [Fact]
    public void A_page_without_scripts_runs_none() => Assert.Contains("script-src 'none';", Policy("plain", "plain"), StringComparison.Ordinal);

    [Fact]
    public void A_script_that_stands_in_the_cell_runs_and_one_that_came_with_data_does_not()
    {
        var policy = Policy($"<script>{Authors}</script><p><SCRIPT>{Datas}</SCRIPT></p>", $"#!html\n<script>{Authors}</script>");
        Assert.Contains(Hash(Authors), policy, StringComparison.Ordinal);
        Assert.DoesNotContain(Hash(Datas), policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", Regex.Match(policy, "script-src[^;]*").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_script_is_named_as_it_stands_even_where_the_host_puts_lines_around_it() =>
        Assert.Contains(Hash($"\n{Authors}\n"), Policy($"<script type=\"text/javascript\">\n{Authors}\n</script>", $"#!javascript\n{Authors}"), StringComparison.Ordinal);

    [Fact]
    public void Lines_count_as_the_browser_ends_them() =>
        Assert.Contains(Hash("a;\nb;"), Policy("<script>a;\r\nb;</script>", "a;\r\nb;"), StringComparison.Ordinal);

    [Fact]
    public void Data_handed_to_a_script_needs_no_leave() => Assert.Contains(
        "script-src 'none';", Policy("<script type=\"application/json\">{}</script>", "<script type=\"application/json\">{}</script>"), StringComparison.Ordinal);

    [Fact]
    public void An_empty_script_is_not_taken_for_one_of_the_cells() =>
        Assert.Contains("script-src 'none';", Policy("<script> </script>", "x"), StringComparison.Ordinal);

    [Fact]
    public void A_charts_own_script_runs()
    {
        var policy = Policy(ChartHtml.Fragment(Plotly.NET.CSharp.Chart.Point<int, int, string>([1], [2])), "chart");
        Assert.Contains(Hash(ChartHtml.DrawWaitingCharts), policy, StringComparison.Ordinal);
        Assert.Contains(Hash(PlotlyScript.Text), policy, StringComparison.Ordinal);
    }

    private static string Policy(string html, string source)
    {
        var page = WrittenPage.Of(new PageNotebook("t", [new PageCode("c", source, [new PageHtml(html)])]));
        return Regex.Match(page, "Content-Security-Policy\" content=\"([^\"]*)\"").Groups[1].Value;
    }

    private static string Hash(string script) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)))}'";
}
