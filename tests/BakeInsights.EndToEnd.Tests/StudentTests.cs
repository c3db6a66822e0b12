using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Xunit;
using static BakeInsights.TestKit.NotebookText;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>A class gets the teacher's notebook less the solutions, and all that is left works as it did.</summary>
public sealed class StudentTests : IDisposable
{
    private const string Answer = "Two degrees are a fifth of the time.";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(".html")]
    [InlineData(".ipynb")]
    public async Task Neither_words_nor_code_nor_outputs_of_a_solution_are_handed_out(string extension)
    {
        var words = Words("## Solution\n\n" + Answer);
        words["metadata"]!["tags"] = new JsonArray("solution");
        _folder.Write("class.ipynb", Of(
            Words("# Task\n\nHow much sooner?"), Code("var minutes = 90;"), words, Code("// Worked out\nConsole.Write($\"{0.8 * minutes:F1} min\");", "solution"),
            Code("Console.Write($\"from {minutes}\");")));
        var (teacher, student) = (_folder.File("teacher" + extension), _folder.File("student" + extension));

        Assert.Equal(0, (await Run("class.ipynb", "--to", teacher)).ExitCode);
        Assert.Equal(0, (await Run("class.ipynb", "--student", "--to", student)).ExitCode);

        foreach (var secret in new[] { Answer, "Worked out", "72.0 min", "Solution" })
        {
            Assert.Contains(secret, await File.ReadAllTextAsync(teacher), StringComparison.Ordinal);
            Assert.DoesNotContain(secret, await File.ReadAllTextAsync(student), StringComparison.Ordinal);
        }

        Assert.Contains("from 90", await File.ReadAllTextAsync(student), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cell_that_needs_a_solution_fails_in_the_class_and_is_named()
    {
        _folder.Write("class.ipynb", Of(Code("var minutes = 90;", "solution"), Code("// Next step\nminutes + 1")));
        var run = await Run("class.ipynb", "--student");
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("Cell 1 (Next step) failed:", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task Teacher_and_class_see_the_same_in_every_cell_that_both_have(string notebook)
    {
        var (teacher, student) = (_folder.File("teacher.ipynb"), _folder.File("student.ipynb"));
        foreach (var (target, options) in new[] { (teacher, Array.Empty<string>()), (student, ["--student"]) })
        {
            var run = await Run([Repository.Path(notebook), "--to", target, .. options]);
            Assert.True(run.ExitCode == 0, run.Errors);
            await JupyterFixture.AssertValidAsync(target);
        }

        var (all, some) = (await CellsOf(teacher), await CellsOf(student));
        Assert.Equal(all.Where(cell => !cell.IsSolution).Select(cell => cell.Id), some.Select(cell => cell.Id));
        Assert.All(some, cell => Assert.Equal(all.Single(other => other.Id == cell.Id).Outputs, cell.Outputs));
    }

    private Task<Started> Run(params string[] arguments) => BakeCommand.RunAsync(_folder.Path, ["run", .. arguments]);

    // Numbers of execution differ where cells before were left out.
    private static async Task<IReadOnlyList<(string Id, bool IsSolution, string Outputs)>> CellsOf(string path) =>
    [
        .. from cell in JsonNode.Parse(await File.ReadAllTextAsync(path))!["cells"]!.AsArray()
           let tags = cell["metadata"]?["tags"] as JsonArray ?? []
           let outputs = string.Join('\n', (cell["outputs"] as JsonArray ?? []).Select(output => (output!["data"] ?? output["text"] ?? output)!.ToJsonString()))
           select ((string)cell["id"]!, tags.Any(tag => (string?)tag == "solution"), outputs),
    ];
}
