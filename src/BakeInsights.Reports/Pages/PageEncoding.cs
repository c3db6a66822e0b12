using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace BakeInsights.Reports;

/// <summary>Text as HTML that shows it, wherever it stands: between tags or in a quoted attribute.</summary>
internal static class PageEncoding
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>The text encoded; line breaks stay line breaks, so that the page's source can be read.</summary>
    public static string Encode(string text) =>
        string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(Encoder.Encode));
}
