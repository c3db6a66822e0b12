namespace BakeInsights;

/// <summary>Words that the month's answers share.</summary>
internal static class MonthWords
{
    /// <summary>A measure's title inside a sentence.</summary>
    public static string Lower(Measure measure) => measure.Title.ToLowerInvariant();

    /// <summary>"1 bake", "2 bakes".</summary>
    public static string Bakes(int count) => count == 1 ? "1 bake" : FormattableString.Invariant($"{count} bakes");
}
