using System.Text.Encodings.Web;
using System.Text.Json;

namespace BakeInsights.Reports;

/// <summary>
/// A value handed over to the scripts of a notebook: shown by a C# cell, it stands in the document as JSON, and a
/// JavaScript cell reads it there. Hosts of notebooks have ways of their own to share values, and none of them works in
/// Jupyter, on a page and in a test alike.
/// </summary>
/// <remarks>
/// In JavaScript: <c>JSON.parse(document.querySelector('[data-bake="name"]').textContent)</c>.
/// </remarks>
public sealed class ScriptData
{
    private readonly string _name;
    private readonly string _json;

    private ScriptData(string name, string json)
    {
        _name = name;
        _json = json;
    }

    /// <summary>A value under a name.</summary>
    /// <param name="name">What scripts ask for.</param>
    /// <param name="value">
    /// Anything that JSON can say: numbers, texts, lists, records; names of properties begin with a small letter there. It
    /// has no NaN: hand over null where a value is missing.
    /// </param>
    /// <exception cref="ArgumentException">The value holds what JSON can't say.</exception>
    public static ScriptData Of(string name, object? value)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        try
        {
            return new ScriptData(name, JsonSerializer.Serialize(value, JsonSerializerOptions.Web));
        }
        catch (Exception error) when (error is JsonException or NotSupportedException or ArgumentException)
        {
            throw new ArgumentException($"{name} can't be handed over as JSON: {error.Message}", nameof(value), error);
        }
    }

    /// <summary>The value as an element that shows nothing and runs nothing.</summary>
    /// <remarks>The usual JSON encoder escapes what could end the element.</remarks>
    public string ToHtml() => $"<script type=\"application/json\" data-bake=\"{HtmlEncoder.Default.Encode(_name)}\">{_json}</script>";

    /// <summary>That something is handed over.</summary>
    public string ToText() => $"Handed over to scripts: {_name}";
}
