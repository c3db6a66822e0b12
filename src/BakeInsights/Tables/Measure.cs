namespace BakeInsights;

/// <summary>One number about a bake, read from the journal or worked out from it.</summary>
/// <param name="Name">The name in tables and models, its unit at the end.</param>
/// <param name="Title">The name for people, without a unit.</param>
/// <param name="Dimension">What it measures; values are in the dimension's canonical unit.</param>
/// <param name="Formula">How it is worked out, in the names of columns.</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="Of">The value for a bake, or null when the journal lacks what it takes.</param>
public sealed record Measure(
    string Name, string Title, Dimension Dimension, string Formula, string Source, Func<Bake, double?> Of);
