using System.Text.Json;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Every link of every page leads to a file of the project, and to a heading that it has.</summary>
public class LinkTests
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables().UseAutoIdentifiers(AutoIdentifierOptions.GitHub).Build();

    public static TheoryData<string> Pages => [.. Files("*.md"), .. Files("*.ipynb")];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Links_of_a_page_lead_somewhere(string page)
    {
        var broken = LinksOf(page).Where(link => !Leads(page, link)).ToList();
        Assert.True(broken.Count == 0, $"{page} links to what is not there: {string.Join(", ", broken)}.");
    }

    [Fact]
    public void Every_page_of_the_docs_can_be_reached_from_the_start_page()
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Queue<string>(["docs/index.md"]);
        while (waiting.TryDequeue(out var page))
        {
            if (reached.Add(page) && page.EndsWith(".md", StringComparison.Ordinal))
            {
                foreach (var link in LinksOf(page).Where(link => IsInside(link) && !link.StartsWith('#')))
                {
                    waiting.Enqueue(Target(page, link.Split('#')[0]));
                }
            }
        }

        Assert.Empty(Files("*.md").Where(page => page.StartsWith("docs/", StringComparison.Ordinal)).Except(reached));
    }

    // Folders that a build or a restore fills are not ours.
    private static IEnumerable<string> Files(string pattern) =>
        Directory.EnumerateFiles(Repository.Root, pattern, SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj" or "TestResults" or "node_modules" or ".git"))
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> LinksOf(string page) =>
        Markdown.Parse(MarkdownOf(page), Pipeline).Descendants<LinkInline>().Select(link => link.Url ?? "").Where(url => url.Length > 0);

    private static string MarkdownOf(string page)
    {
        var text = File.ReadAllText(Repository.Path(page));
        if (!page.EndsWith(".ipynb", StringComparison.Ordinal))
        {
            return text;
        }

        using var notebook = JsonDocument.Parse(text);
        return string.Join(
            "\n\n",
            notebook.RootElement.GetProperty("cells").EnumerateArray()
                .Where(cell => cell.GetProperty("cell_type").GetString() == "markdown")
                .Select(cell => cell.GetProperty("source"))
                .Select(source => source.ValueKind == JsonValueKind.Array
                    ? string.Concat(source.EnumerateArray().Select(line => line.GetString()))
                    : source.GetString()));
    }

    private static bool IsInside(string link) => !Regex.IsMatch(link, "^[a-z]+:", RegexOptions.CultureInvariant);

    private static bool Leads(string page, string link)
    {
        if (!IsInside(link))
        {
            return Uri.TryCreate(link, UriKind.Absolute, out var address) && address.Scheme == Uri.UriSchemeHttps;
        }

        var parts = link.Split('#', 2);
        var target = parts[0].Length == 0 ? page : Target(page, parts[0]);
        var path = Repository.Path(target);
        return (File.Exists(path) || Directory.Exists(path)) && (parts.Length == 1 || Headings(target).Contains(parts[1]));
    }

    private static string Target(string page, string link) =>
        Path.GetRelativePath(Repository.Root, Path.Combine(Path.GetDirectoryName(Repository.Path(page))!, Uri.UnescapeDataString(link))).Replace('\\', '/');

    private static IEnumerable<string?> Headings(string page) =>
        Markdown.Parse(MarkdownOf(page), Pipeline).Descendants<HeadingBlock>().Select(heading => heading.TryGetAttributes()?.Id);
}
