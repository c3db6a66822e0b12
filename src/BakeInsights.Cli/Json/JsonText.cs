using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace BakeInsights.Cli;

/// <summary>How documents for other programs are written.</summary>
internal static class JsonText
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower) },
        WriteIndented = true,
        NewLine = "\n",

        // The document goes to a program, not into a page: "°C" may stay readable.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write<TDocument>(TDocument document) => JsonSerializer.Serialize(document, Options);
}
