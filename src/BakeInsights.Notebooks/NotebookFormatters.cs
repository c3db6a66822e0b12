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
        Show<Journal>(JournalView.Of);
        Show<RiseTimeAnswer>(answer => RiseTimeView.Of(answer, Asked(answer), Units));
        Show<LoafVolumeAnswer>(answer => LoafVolumeView.Of(answer, Asked(answer), Units));
        Show<MonthReview>(review => MonthReviewView.Of(review, Units));
        Show<TuneAnswer>(answer => TuneView.Of(answer, Units));
        Show<ReadyByAnswer>(answer => ReadyByView.Of(answer, Units));
        Show<NextBakes>(plan => NextBakesView.Of(plan, plan.Earlier, Units));
        Show<ClassPlan>(plan => ClassPlanView.Of(plan, Units));
        Show<TwoWays>(compared => CompareView.Of(compared, Units));
        Show<Sheet>(sheet => SheetView.Of(sheet, Units));
        Show<Timetable>(table => TimetableView.Of(table, Units));
    }

    // A type shown by itself carries no choice of units; its view can be asked for others.
    private const UnitSystem Units = UnitSystem.Metric;

    private static int Asked(ModelAnswer answer) => answer.UsedCount + answer.LeftOutBakes.Sum(left => left.Count);

    private static void Show<T>(Func<T, View> view) => Show<T>(shown => view(shown).ToHtml(), shown => view(shown).ToText());

    /// <summary>A type, or all types derived from it, has an HTML form and a form for readers of plain text.</summary>
    private static void Show<T>(Func<T, string> html, Func<T, string> text)
    {
        Formatter.Register(html, HtmlFormatter.MimeType);
        Formatter.Register(text, PlainTextFormatter.MimeType);
        Formatter.SetPreferredMimeTypesFor(typeof(T), HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }
}
