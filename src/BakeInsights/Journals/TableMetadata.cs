using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace BakeInsights;

/// <summary>
/// Describes a file of bakes in canonical columns so that other programs can check one: W3C, "Metadata Vocabulary for
/// Tabular Data", Recommendation of 17 December 2015.
/// </summary>
public static class TableMetadata
{
    /// <summary>The name under which the Recommendation (section 5 of its model) looks for the page beside a table.</summary>
    public const string FileName = "csv-metadata.json";

    private const string Context = "http://www.w3.org/ns/csvw";

    // As the canonical form writes it. The vocabulary has a type for times, but only with one length for all.
    private const string TimeOfDay = "^([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?$";

    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The description of a file, as JSON.</summary>
    /// <param name="file">The file, by its path from the description.</param>
    /// <param name="columns">Its columns, in the order of its header.</param>
    public static string Of(string file, IReadOnlyList<JournalColumn> columns)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(file);
        ArgumentNullException.ThrowIfNull(columns);
        var document = new JsonObject
        {
            ["@context"] = new JsonArray(Context, new JsonObject { ["@language"] = "en" }),
            ["url"] = file,
            ["dc:title"] = "Bakes: one row for each dough, from mixing to cooling",
            ["tableSchema"] = new JsonObject { ["columns"] = new JsonArray([.. columns.Select(Column)]) },
        };
        return document.ToJsonString(Options) + "\n";
    }

    private static JsonNode Column(JournalColumn column) => new JsonObject
    {
        ["name"] = column.Name,
        ["titles"] = column.Name,
        ["dc:description"] = column.Meaning,
        ["datatype"] = Datatype(column),
        ["required"] = BakeColumns.Layout.Required.Contains(column),
    };

    private static JsonNode Datatype(JournalColumn column) => column switch
    {
        QuantityColumn { Dimension: Dimension.TimeOfDay } => Pattern(TimeOfDay),
        QuantityColumn quantity => new JsonObject { ["base"] = "number", ["minimum"] = quantity.Low, ["maximum"] = quantity.High },
        ChoiceColumn choice => Pattern($"^({string.Join('|', choice.Values.Select(Regex.Escape))})$"),
        DayColumn => new JsonObject { ["base"] = "date", ["format"] = "yyyy-MM-dd" },
        _ => "string",
    };

    private static JsonObject Pattern(string expression) => new() { ["base"] = "string", ["format"] = expression };
}
