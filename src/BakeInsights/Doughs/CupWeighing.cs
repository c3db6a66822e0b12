namespace BakeInsights;

/// <summary>One cup that somebody filled and put on a scale.</summary>
/// <param name="Measurer">Who filled it.</param>
/// <param name="Ingredient">What was in it, by its column's stem: "flour", "sugar".</param>
/// <param name="Method">How it was filled; null where that does not matter or was not written down.</param>
/// <param name="GramsPerCup">Grams for a US customary cup of 236.588 mL; weighings in another cup are brought to it.</param>
public sealed record CupWeighing(string Measurer, string Ingredient, FlourMeasure? Method, double GramsPerCup);
