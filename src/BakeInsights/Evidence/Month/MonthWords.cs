namespace BakeInsights;

/// <summary>Words that the month's answers share.</summary>
internal static class MonthWords
{
    /// <summary>"1 bake", "2 bakes".</summary>
    public static string Bakes(int count) => count == 1 ? "1 bake" : FormattableString.Invariant($"{count} bakes");
}
