namespace BakeInsights;

/// <summary>A column that bakes of the month lack.</summary>
/// <param name="Column">Its name in the journal.</param>
/// <param name="Words">What it holds, in words.</param>
/// <param name="Count">How many bakes lack it, at least one.</param>
/// <param name="Serves">The questions that need it, in words.</param>
public sealed record MissingCells(string Column, string Words, int Count, string Serves);
