using BakeInsights.Reports;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Notebooks.Tests;

public sealed class FormattersTests : IDisposable
{
    private const string Setup = "#r \"nuget: BakeInsights.Notebooks, 0.1.0\"\nusing Chart = Plotly.NET.CSharp.Chart;";
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Setup_shows_the_chart_library_once_and_a_page_leaves_it_to_the_writer()
    {
        var run = await Run(Setup, Setup);
        Assert.Equal(PlotlyScript.Element, Assert.IsType<ShownValue>(Assert.Single(run.Notebook.Cells[0].Outputs)).Forms[0].Value);
        Assert.Empty(run.Notebook.Cells[1].Outputs);
        Assert.All(ExecutedPage.From(run, "x").Cells, cell => Assert.Empty(Assert.IsType<PageCode>(cell).Outputs));
    }

    [Theory]
    [InlineData("Chart.Point<int, int, string>(new[] { 1 }, new[] { 2 })")]
    [InlineData("Chart.Combine(new[] { Chart.Line<int, int, string>(new[] { 1 }, new[] { 2 }), Chart.Line<int, int, string>(new[] { 1 }, new[] { 3 }) })")]
    public async Task A_chart_is_shown_as_a_chart_and_as_text(string code)
    {
        var run = await Run(Setup, code);
        Assert.Null(run.Failure);
        var forms = Assert.IsType<ShownValue>(Assert.Single(run.Notebook.Cells[1].Outputs)).Forms;
        Assert.Equal(["text/html", "text/plain"], forms.Select(form => form.Key));
        Assert.Contains("class=\"bake-chart\"", forms[0].Value, StringComparison.Ordinal);
        Assert.Equal("Chart", forms[1].Value);
    }

    [Fact]
    public async Task A_javascript_cell_is_a_script_element_and_its_code_stands_in_the_cell()
    {
        var run = await Run(Setup, "#!javascript\n// Say it\nconsole.log(1);");
        Assert.Null(run.Failure);
        var form = Assert.Single(Assert.IsType<ShownValue>(Assert.Single(run.Notebook.Cells[1].Outputs)).Forms);
        Assert.Equal(KeyValuePair.Create("text/html", "<script type=\"text/javascript\">\n// Say it\nconsole.log(1);\n</script>"), form);
    }

    [Fact]
    public async Task Values_are_handed_over_as_an_element_that_shows_nothing()
    {
        var run = await Run(Setup, "BakeInsights.Reports.ScriptData.Of(\"a\", 1.5)");
        var forms = Assert.IsType<ShownValue>(Assert.Single(run.Notebook.Cells[1].Outputs)).Forms;
        Assert.Equal("<script type=\"application/json\" data-bake=\"a\">1.5</script>", forms[0].Value);
    }

    [Fact]
    public async Task Text_of_a_value_is_never_markup()
    {
        var run = await Run("new[] { new { Note = \"<script>alert(1)</script>\" } }");
        var html = Assert.IsType<ShownValue>(Assert.Single(run.Notebook.Cells[0].Outputs)).Forms[0].Value;
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
    }

    private Task<NotebookRun> Run(params string[] cells) => NotebookRunner.RunAsync(
        _folder.Write("n.ipynb", NotebookText.Of([.. cells.Select(cell => NotebookText.Code(cell))])),
        new Dictionary<string, string>());
}
