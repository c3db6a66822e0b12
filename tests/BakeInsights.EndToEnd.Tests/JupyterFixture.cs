using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>A real Jupyter, prepared by the same script that a reader is told to run.</summary>
public sealed class JupyterFixture : IAsyncLifetime
{
    // Debian's own: the first python on the path may be another one, without Jupyter.
    private const string Jupyter = "/usr/bin/jupyter";
    private const string Nbconvert = "/usr/bin/jupyter-nbconvert";
    private const string Python = "/usr/bin/python3";

    // A port that nobody listens on: whoever wants the network gets nothing.
    private static readonly Dictionary<string, string> Offline = new()
    {
        ["HTTP_PROXY"] = "http://127.0.0.1:9",
        ["HTTPS_PROXY"] = "http://127.0.0.1:9",
        ["NO_PROXY"] = "127.0.0.1,localhost",
        ["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1",
    };

    /// <summary>Where converted notebooks are written.</summary>
    public TemporaryFolder Folder { get; } = new();

    /// <summary>Runs nbconvert without a network and gives the text of the file that it wrote.</summary>
    public async Task<string> ConvertAsync(string notebook, string written, params string[] options)
    {
        string[] arguments = [notebook, "--output-dir", Folder.Path, "--output", written, .. options];
        var run = await Started.RunAsync(Nbconvert, arguments, Path.GetDirectoryName(notebook)!, Offline);
        Assert.True(run.ExitCode == 0, run.Errors);
        return await File.ReadAllTextAsync(Folder.File(written));
    }

    /// <summary>Executes a notebook in Jupyter, without a network.</summary>
    public async Task<JsonNode> ExecuteAsync(string notebook) => JsonNode.Parse(await ConvertAsync(
        Repository.Path(notebook), "executed.ipynb", "--to", "notebook", "--execute", "--ExecutePreprocessor.timeout=300"))!;

    /// <summary>Fails unless the file is valid by the format's own schema.</summary>
    public static async Task AssertValidAsync(string path)
    {
        const string Check = "import json, sys, nbformat; nbformat.validate(json.load(open(sys.argv[1], encoding='utf-8')))";
        var run = await Started.RunAsync(Python, ["-c", Check, path], Path.GetDirectoryName(path)!);
        Assert.True(run.ExitCode == 0, run.Errors);
    }

    /// <inheritdoc/>
    public async Task InitializeAsync()
    {
        var prepared = await Started.RunAsync(
            "bash",
            ["notebooks/prepare-jupyter.sh", BakeCommand.Configuration],
            Repository.Root,
            new Dictionary<string, string> { ["JUPYTER"] = Jupyter });
        Assert.True(prepared.ExitCode == 0, prepared.Output + prepared.Errors);
    }

    /// <inheritdoc/>
    public Task DisposeAsync()
    {
        Folder.Dispose();
        return Task.CompletedTask;
    }
}
