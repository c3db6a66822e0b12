namespace BakeInsights;

/// <summary>What a US customary cup of an ingredient weighs.</summary>
/// <param name="GramsPerCup">Grams in one level cup of 236.588 mL.</param>
/// <param name="Source">Where the figure was published.</param>
public sealed record HouseholdWeight(double GramsPerCup, string Source);
