using System.Globalization;
using System.Text;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>One sheet as HTML.</summary>
internal static class SheetHtml
{
    /// <summary>What printers leave white at every edge, in mm (common practice, no source).</summary>
    public const int MarginMm = 10;

    /// <summary>Adds a sheet.</summary>
    public static void Append(StringBuilder html, Sheet sheet, Paper paper, UnitSystem units)
    {
        var formula = new SheetFormulaWords(sheet, units);
        var day = new SheetDayWords(sheet, units);
        var (points, extra) = SheetScale.Of(sheet, paper, units);
        var size = string.Create(CultureInfo.InvariantCulture, $"--size:{points:0.0}pt;--extra:{extra:0.0}mm");
        html.Append($"<article class=\"sheet{(sheet.Cups is null ? "" : " by-cup")}\" style=\"{size}\">\n<header><h1>{Encode(SheetView.Title(sheet))}</h1>");
        html.Append($"<p>{Encode(formula.Subtitle())}</p></header>\n<div class=\"two\">\n<div>\n");

        Begin(html, "formula", "Weigh");
        Table(html, formula.Table(), tick: true);
        Paragraphs(html, [formula.Amounts(), .. formula.Cups()]);
        End(html);

        Begin(html, "water", $"Water {new SheetWaterWords(sheet, units).Headline()}");
        List(html, new SheetWaterWords(sheet, units).All());
        End(html);
        html.Append("</div>\n");

        Begin(html, "day", "Day");
        html.Append($"<p{(day.IsTooShort ? " class=\"warning\"" : "")}>{Encode(day.Fit())}</p>\n");
        List(html, day.Remedies());
        Table(html, day.Steps(), blank: "Done at");
        Paragraphs(html, [day.Spread()]);
        End(html);
        html.Append("</div>\n");

        Begin(html, "looks", "Looks at the rising dough");
        Paragraphs(html, [day.Ready()]);
        Looks(html, day);
        List(html, [.. day.EarlyAndLate(), .. day.Remarks()]);
        End(html);

        if (sheet.Blanks.Count > 0)
        {
            Begin(html, "blanks", "Write down, in the journal's order");
            Blanks(html, sheet, units);
            End(html);
        }

        Begin(html, "mind", "Mind");
        List(html, Mind(sheet));
        End(html);
        html.Append("</article>\n");
    }

    /// <summary>What to mind, and who decides.</summary>
    public static IReadOnlyList<string> Mind(Sheet sheet) =>
        [.. sheet.Cautions.Select(caution => $"{caution.Topic}. {caution.Text}"), CautionCatalogue.Deference];

    /// <summary>What stands below a blank.</summary>
    public static string LabelOf(SheetBlank blank) =>
        blank.Words.Count == 0 ? blank.Label : $"{blank.Label}: {string.Join(" / ", blank.Words)}";

    private static void Begin(StringBuilder html, string name, string title) =>
        html.Append($"<section class=\"{name}\">\n<h2>{Encode(title)}</h2>\n");

    private static void End(StringBuilder html) => html.Append("</section>\n");

    private static void Paragraphs(StringBuilder html, IEnumerable<string> paragraphs)
    {
        foreach (var words in paragraphs)
        {
            html.Append($"<p>{Encode(words)}</p>\n");
        }
    }

    private static void List(StringBuilder html, IReadOnlyList<string> items)
    {
        if (items.Count > 0)
        {
            html.Append($"<ul>{string.Concat(items.Select(item => $"<li>{Encode(item)}</li>\n"))}</ul>\n");
        }
    }

    private static void Table(StringBuilder html, ViewTable table, bool tick = false, string? blank = null)
    {
        string Class(ViewColumn column) => column.IsNumber ? " class=\"number\"" : "";
        html.Append("<table><thead><tr>");
        html.AppendJoin("", table.Columns.Select(column => $"<th scope=\"col\"{Class(column)}>{Encode(column.Title)}</th>"));
        html.Append(tick ? "<td></td>" : blank is null ? "" : $"<th scope=\"col\" class=\"blank\">{Encode(blank)}</th>");
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            html.AppendJoin("", table.Columns.Zip(row, (column, cell) => $"<td{Class(column)}>{Encode(cell)}</td>"));
            html.Append(tick ? $"<td>{(ReferenceEquals(row, table.Rows[^1]) ? "" : "<span class=\"box\"></span>")}</td>" : blank is null ? "" : "<td class=\"blank\"></td>").Append("</tr>\n");
        }

        html.Append("</tbody></table>\n");
    }

    // Sideways: a look is a column, with room below for what the dent did.
    private static void Looks(StringBuilder html, SheetDayWords day)
    {
        var looks = day.Looks();
        html.Append("<table class=\"sideways\"><tbody>\n<tr><th scope=\"row\">Look at</th>");
        html.AppendJoin("", looks.Select(look => $"<td>{Encode(look.Clock)}</td>")).Append("</tr>\n<tr><th scope=\"row\">Minutes</th>");
        html.AppendJoin("", looks.Select(look => $"<td>{Encode(look.Minutes)}</td>")).Append("</tr>\n<tr class=\"dent\"><th scope=\"row\">Dent</th>");
        html.AppendJoin("", looks.Select(_ => "<td></td>")).Append("</tr>\n</tbody></table>\n");
    }

    private static void Blanks(StringBuilder html, Sheet sheet, UnitSystem units)
    {
        html.Append("<div class=\"fields\">\n");
        foreach (var blank in sheet.Blanks)
        {
            html.Append($"<div class=\"field\"><span class=\"name\">{Encode(blank.Name)}</span><span class=\"line\">{Encode(blank.Given)}</span>");
            html.Append($"<span class=\"unit\">{Encode(blank.Unit)}</span><span class=\"label\">{Encode(LabelOf(blank))}</span></div>\n");
        }

        html.Append("</div>\n");
        Paragraphs(html, [$"Type it in with: bakeinsights add{(units == UnitSystem.Us ? " --units us" : " --units metric")}, in this order; leave out what is blank."]);
    }
}
