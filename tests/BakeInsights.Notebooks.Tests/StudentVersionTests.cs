using BakeInsights.TestKit;
using Xunit;
using static BakeInsights.TestKit.NotebookText;

namespace BakeInsights.Notebooks.Tests;

public sealed class StudentVersionTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Code_and_words_tagged_solution_are_gone_and_nothing_else()
    {
        var answer = Words("The answer");
        answer["metadata"]!["tags"] = new System.Text.Json.Nodes.JsonArray("solution", "long");
        var teacher = NotebookDocument.Parse(Of(Words("# Task"), Code("1", "bake-settings"), answer, Code("2", "solution"), Code("3")), "x");
        var student = StudentVersion.Of(teacher);
        Assert.Equal(["# Task", "1", "3"], student.Cells.Select(cell => cell.Source));
        Assert.DoesNotContain("The answer", student.ToJson(), StringComparison.Ordinal);
        Assert.Equal(5, teacher.Cells.Length);
    }

    [Fact]
    public async Task The_class_gets_the_same_from_every_cell_that_it_has()
    {
        var (teacher, student) = await Both(
            Words("# Task"), Code("var minutes = 90;"), Code("var doubled = 2 * minutes; Console.Write(doubled);", "solution"), Code("minutes + 1"));
        Assert.Null(student.Failure);
        Assert.Equal(
            Shown(teacher).Where(cell => !cell.Tags.Contains(StudentVersion.SolutionTag)).Select(cell => cell.Text), Shown(student).Select(cell => cell.Text));
    }

    [Fact]
    public async Task A_cell_that_needs_what_a_solution_defines_fails_and_says_what_is_missing()
    {
        var (teacher, student) = await Both(Code("var minutes = 90;", "solution"), Code("// Next\nminutes + 1"));
        Assert.Null(teacher.Failure);
        Assert.Equal("Next", student.Failure!.Name);
        Assert.Contains("'minutes'", student.Failure.Message, StringComparison.Ordinal);
    }

    private async Task<(NotebookRun Teacher, NotebookRun Student)> Both(params System.Text.Json.Nodes.JsonObject[] cells)
    {
        var notebook = NotebookDocument.Parse(Of(cells), "x");
        return (await NotebookRunner.RunAsync(notebook, _folder.Path), await NotebookRunner.RunAsync(StudentVersion.Of(notebook), _folder.Path));
    }

    private static IEnumerable<(IEnumerable<string> Tags, string Text)> Shown(NotebookRun run) => run.Notebook.Cells.Select(cell =>
        ((IEnumerable<string>)cell.Tags, string.Join('\n', cell.Outputs.Select(output => output switch
        {
            ShownValue value => value.Forms[0].Value,
            PrintedText text => text.Text,
            _ => output.ToString(),
        }))));
}
