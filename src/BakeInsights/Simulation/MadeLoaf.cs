namespace BakeInsights;

/// <summary>A loaf of the virtual kitchen: what was written of it, and what a judge sees.</summary>
/// <param name="Written">The row of <c>loaves.csv</c>.</param>
/// <param name="SpecificVolume">What it really is, in mL/g.</param>
/// <param name="HydrationPct">The hydration of its dough.</param>
/// <param name="LogProof">ln(proof given / needed).</param>
/// <param name="LogRise">ln(minutes of first rise).</param>
internal readonly record struct MadeLoaf(
    Loaf Written, double SpecificVolume, double HydrationPct, double LogProof, double LogRise);
