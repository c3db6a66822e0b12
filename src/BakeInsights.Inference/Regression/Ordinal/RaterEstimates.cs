namespace BakeInsights.Inference;

/// <summary>What a fit says about raters.</summary>
/// <param name="Spread">The standard deviation of shifts.</param>
/// <param name="Shifts">The shift of each rater.</param>
/// <param name="RaterOfRow">The place of each row's rater among the shifts.</param>
/// <param name="Caveats">What to bear in mind.</param>
internal sealed record RaterEstimates(
    Term Spread, IReadOnlyList<Term> Shifts, int[] RaterOfRow, IReadOnlyList<string> Caveats)
{
    public double ShiftOfRow(int row) => Shifts[RaterOfRow[row]].Estimate;
}
