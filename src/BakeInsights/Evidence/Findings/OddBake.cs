namespace BakeInsights;

/// <summary>A bake that lies far from what was expected, or steers an answer.</summary>
/// <param name="Bake">Which.</param>
/// <param name="What">What was odd, a few words.</param>
public sealed record OddBake(Bake Bake, string What);
