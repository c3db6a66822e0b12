namespace BakeInsights;

/// <summary>
/// The difference in the result between two levels, or between two points of a line or a curve. The interval counts
/// that these two were picked from all.
/// </summary>
/// <param name="From">The level with the lower result.</param>
/// <param name="To">The level with the higher result; for a line and for two levels the later one, whichever is higher.</param>
/// <param name="FromNumber">The former as a number in the column's canonical unit; null for a text.</param>
/// <param name="ToNumber">The latter as a number; null for a text.</param>
/// <param name="Effect">The result at the latter less that at the former, in the result's canonical unit.</param>
/// <param name="EffectPct">The same in percent of the former, where the model speaks in percent; otherwise null.</param>
public sealed record ColumnDifference(
    string From, string To, double? FromNumber, double? ToNumber, Estimate Effect, Estimate? EffectPct);
