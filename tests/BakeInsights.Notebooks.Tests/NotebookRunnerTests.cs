using BakeInsights.TestKit;
using Xunit;
using static BakeInsights.TestKit.NotebookText;

namespace BakeInsights.Notebooks.Tests;

public sealed class NotebookRunnerTests : IDisposable
{
    private static readonly Dictionary<string, string> NoSettings = [];
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Cells_share_variables_and_give_their_outputs_in_order()
    {
        var run = await Run(Code("var dough = 25;"), Words("# Words"), Code("Console.WriteLine(dough); display(\"shown\"); dough + 1"));
        Assert.Null(run.Failure);
        Assert.Empty(run.Notebook.Cells[0].Outputs);
        Assert.Equal([1, null, 2], run.Notebook.Cells.Select(cell => cell.ExecutionCount));
        Assert.Collection(
            run.Notebook.Cells[2].Outputs,
            printed => Assert.Equal(new PrintedText("stdout", "25\n"), printed),
            shown => Assert.False(Assert.IsType<ShownValue>(shown).IsResult),
            result => Assert.True(Assert.IsType<ShownValue>(result).IsResult));
    }

    [Fact]
    public async Task Settings_replace_what_the_file_says_and_the_file_stays()
    {
        var path = _folder.Write("n.ipynb", Of(Code("var month = \"\";", "bake-settings"), Code("Console.Write(month);")));
        var before = await File.ReadAllTextAsync(path);
        var run = await NotebookRunner.RunAsync(path, new Dictionary<string, string> { ["month"] = "2026-\"03\"" });
        Assert.Equal("2026-\"03\"", Printed(run, 1));
        Assert.Equal(before, await File.ReadAllTextAsync(path));
    }

    [Fact]
    public async Task The_notebook_runs_in_its_own_folder_and_the_caller_keeps_his()
    {
        var before = Directory.GetCurrentDirectory();
        _folder.Write("beside.txt", "found");
        var run = await Run(Code("Console.Write(System.IO.File.ReadAllText(\"beside.txt\"));"));
        Assert.Equal("found", Printed(run, 0));
        Assert.Equal(before, Directory.GetCurrentDirectory());
    }

    [Fact]
    public async Task A_failing_cell_ends_the_run_and_is_named_by_its_first_comment()
    {
        var run = await Run(
            Code("var a = 1;"),
            Code("// Fit the rise times\nConsole.Write(\"so far\");\nthrow new InvalidOperationException(\"too few bakes\");"),
            Code("Console.Write(\"never\");"));
        Assert.Equal(new CellFailure(2, "Fit the rise times", "InvalidOperationException: too few bakes"), run.Failure);
        Assert.Equal("so far", Printed(run, 1));
        Assert.IsType<CellError>(run.Notebook.Cells[1].Outputs[^1]);
        Assert.Empty(run.Notebook.Cells[2].Outputs);
        Assert.Null(run.Notebook.Cells[2].ExecutionCount);
    }

