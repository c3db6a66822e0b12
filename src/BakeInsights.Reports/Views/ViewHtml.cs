using System.Text;
using System.Text.Encodings.Web;

namespace BakeInsights.Reports;

/// <summary>Writes views as HTML.</summary>
internal static class ViewHtml
{
    public static string Write(View view)
    {
        var html = new StringBuilder("<div class=\"bake-view\">\n");
        foreach (var block in view.Blocks)
        {
            Write(html, block);
        }

        return html.Append("</div>\n").ToString();
    }

    private static void Write(StringBuilder html, ViewBlock block)
    {
        switch (block)
        {
            case ViewHeading heading:
                html.Append($"<h3>{Encode(heading.Text)}</h3>\n");
                break;
            case ViewParagraph paragraph:
                html.Append($"<p>{Encode(paragraph.Text)}</p>\n");
                break;
            case ViewList list:
                html.Append("<ul>\n");
                foreach (var item in list.Items)
                {
                    html.Append($"<li>{Encode(item)}</li>\n");
                }

                html.Append("</ul>\n");
                break;
            case ViewTable table:
                Write(html, table);
                break;
            case ViewWhatIf whatIf:
                WhatIfHtml.Write(html, whatIf);
                break;
            default:
                throw new ArgumentException($"A {block.GetType().Name} can't be written as HTML.", nameof(block));
        }
    }

    // The box around the table scrolls by itself, and takes the keyboard's focus so that it can be scrolled without a
    // mouse; the caption stays outside, where it can wrap.
    private static void Write(StringBuilder html, ViewTable table)
    {
        var caption = Encode(table.Caption);
        html.Append($"<figure class=\"bake-table\" style=\"margin:1em 0\"><figcaption>{caption}</figcaption>\n");
        html.Append($"<div style=\"overflow-x:auto\" role=\"region\" tabindex=\"0\" aria-label=\"{caption}\"><table>\n<thead><tr>");
        foreach (var column in table.Columns)
        {
            html.Append($"<th scope=\"col\" style=\"{Alignment(column)}\">{Encode(column.Title)}</th>");
        }

        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            foreach (var (column, cell) in table.Columns.Zip(row))
            {
                html.Append($"<td style=\"{Alignment(column)}{(column.IsNumber ? ";white-space:nowrap" : "")}\">{Encode(cell)}</td>");
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody></table></div></figure>\n");
    }

    // Written on the cell itself: a notebook host brings its own style sheet, and ours is not there.
    private static string Alignment(ViewColumn column) => column.IsNumber ? "text-align:right" : "text-align:left";

    private static string Encode(string text) => HtmlEncoder.Default.Encode(text);
}
