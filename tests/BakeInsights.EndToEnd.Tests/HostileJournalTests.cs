using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>What somebody writes into a journal stays text: on the page, in its charts, and in what they show.</summary>
[Collection(InBrowser.Name)]
public class HostileJournalTests(BrowserFixture browser)
{
    private const string Script = "<script>window.taken = true</script>";
    private const string Picture = "<img src=x onerror=window.taken=true>";
    private const string Link = "<a href=\"javascript:window.taken=true\">here</a>";

    [Theory]
    [InlineData(Script)]
    [InlineData(Picture)]
    [InlineData(Link)]
    [InlineData("</script>" + Script + "<!--")]
    public async Task Text_of_a_journal_is_never_markup(string text)
    {
        // The demo month, with the text for a bake's name, a baker, a kind of flour and a note.
        var lines = await File.ReadAllLinesAsync(Repository.Path("data-demo/millpond-lane/bakes.csv"));
        var columns = lines[0].Split(',');
        var written = $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
        var changed = lines.Skip(1).Select((line, i) =>
        {
            var cells = line.Split(',');
            cells[Array.IndexOf(columns, "bake_id")] = i == 0 ? written : cells[0];
            cells[Array.IndexOf(columns, "baker")] = i % 2 == 0 ? written : "B";
            return string.Join(',', cells.Append(written));
        });
        using var folder = new TemporaryFolder();
        folder.Write("bakes.csv", string.Join('\n', changed.Prepend(lines[0] + ",notes")) + "\n");
        var target = folder.File("page.html");

        var run = await BakeCommand.RunAsync(folder.Path, "run", Repository.Path(Notebooks.Month), "--journal", ".", "--to", target);

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        await using var opened = await browser.OpenAsync(target);
        await opened.AssertChartsDrawn();
        Assert.False(await opened.Page.EvaluateAsync<bool>("() => window.taken === true"));
        Assert.Equal(0, await opened.Page.Locator("main img, main a[href^='javascript'], svg a").CountAsync());
        Assert.Contains(text, await opened.Page.Locator("main").EvaluateAsync<string>("main => main.textContent"), StringComparison.Ordinal);
        opened.AssertQuietAndAlone();
    }

    [Fact]
    public async Task A_script_that_slips_through_as_markup_does_not_run()
    {
        using var folder = new TemporaryFolder();
        folder.Write("n.ipynb", NotebookText.Of(
            NotebookText.Code($"var note = new string(\"{string.Concat(Script.Reverse())}\".Reverse().ToArray());"),
            NotebookText.Code("HTML(note)")));
        var run = await BakeCommand.RunAsync(folder.Path, "run", "n.ipynb");
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains(Script, await File.ReadAllTextAsync(folder.File("n.html")), StringComparison.Ordinal);
        await using var opened = await browser.OpenAsync(folder.File("n.html"));
        Assert.False(await opened.Page.EvaluateAsync<bool>("() => window.taken === true"));
    }
}
