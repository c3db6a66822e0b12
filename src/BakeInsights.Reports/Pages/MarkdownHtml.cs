using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace BakeInsights.Reports;

/// <summary>Markdown to HTML under the rules of a page: no raw HTML, nothing loaded, one first-level heading.</summary>
internal static class MarkdownHtml
{
    private static readonly MarkdownPipeline Pipeline =
        new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    private static readonly string[] LinkSchemes = ["http", "https", "mailto"];

    /// <summary>The words of the first first-level heading, null if there is none.</summary>
    public static string? FirstTitle(string markdown)
    {
        var heading = Markdown.Parse(markdown, Pipeline).OfType<HeadingBlock>().FirstOrDefault(h => h.Level == 1);
        return heading?.Inline is { } words ? PlainText(words) : null;
    }

    /// <summary>The Markdown as HTML.</summary>
    /// <param name="markdown">The text.</param>
    /// <param name="keepTitle">
    /// Whether the first first-level heading stays one. All others become second-level ones: a page has one title.
    /// </param>
    /// <param name="contents">Takes the second-level headings and gives them their ids; null where they get none.</param>
    public static string Render(string markdown, bool keepTitle, PageContents? contents = null)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        var titles = document.Descendants<HeadingBlock>().Where(h => h.Level == 1).Skip(keepTitle ? 1 : 0);
        foreach (var heading in titles.ToArray())
        {
            heading.Level = 2;
        }

        foreach (var heading in document.Descendants<HeadingBlock>().Where(h => h.Level == 2 && contents is not null))
        {
            heading.GetAttributes().Id = contents!.Add(heading.Inline is { } words ? PlainText(words) : "");
        }

        foreach (var link in document.Descendants<LinkInline>().ToArray())
        {
            // A picture from elsewhere would be a request; a link to it is the reader's choice.
            link.IsImage &= link.Url?.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase) == true;
            if (!link.IsImage && !IsHarmless(link.Url))
            {
                link.Url = "#";
            }
        }

        foreach (var link in document.Descendants<AutolinkInline>().Where(a => !a.IsEmail && !IsHarmless(a.Url)).ToArray())
        {
            link.ReplaceBy(new LiteralInline(link.Url));
        }

        using var writer = new StringWriter();
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.ReplaceOrAdd<HtmlTableRenderer>(new ScrollingTable());
        renderer.Render(document);
        return writer.ToString().ReplaceLineEndings("\n");
    }

    private static bool IsHarmless(string? url) =>
        url is not null
        && (!Uri.TryCreate(url, UriKind.Absolute, out var address) || LinkSchemes.Contains(address.Scheme));

    private static string PlainText(ContainerInline words) =>
        string.Concat(words.Descendants().Select(inline => inline switch
        {
            LiteralInline literal => literal.Content.ToString(),
            CodeInline code => code.Content,
            HtmlEntityInline entity => entity.Transcoded.ToString(),
            LineBreakInline => " ",
            _ => "",
        }));

    private sealed class ScrollingTable : HtmlTableRenderer
    {
        protected override void Write(HtmlRenderer renderer, Table table)
        {
            renderer.Write("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"Table\">");
            base.Write(renderer, table);
            renderer.WriteLine("</div>");
        }
    }
}
