using System.Text;
using System.Text.RegularExpressions;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>One output of a cell as HTML.</summary>
internal static partial class OutputHtml
{
    public static string Of(PageOutput shown) => shown switch
    {
        PageText text => Printed(text.Text),
        PageHtml html => html.Html,
        PageMarkdownOutput words => MarkdownHtml.Render(words.Text, keepTitle: false),
        PageImage image => $"<img alt=\"\" src=\"data:{Encode(image.MediaType)};base64,{Encode(image.Base64)}\">",
        _ => throw new ArgumentException($"A page can't show a {shown.GetType().Name}.", nameof(shown)),
    };

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
        html.Append($"<pre{(columns ? " class=\"columns\"" : "")}>{Encode(string.Join('\n', lines))}</pre>");

    [GeneratedRegex(@"\S( {2,}|\t)\S")]
    private static partial Regex Columns();
}