    [Fact]
    public async Task Code_that_does_not_compile_fails_with_line_and_reason()
    {
        var run = await Run(Code("int rise = 3;\nint proof = \"four\";"));
        Assert.Equal("int rise = 3;", run.Failure!.Name);
        Assert.StartsWith("(2,13): error CS0029", run.Failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_own_package_is_answered_from_this_process_without_a_restore()
    {
        var run = await Run(
            Code("#r \"nuget: BakeInsights.Notebooks, 0.1.0\"\nusing BakeInsights.Reports;\n"),
            Code("typeof(NotebookPage).Assembly.Location"));
        Assert.Null(run.Failure);
        var shown = Assert.IsType<ShownValue>(Assert.Single(run.Notebook.Cells[1].Outputs));
        Assert.Contains(typeof(Reports.NotebookPage).Assembly.Location, shown.Forms[0].Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_error_beside_the_package_line_keeps_its_line_number()
    {
        var run = await Run(Code("#r \"nuget: BakeInsights.Notebooks, 0.1.0\"\nusing System.Text;\nnonsense();"));
        Assert.StartsWith("(3,1)", run.Failure!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Html_and_javascript_cells_run_too()
    {
        var run = await Run(Code("#!html\n<b>bold</b>"), Code("#!javascript\nvar x = 1;"));
        Assert.Null(run.Failure);
        var html = Assert.IsType<ShownValue>(run.Notebook.Cells[0].Outputs[^1]);
        Assert.Equal(KeyValuePair.Create("text/html", "<b>bold</b>"), html.Forms[0]);
        var script = Assert.IsType<ShownValue>(run.Notebook.Cells[1].Outputs[^1]);
        Assert.Contains("var x = 1;", script.Forms[0].Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#!html\n<!-- A place -->\n<p>", "A place")]
    [InlineData("#!javascript\n// Work out\nx()", "Work out")]
    [InlineData("#!html\n<p>", "<p>")]
    [InlineData("#!html", "(empty)")]
    [InlineData("1 + 1; // the sum", "1 + 1; // the sum")]
    public void A_cell_is_called_by_its_first_comment_or_line_and_not_by_its_language(string source, string name) =>
        Assert.Equal(name, NotebookDocument.Parse(Of(Code(source)), "x").Cells[0].Name);

    [Theory]
    [InlineData("polyglot_notebook", "kernelName", "html")]
    [InlineData("dotnet_interactive", "language", "html")]
    [InlineData("dotnet_interactive", "language", "C#")]
    public async Task The_cell_itself_may_say_its_language(string editor, string key, string language)
    {
        var cell = Code(language == "html" ? "<i>x</i>" : "Console.Write(1);");
        cell["metadata"]![editor] = new System.Text.Json.Nodes.JsonObject { [key] = language };
        var run = await Run(cell);
        Assert.Null(run.Failure);
        Assert.Single(run.Notebook.Cells[0].Outputs);
    }

    [Fact]
    public async Task Progress_names_each_code_cell_before_it_runs()
    {
        var seen = new List<CellProgress>();
        var path = _folder.Write("n.ipynb", Of(Words("x"), Code("// First\n1"), Code("2")));
        await NotebookRunner.RunAsync(path, NoSettings, seen.Add);
        Assert.Equal([new CellProgress(1, 2, "First"), new CellProgress(2, 2, "2")], seen);
    }

    [Fact]
    public async Task Cancelling_stops_before_the_next_cell()
    {
        using var stop = new CancellationTokenSource();
        var path = _folder.Write("n.ipynb", Of(Code("1"), Code("System.IO.File.WriteAllText(\"ran\", \"\");")));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            NotebookRunner.RunAsync(path, NoSettings, cell => { if (cell.Number == 2) { stop.Cancel(); } }, stop.Token));
        Assert.False(File.Exists(_folder.File("ran")));
    }

    [Fact]
    public async Task Cancelling_ends_the_wait_for_a_cell_that_never_ends()
    {
        using var stop = new CancellationTokenSource();
        var path = _folder.Write("n.ipynb", Of(Code("System.IO.File.WriteAllText(\"begun\", \"\"); var turns = 0L; while (!System.IO.File.Exists(\"enough\")) { turns++; }")));
        var run = Task.Run(() => NotebookRunner.RunAsync(path, NoSettings, cancellation: stop.Token));
        SpinWait.SpinUntil(() => File.Exists(_folder.File("begun")));
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => run);
        _folder.Write("enough", "");
    }

    [Fact]
    public async Task Two_runs_of_one_notebook_give_the_same_file()
    {
        var cells = () => Of(
            Code("#r \"nuget: BakeInsights.Notebooks, 0.1.0\"\nusing Chart = Plotly.NET.CSharp.Chart;"),
            Code("Chart.Point<int, int, string>(new[] { 1, 2 }, new[] { 3, 4 })"),
            Code("new[] { new { a = 1.5, b = \"x\" } }"));
        var path = _folder.Write("n.ipynb", cells());
        var first = await NotebookRunner.RunAsync(path, NoSettings);
        var second = await NotebookRunner.RunAsync(path, NoSettings);
        Assert.Null(first.Failure);
        Assert.Equal(first.Notebook.ToJson(), second.Notebook.ToJson());
    }

    [Fact]
    public async Task A_missing_notebook_is_said_in_one_line()
    {
        var error = await Assert.ThrowsAsync<NotebookException>(() => NotebookRunner.RunAsync(_folder.File("no.ipynb"), NoSettings));
        Assert.Contains("There is no notebook", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    private Task<NotebookRun> Run(params System.Text.Json.Nodes.JsonObject[] cells) =>
        NotebookRunner.RunAsync(_folder.Write("n.ipynb", Of(cells)), NoSettings);

    private static string Printed(NotebookRun run, int cell) =>
        string.Concat(run.Notebook.Cells[cell].Outputs.OfType<PrintedText>().Select(text => text.Text));
}
