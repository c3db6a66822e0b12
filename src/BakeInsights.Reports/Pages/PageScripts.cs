using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace BakeInsights.Reports;

/// <summary>
/// Which scripts of a page may run: the toolkit's own, and those that stand word for word in the cell that shows them.
/// A script that came in with data is neither.
/// </summary>
/// <remarks>Named to the browser by their hashes: W3C, Content Security Policy Level 3, section 6.7.3.</remarks>
internal sealed partial class PageScripts
{
    private static readonly string[] Toolkit = [ChartHtml.DrawWaitingCharts, WhatIfHtml.Script];

    // Scripts of other types are data, which never runs.
    private static readonly string[] RunningTypes = ["", "text/javascript", "application/javascript", "module"];

    private readonly List<string> _allowed = [];

    /// <summary>Takes a script that the page itself brings.</summary>
    public void Add(string script)
    {
        if (!_allowed.Contains(script))
        {
            _allowed.Add(script);
        }
    }

    /// <summary>Takes the scripts of a cell's output as far as they may run.</summary>
    /// <param name="html">The output.</param>
    /// <param name="source">The cell's code.</param>
    public void Add(string html, string source)
    {
        foreach (var script in Script().Matches(html).Where(Runs).Select(found => found.Groups["text"].Value))
        {
            var words = script.Trim();
            if (Toolkit.Contains(script) || (words.Length > 0 && source.Contains(words, StringComparison.Ordinal)))
            {
                Add(script);
            }
        }
    }

    /// <summary>The page's policy: nothing is fetched, nothing sent, and no other script runs.</summary>
    public string Policy()
    {
        var scripts = _allowed.Count == 0 ? "'none'" : string.Join(' ', _allowed.Select(Hash));
        return $"default-src 'none'; script-src {scripts}; style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'";
    }

    // A browser sees every line ended by a line feed alone.
    private static string Hash(string script)
    {
        var seen = script.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        return $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(seen)))}'";
    }

    private static bool Runs(Match script) =>
        RunningTypes.Contains(Type().Match(script.Groups["attributes"].Value).Groups["type"].Value.ToLowerInvariant());

    [GeneratedRegex(@"<script\b(?<attributes>[^>]*)>(?<text>.*?)</script\s*>", RegexOptions.Singleline | RegexOptions.IgnoreCase)]
    private static partial Regex Script();

    [GeneratedRegex(@"\btype\s*=\s*[""']?(?<type>[^\s""'>]*)", RegexOptions.IgnoreCase)]
    private static partial Regex Type();
}
