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
            default:
                throw new ArgumentException($"A {block.GetType().Name} can't be written as HTML.", nameof(block));
        }
    }

    // The box around the table scrolls by itself, and takes the keyboard's focus so that it can be scrolled without a mouse.
    private static void Write(StringBuilder html, ViewTable table)
    {
        html.Append($"<div class=\"bake-table\" role=\"region\" tabindex=\"0\" aria-label=\"{Encode(table.Caption)}\"><table>\n");
        html.Append($"<caption>{Encode(table.Caption)}</caption>\n<thead><tr>");
        foreach (var column in table.Columns)
        {
            html.Append($"<th scope=\"col\"{ClassOf(column)}>{Encode(column.Title)}</th>");
        }

        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            foreach (var (column, cell) in table.Columns.Zip(row))
            {
                html.Append($"<td{ClassOf(column)}>{Encode(cell)}</td>");
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody></table></div>\n");
    }

    private static string ClassOf(ViewColumn column) => column.IsNumber ? " class=\"number\"" : "";

    private static string Encode(string text) => HtmlEncoder.Default.Encode(text);
}
