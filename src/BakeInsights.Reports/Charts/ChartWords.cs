using System.Globalization;
using System.Text.Json.Nodes;

namespace BakeInsights.Reports;

/// <summary>What a figure shows, in a few sentences made from the figure itself.</summary>
internal static class ChartWords
{
    /// <summary>Axes with the span of their values, and what is drawn.</summary>
    public static string Of(JsonObject figure)
    {
        var series = ChartSeries.Of(figure);
        return series.Count == 0
            ? "It has no values across and up that a table could hold."
            : $"Across: {Axes(series, one => one.XTitle, one => one.X)}. Up: {Axes(series, one => one.YTitle, one => one.Low.Concat(one.High).OfType<object>())}. "
                + $"Drawn: {string.Join("; ", series.Where(one => one.Name.Length > 0).Select(Drawn).Distinct().DefaultIfEmpty("one series"))}.";
    }

    /// <summary>A value of an axis: at most four digits that count, whole numbers whole.</summary>
    public static string Value(object value) => value is double number
        ? Math.Round(number, Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Max(Math.Abs(number), 1e-6))), 0, 9))
            .ToString("0.#########", CultureInfo.InvariantCulture).Replace('-', '−')
        : (string)value;

    private static string Axes(
        IReadOnlyList<ChartSeries> series, Func<ChartSeries, string> titleOf, Func<ChartSeries, IEnumerable<object>> valuesOf) =>
        string.Join("; ", series.GroupBy(titleOf).Select(axis => $"{axis.Key}, {Span([.. axis.SelectMany(valuesOf)])}"));

    private static string Span(IReadOnlyList<object> values)
    {
        double[] numbers = [.. values.OfType<double>()];
        string[] names = [.. values.OfType<string>().Distinct().Order(StringComparer.Ordinal)];
        return numbers.Length > 0 ? $"{Value(numbers.Min())} to {Value(numbers.Max())}"
            : names.Length > 0 ? $"{names[0]} to {names[^1]}"
            : "no value";
    }

    private static string Drawn(ChartSeries one) => one.Kind switch
    {
        SeriesKind.Band => $"{one.Name}, a band",
        SeriesKind.Line => $"{one.Name}, a line",
        _ => $"{one.Name}, {JournalView.Count(one.X.Count, "mark")}",
    };
}
