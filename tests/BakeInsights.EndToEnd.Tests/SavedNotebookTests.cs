using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

public class SavedNotebookTests
{
    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public void Notebooks_are_saved_without_outputs(string notebook)
    {
        var cells = JsonNode.Parse(File.ReadAllText(Repository.Path(notebook)))!["cells"]!.AsArray();
        var code = cells.Where(cell => (string?)cell!["cell_type"] == "code").ToArray();
        Assert.NotEmpty(code);
        Assert.All(code, cell =>
        {
            Assert.Empty(cell!["outputs"]!.AsArray());
            Assert.Null(cell["execution_count"]);
        });
    }
}
