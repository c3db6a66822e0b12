namespace BakeInsights;

/// <summary>What an ingredient does in a dough, and so where it counts.</summary>
public enum IngredientRole
{
    /// <summary>Flour of any kind; all of it together is the hundred of the baker's percentages.</summary>
    Flour,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Salt.</summary>
    Salt,

    /// <summary>Baker's yeast.</summary>
    Yeast,

    /// <summary>Sugar and syrups other than honey.</summary>
    Sugar,

    /// <summary>Butter, oil and other fats.</summary>
    Fat,

    /// <summary>Milk, buttermilk, cream, yoghurt.</summary>
    Milk,

    /// <summary>Egg without the shell.</summary>
    Egg,

    /// <summary>Honey.</summary>
    Honey,

    /// <summary>A part of the dough that was fermented ahead: poolish, biga, sponge, levain.</summary>
    Preferment,

    /// <summary>Anything else: seeds, fruit, spices.</summary>
    Other,
}
