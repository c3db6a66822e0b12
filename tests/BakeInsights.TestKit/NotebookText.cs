using System.Text.Json.Nodes;

namespace BakeInsights.TestKit;

/// <summary>The text of notebook files, made up for a test.</summary>
public static class NotebookText
{
    /// <summary>A Markdown cell.</summary>
    public static JsonObject Words(string text) => Cell("markdown", text);

    /// <summary>A code cell that has not run.</summary>
    public static JsonObject Code(string text, params string[] tags)
    {
        var cell = Cell("code", text);
        cell["outputs"] = new JsonArray();
        cell["execution_count"] = null;
        if (tags.Length > 0)
        {
            cell["metadata"]!["tags"] = new JsonArray([.. tags.Select(tag => JsonValue.Create(tag))]);
        }

        return cell;
    }

    /// <summary>A notebook of these cells, in the file format 4.5.</summary>
    public static string Of(params JsonObject[] cells)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            cells[i]["id"] = "c" + (char)('a' + i);
        }

        return new JsonObject
        {
            ["cells"] = new JsonArray([.. cells]),
            ["metadata"] = new JsonObject { ["kernelspec"] = new JsonObject { ["name"] = ".net-csharp", ["display_name"] = ".NET (C#)" } },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        }.ToJsonString();
    }

    private static JsonObject Cell(string kind, string text) =>
        new() { ["cell_type"] = kind, ["metadata"] = new JsonObject(), ["source"] = text };
}
