using System.Text;
using System.Text.RegularExpressions;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>A page's table of contents: takes the headings in their order, and gives each the id that its entry leads to.</summary>
internal sealed partial class PageContents
{
    // A single heading is seen without a list of it.
    private const int FewestEntries = 2;

    private readonly List<(string Id, string Words)> _entries = [];

    // Ids that the page itself uses.
    private readonly HashSet<string> _taken = [NotebookPage.FailureId];

    /// <summary>Takes a heading and gives its id, made of its words and unique on the page.</summary>
    public string Add(string words)
    {
        var stem = NoWord().Replace(words.ToLowerInvariant(), "-").Trim('-');
        stem = stem.Length > 0 ? stem : "section";
        var id = stem;
        for (var number = 2; !_taken.Add(id); number++)
        {
            id = FormattableString.Invariant($"{stem}-{number}");
        }

        _entries.Add((id, words));
        return id;
    }

    /// <summary>The list as HTML, empty where the page is too short for one.</summary>
    public string ToHtml()
    {
        if (_entries.Count < FewestEntries)
        {
            return "";
        }

        var html = new StringBuilder("<nav class=\"contents\" aria-label=\"Contents\">\n<ol>\n");
        foreach (var (id, words) in _entries)
        {
            html.Append($"<li><a href=\"#{Encode(id)}\">{Encode(words)}</a></li>\n");
        }

        return html.Append("</ol>\n</nav>\n").ToString();
    }

    [GeneratedRegex(@"[^\p{L}\p{Nd}]+")]
    private static partial Regex NoWord();
}
