using BakeInsights.Reports;
using Microsoft.DotNet.Interactive.Formatting;
using Plotly.NET;

namespace BakeInsights.Notebooks;

/// <summary>How our types look in a notebook. To show one more type, add its line to <see cref="RegisterAll"/>.</summary>
internal static class NotebookFormatters
{
    /// <summary>Registers every formatter. They are the process's, not a kernel's; registering again does no harm.</summary>
    public static void RegisterAll()
    {
        Show<GenericChart>(ChartHtml.Fragment, ChartHtml.PlainText);
        Show<View>(view => view.ToHtml(), view => view.ToText());
        Show<ScriptData>(data => data.ToHtml(), data => data.ToText());
        Show<Journal>(journal => JournalView.Of(journal).ToHtml(), journal => JournalView.Of(journal).ToText());
        Show<Timetable>(
            table => TimetableView.Of(table, UnitSystem.Metric).ToHtml(), table => TimetableView.Of(table, UnitSystem.Metric).ToText());
    }

    /// <summary>A type, or all types derived from it, has an HTML form and a form for readers of plain text.</summary>
    private static void Show<T>(Func<T, string> html, Func<T, string> text)
    {
        Formatter.Register(html, HtmlFormatter.MimeType);
        Formatter.Register(text, PlainTextFormatter.MimeType);
        Formatter.SetPreferredMimeTypesFor(typeof(T), HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }
}
