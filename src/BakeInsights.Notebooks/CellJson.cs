using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace BakeInsights.Notebooks;

/// <summary>One cell to and from the notebook file format.</summary>
internal static class CellJson
{
    /// <summary>How notebooks are written: indented by one space, as Jupyter does, and letters left as letters.</summary>
    public static JsonSerializerOptions Options { get; } = new()
    {
        WriteIndented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    // Before 4.5 cells had no ids; their place serves as one.
    public static string IdOf(JsonObject cell, int index) =>
        (string?)cell["id"] ?? string.Create(CultureInfo.InvariantCulture, $"cell-{index + 1}");

    public static NotebookCell Read(JsonObject cell, int index)
    {
        var metadata = cell["metadata"] as JsonObject;
        return new NotebookCell
        {
            Id = IdOf(cell, index),
            IsCode = (string?)cell["cell_type"] == "code",
            Source = JoinLines(cell["source"]).ReplaceLineEndings("\n"),
            KernelName = (string?)metadata?["polyglot_notebook"]?["kernelName"]
                ?? (string?)metadata?["dotnet_interactive"]?["language"],
            Tags = metadata?["tags"] is JsonArray tags ? [.. tags.Select(tag => (string)tag!)] : [],
            Outputs = cell["outputs"] is JsonArray outputs ? [.. outputs.Select(o => ReadOutput(o!.AsObject()))] : [],
            ExecutionCount = (int?)cell["execution_count"],
        };
    }

    public static JsonObject Write(NotebookCell cell, JsonObject? original)
    {
        var written = original?.DeepClone().AsObject() ?? new JsonObject();
        written["id"] = cell.Id;
        written["cell_type"] ??= cell.IsCode ? "code" : "markdown";
        written["metadata"] ??= new JsonObject();
        written["source"] = SplitLines(cell.Source);
        if (cell.IsCode)
        {
            written["execution_count"] = cell.ExecutionCount;
            written["outputs"] = new JsonArray([.. cell.Outputs.Select(o => WriteOutput(o, cell.ExecutionCount))]);
        }

        return written;
    }

    private static NotebookOutput ReadOutput(JsonObject output) => (string?)output["output_type"] switch
    {
        "stream" => new PrintedText((string?)output["name"] ?? "stdout", JoinLines(output["text"])),
        "error" => new CellError((string?)output["ename"] ?? "Error", (string?)output["evalue"] ?? ""),
        var kind => new ShownValue(
            output["data"] is JsonObject data
                ? [.. data.Select(form => KeyValuePair.Create(form.Key, JoinLines(form.Value)))]
                : [],
            kind == "execute_result"),
    };

    private static JsonObject WriteOutput(NotebookOutput output, int? executionCount)
    {
        switch (output)
        {
            case PrintedText text:
                return new JsonObject
                {
                    ["name"] = text.Name,
                    ["output_type"] = "stream",
                    ["text"] = SplitLines(text.Text),
                };
            case CellError error:
                return new JsonObject
                {
                    ["ename"] = error.Kind,
                    ["evalue"] = error.Message,
                    ["output_type"] = "error",
                    ["traceback"] = new JsonArray([.. error.Message.Split('\n').Select(line => JsonValue.Create(line))]),
                };
            case ShownValue value:
                var data = new JsonObject(value.Forms.Select(form => KeyValuePair.Create(form.Key, (JsonNode?)SplitLines(form.Value))));
                var written = new JsonObject { ["data"] = data, ["metadata"] = new JsonObject() };
                if (value.IsResult)
                {
                    written["execution_count"] = executionCount;
                }

                written["output_type"] = value.IsResult ? "execute_result" : "display_data";
                return written;
            default:
                throw new ArgumentException($"A notebook can't hold a {output.GetType().Name}.", nameof(output));
        }
    }

    private static string JoinLines(JsonNode? text) => text switch
    {
        JsonArray lines => string.Concat(lines.Select(line => (string?)line)),
        JsonValue value when value.GetValueKind() == JsonValueKind.String => (string)value!,
        null => "",
        _ => text.ToJsonString(),
    };

    private static JsonArray SplitLines(string text)
    {
        var lines = text.Split('\n');
        var ended = lines.Select((line, i) => i < lines.Length - 1 ? line + "\n" : line).Where(line => line.Length > 0);
        return new JsonArray([.. ended.Select(line => JsonValue.Create(line))]);
    }
}
