namespace BakeInsights;

/// <summary>What a US customary cup of an ingredient weighs.</summary>
/// <param name="GramsPerCup">Grams in one level cup of 236.588 mL.</param>
/// <param name="Source">Where the figure was published, or who weighed it.</param>
/// <param name="Spread">How cups scatter about it; null where nothing is known of that.</param>
public sealed record HouseholdWeight(double GramsPerCup, string Source, CupSpread? Spread = null);
