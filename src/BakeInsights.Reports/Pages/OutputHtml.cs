using System.Text;
using System.Text.RegularExpressions;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>One output of a cell as HTML.</summary>
internal static partial class OutputHtml
{
    private const string ColumnsTag = "<pre class=\"columns\">";

    public static string Of(PageOutput shown) => shown switch
    {
        PageText text => Printed(text.Text),
        PageHtml html => html.Html,
        PageMarkdownOutput words => MarkdownHtml.Render(words.Text, keepTitle: false),
        PageImage image => $"<img alt=\"\" src=\"data:{Encode(image.MediaType)};base64,{Encode(image.Base64)}\">",
        _ => throw new ArgumentException($"A page can't show a {shown.GetType().Name}.", nameof(shown)),
    };

    /// <summary>Whether this may be wider than the page and has no box of its own: columns of text, tables of the host.</summary>
    public static bool IsWide(string html) =>
        html.Contains(ColumnsTag, StringComparison.Ordinal)
        || (html.Contains("<table", StringComparison.OrdinalIgnoreCase) && !html.Contains("class=\"bake-", StringComparison.Ordinal));

    // Text set in columns can't be read once its lines are broken, sentences can't if they are not; a cell may print
    // both. An empty line belongs to what stands before it.
    private static string Printed(string text)
    {
        var html = new StringBuilder();
        var block = new List<string>();
        bool? columns = null;
        foreach (var line in text.TrimEnd('\n').Split('\n'))
        {
            var inColumns = line.Length == 0 ? columns : Columns().IsMatch(line);
            if (columns is not null && inColumns != columns)
            {
                AppendBlock(html, block, columns.Value);
                block.Clear();
            }

            columns = inColumns;
            block.Add(line);
        }

        AppendBlock(html, block, columns ?? false);
        return html.ToString();
    }

    private static void AppendBlock(StringBuilder html, List<string> lines, bool columns) =>
        html.Append($"{(columns ? ColumnsTag : "<pre>")}{Encode(string.Join('\n', lines))}</pre>");

    [GeneratedRegex(@"\S( {2,}|\t)\S")]
    private static partial Regex Columns();
}
