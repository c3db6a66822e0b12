namespace BakeInsights;

/// <summary>
/// A number worked out from two columns, with the range that it can have at all and the one that it mostly has.
/// </summary>
/// <param name="Name">What it is called for people: "salt", "bake loss".</param>
/// <param name="Unit">Its unit for people: "% of flour", "mL/g".</param>
/// <param name="Column">The column that counts as missing when the number is impossible, and that a notice names.</param>
/// <param name="Against">The column that it is set against.</param>
/// <param name="Low">Below this it is impossible.</param>
/// <param name="UsualLow">Below this it is doubted.</param>
/// <param name="UsualHigh">Above this it is doubted.</param>
/// <param name="High">Above this it is impossible.</param>
public sealed record RatioRange(
    string Name,
    string Unit,
    QuantityColumn Column,
    QuantityColumn Against,
    double Low,
    double UsualLow,
    double UsualHigh,
    double High);
