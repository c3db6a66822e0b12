namespace BakeInsights;

/// <summary>What is planned, as far as cautions turn on it.</summary>
public sealed record Occasion
{
    /// <summary>The formula; null when it is not known, which leaves out what depends on ingredients.</summary>
    public Formula? Formula { get; init; }

    /// <summary>Minutes that the dough spends warmer than a refrigerator before it is baked.</summary>
    public double WarmMinutes { get; init; }

    /// <summary>The warmest place it spends them in; null when it is not known.</summary>
    public Temperature? WarmestPlace { get; init; }

    /// <summary>Whether others bake or eat along: a class, guests, buyers.</summary>
    public bool WithOthers { get; init; }

    /// <summary>Whether bread is sold.</summary>
    public bool ForSale { get; init; }

    /// <summary>Whether flour is measured by the cup.</summary>
    public bool FlourByCup { get; init; }

    /// <summary>Whether the dough has milk or egg in it; fat alone does not count.</summary>
    public bool HasMilkOrEgg => Formula is { } formula
        && formula.GramsOf(IngredientRole.Milk) + formula.GramsOf(IngredientRole.Egg) > 0;
}
