using BakeInsights.Reports;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Notebooks.Tests;

public sealed class RunFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_ending_decides_between_page_and_notebook()
    {
        RunFile.Write(SomeRun(), _folder.File("a.html"), "Title");
        RunFile.Write(SomeRun(), _folder.File("a.ipynb"), "Title");
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(_folder.File("a.html")), StringComparison.Ordinal);
        Assert.Single(NotebookDocument.Read(_folder.File("a.ipynb")).Cells);
        Assert.Throws<ArgumentException>(() => RunFile.Write(SomeRun(), _folder.File("a.csv"), "Title"));
    }

    [Fact]
    public void An_error_while_writing_leaves_the_older_file_and_nothing_else()
    {
        var path = _folder.Write("page.html", "older");
        Assert.Throws<InvalidOperationException>(() => WholeFile.Write(path, writer =>
        {
            writer.Write("half");
            throw new InvalidOperationException();
        }));
        Assert.Equal("older", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFiles(_folder.Path));
    }

    [Fact]
    public void A_failed_cell_is_marked_in_place_and_later_ones_as_not_run()
    {
        var notebook = NotebookDocument.Parse(
            NotebookText.Of(NotebookText.Code("// Fit\n1"), NotebookText.Code("2")), "x");
        var failed = notebook.Cells[0] with { Outputs = [new CellError("E", "too <few>")], ExecutionCount = 1 };
        var page = ExecutedPage.From(
            new NotebookRun(notebook.WithCells([failed, notebook.Cells[1]]), new CellFailure(1, "Fit", "too <few>")), "x");
        Assert.Equal("too <few>", ((PageCode)page.Cells[0]).Error);
        Assert.False(((PageCode)page.Cells[1]).HasRun);
    }

    private static NotebookRun SomeRun() =>
        new(NotebookDocument.Parse(NotebookText.Of(NotebookText.Words("x")), "x"), null);
}
