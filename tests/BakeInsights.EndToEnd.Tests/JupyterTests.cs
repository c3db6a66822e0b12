using System.Text.Json.Nodes;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

[Collection(InJupyter.Name)]
public class JupyterTests(JupyterFixture jupyter, BrowserFixture browser) : IClassFixture<JupyterFixture>
{
    private const string PackageDirective = "#r \"nuget:";

    [Theory]
    [MemberData(nameof(Notebooks.All), MemberType = typeof(Notebooks))]
    public async Task Jupyter_without_a_network_shows_what_the_command_shows(string notebook)
    {
        var executed = await BakeCommand.RunNotebookAsync(notebook, jupyter.Folder, ".ipynb");
        await JupyterFixture.AssertValidAsync(executed);
        var ours = Outputs(JsonNode.Parse(await File.ReadAllTextAsync(executed))!);
        var theirs = Outputs(await jupyter.ExecuteAsync(notebook));
        Assert.NotEmpty(ours);
        Assert.Equal(theirs, ours);
    }

    [Fact]
    public async Task An_executed_notebook_draws_its_charts_beside_a_module_loader_and_without_a_network()
    {
        // The basic template is the cells alone. Around them stands what classic Jupyter has: a loader that takes every
        // library that offers itself.
        var executed = await BakeCommand.RunNotebookAsync(Notebooks.Small, jupyter.Folder, ".ipynb");
        var cells = await jupyter.ConvertAsync(executed, "cells.html", "--to", "html", "--template", "basic");
        var path = browser.Folder.Write(
            "loader.html",
            $"<!DOCTYPE html><meta charset=\"utf-8\"><script>window.define = function () {{}}; window.define.amd = {{}};</script>{cells}");
        await using var opened = await browser.OpenAsync(path);
        Assert.Equal(2, await opened.AssertChartsDrawn());
        opened.AssertQuietAndAlone();
    }

    [Fact]
    public async Task What_jupyter_executed_runs_its_html_and_javascript_cells_and_its_sliders()
    {
        foreach (var notebook in new[] { Notebooks.Small, Notebooks.Month })
        {
            var name = Path.GetFileNameWithoutExtension(notebook);
            await jupyter.ExecuteAsync(notebook);
            var cells = await jupyter.ConvertAsync(jupyter.Folder.File("executed.ipynb"), $"{name}-cells.html", "--to", "html", "--template", "basic");
            var path = browser.Folder.Write($"{name}-jupyter.html", $"<!DOCTYPE html><meta charset=\"utf-8\">{cells}");
            await using var opened = await browser.OpenAsync(path);

            // The host puts a script of its own into the first cell, which asks the network in vain: no matter here.
            await opened.AssertChartsDrawn();
            if (notebook == Notebooks.Small)
            {
                await opened.AssertScriptHasWorked();
            }
            else
            {
                await SliderTests.AssertSameAsTheLibraryAsync(opened.Page);
            }
        }
    }

    // One line an output. The setup cell is left out: Jupyter reports there on its restore.
    private static List<string> Outputs(JsonNode notebook) =>
    [
        .. from cell in notebook["cells"]!.AsArray()
           where (string?)cell["cell_type"] == "code" && !Text(cell["source"]).Contains(PackageDirective, StringComparison.Ordinal)
           from output in cell["outputs"]!.AsArray()
           select $"{cell["id"]}: {Describe(output!)}",
    ];

    private static string Describe(JsonNode output) => (string?)output["output_type"] switch
    {
        "stream" => $"{output["name"]} {Text(output["text"])}",
        "error" => $"error {output["evalue"]}",
        _ => string.Join(' ', output["data"]!.AsObject().OrderBy(form => form.Key, StringComparer.Ordinal)
            .Select(form => $"{form.Key} {Text(form.Value)}")),
    };

    private static string Text(JsonNode? text) =>
        (text is JsonArray lines ? string.Concat(lines.Select(line => (string?)line)) : (string?)text ?? "").ReplaceLineEndings("\n");
}
