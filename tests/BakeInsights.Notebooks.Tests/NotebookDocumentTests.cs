using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Notebooks.Tests;

public class NotebookDocumentTests
{
    [Fact]
    public void What_has_no_name_here_is_written_as_it_was_read()
    {
        var cell = NotebookText.Code("1\n2");
        cell["metadata"]!["editor"] = "kept";
        var written = JsonNode.Parse(NotebookDocument.Parse(NotebookText.Of(cell), "x").ToJson())!;
        Assert.Equal("kept", (string?)written["cells"]![0]!["metadata"]!["editor"]);
        Assert.Equal(".net-csharp", (string?)written["metadata"]!["kernelspec"]!["name"]);
        Assert.Equal(["1\n", "2"], written["cells"]![0]!["source"]!.AsArray().Select(line => (string?)line));
    }

    [Fact]
    public void A_notebook_from_before_cell_ids_gets_them()
    {
        var old = """{"cells":[{"cell_type":"code","metadata":{},"source":["1"],"outputs":[],"execution_count":null}],"metadata":{},"nbformat":4,"nbformat_minor":2}""";
        var written = JsonNode.Parse(NotebookDocument.Parse(old, "x").ToJson())!;
        Assert.Equal("cell-1", (string?)written["cells"]![0]!["id"]);
        Assert.Equal(5, (int?)written["nbformat_minor"]);
    }

    [Fact]
    public void Outputs_survive_writing_and_reading()
    {
        var read = NotebookDocument.Parse(NotebookText.Of(NotebookText.Code("1")), "x");
        NotebookOutput[] outputs =
        [
            new PrintedText("stderr", "a\nb\n"),
            new ShownValue([KeyValuePair.Create("text/html", "<b>ü</b>\n"), KeyValuePair.Create("text/plain", "")], IsResult: true),
            new CellError("Kind", "two\nlines"),
        ];
        var full = read.WithCells([read.Cells[0] with { Outputs = [.. outputs], ExecutionCount = 1 }]);
        var again = NotebookDocument.Parse(full.ToJson(), "x");
        Assert.Equal(full.ToJson(), again.ToJson());
        Assert.Equal(outputs[0], again.Cells[0].Outputs[0]);
        Assert.Equal(outputs[2], again.Cells[0].Outputs[2]);
        Assert.Equal(((ShownValue)outputs[1]).Forms.ToArray(), ((ShownValue)again.Cells[0].Outputs[1]).Forms.ToArray());
    }

    [Theory]
    [InlineData("")]
    [InlineData("not JSON")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{"nbformat":3,"worksheets":[]}""")]
    [InlineData("""{"nbformat":4,"cells":[1]}""")]
    [InlineData("""{"nbformat":4,"cells":[null]}""")]
    [InlineData("""{"nbformat":"4","cells":[]}""")]
    public void What_is_no_notebook_is_refused_by_name(string text)
    {
        var error = Assert.Throws<NotebookException>(() => NotebookDocument.Parse(text, "bread.ipynb"));
        Assert.StartsWith("bread.ipynb is no notebook", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }
}
