using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>One of the usual cautions of baking.</summary>
/// <param name="Topic">What it is about, in a word or two.</param>
/// <param name="Text">What to mind, in our own words.</param>
/// <param name="When">When it applies, in words.</param>
/// <param name="Sources">The official documents behind it, or "common practice, no source".</param>
/// <param name="AppliesTo">When it applies, as a test of an occasion.</param>
public sealed record Caution(
    string Topic, string Text, string When, ImmutableArray<string> Sources, Func<Occasion, bool> AppliesTo);
