namespace BakeInsights;

/// <summary>A setting of a bake that its result may come of.</summary>
/// <param name="Setting">The setting, one that lies beyond the quarter points of the journal.</param>
/// <param name="Value">The bake's value of it.</param>
/// <param name="Middle">The journal's median.</param>
/// <param name="Effect">
/// What the model expects of that difference in the result, with its 95 % interval, which lies on the bake's side.
/// </param>
public sealed record LikelyReason(Measure Setting, double Value, double Middle, Estimate Effect);
