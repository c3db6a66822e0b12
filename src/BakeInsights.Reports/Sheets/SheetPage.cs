using System.Reflection;
using System.Text;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>
/// Writes the sheets of a day as one HTML file to print: a sheet a page, on its paper, without scripts, and with nothing
/// fetched from anywhere. The same sheets give the same bytes.
/// </summary>
public static class SheetPage
{
    // Scripts, pictures, fonts, frames and forms: none. The style stands in the page.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

    private static readonly string Style = ReadStyle();

    /// <summary>Writes the page.</summary>
    /// <param name="sheets">The sheets, at least one.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="output">Receives the page; to be saved as UTF-8.</param>
    public static void Write(IReadOnlyList<Sheet> sheets, Paper paper, UnitSystem units, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentOutOfRangeException.ThrowIfZero(sheets.Count, nameof(sheets));
        var body = new StringBuilder();
        foreach (var sheet in sheets)
        {
            SheetHtml.Append(body, sheet, paper, units);
        }

        output.Write($"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="generator" content="BakeInsights">
            <title>{Encode(Title(sheets))}</title>
            <style>
            {Style}@page {"{"} size: {(paper == Paper.A4 ? "A4" : "letter")}; margin: {SheetHtml.MarginMm}mm {"}"}
            </style>
            </head>
            <body>
            {body}</body>
            </html>

            """.ReplaceLineEndings("\n"));
    }

    private static string Title(IReadOnlyList<Sheet> sheets) => sheets.Count == 1
        ? $"{SheetView.Title(sheets[0])}, {sheets[0].Journal}"
        : $"{sheets.Count} bake sheets, {sheets[0].Journal}";

    private static string ReadStyle()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("BakeInsights.Reports.sheet.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
