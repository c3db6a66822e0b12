using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>One weighed ingredient of a dough.</summary>
public sealed record Ingredient
{
    private Ingredient(string name, IngredientRole role, double grams, WaterContent water)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(water);
        if (!double.IsFinite(grams) || grams < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(grams), grams, $"The mass of {name} is a number that is not negative.");
        }

        Name = name;
        Role = role;
        Grams = grams;
        Water = water;
    }

    /// <summary>The name on the bench sheet.</summary>
    public string Name { get; }

    /// <summary>Where it counts.</summary>
    public IngredientRole Role { get; }

    /// <summary>Its mass, in grams. Of a preferment, the sum of its parts.</summary>
    public double Grams { get; private init; }

    /// <summary>The water it brings by composition; nothing for flour, whose own moisture is not counted.</summary>
    public WaterContent Water { get; }

    /// <summary>The kind of yeast; null for all else.</summary>
    public YeastKind? YeastKind { get; private init; }

    /// <summary>What a preferment was made of; empty for all else.</summary>
    public ImmutableArray<Ingredient> Parts { get; private init; } = [];

    /// <summary>The name of flour that nobody named otherwise: white wheat flour.</summary>
    public const string PlainFlour = "flour";

    /// <summary>Flour.</summary>
    public static Ingredient Flour(double grams, string name = PlainFlour) =>
        new(name, IngredientRole.Flour, grams, WaterContents.None);

    /// <summary>Water poured in.</summary>
    public static Ingredient PouredWater(double grams) => new("water", IngredientRole.Water, grams, WaterContents.Water);

    /// <summary>Salt.</summary>
    public static Ingredient Salt(double grams) => new("salt", IngredientRole.Salt, grams, WaterContents.Salt);

    /// <summary>Baker's yeast of a kind.</summary>
    public static Ingredient Yeast(double grams, YeastKind kind) =>
        new(NameOf(kind), IngredientRole.Yeast, grams, WaterContents.Yeast(kind)) { YeastKind = kind };

    /// <summary>Granulated sugar.</summary>
    public static Ingredient Sugar(double grams) => new("sugar", IngredientRole.Sugar, grams, WaterContents.Sugar);

    /// <summary>Unsalted butter.</summary>
    public static Ingredient Butter(double grams) => new("butter", IngredientRole.Fat, grams, WaterContents.UnsaltedButter);

    /// <summary>Oil.</summary>
    public static Ingredient Oil(double grams) => new("oil", IngredientRole.Fat, grams, WaterContents.Oil);

    /// <summary>Whole milk.</summary>
    public static Ingredient Milk(double grams) => new("milk", IngredientRole.Milk, grams, WaterContents.WholeMilk);

    /// <summary>Whole egg without the shell.</summary>
    public static Ingredient Egg(double grams) => new("egg", IngredientRole.Egg, grams, WaterContents.WholeEgg);

    /// <summary>Honey.</summary>
    public static Ingredient Honey(double grams) => new("honey", IngredientRole.Honey, grams, WaterContents.Honey);

    /// <summary>An ingredient with a water content of one's own choice, such as skim milk or raisins.</summary>
    /// <param name="name">The name on the bench sheet.</param>
    /// <param name="role">Any but flour, water, yeast and preferment, which have ways of their own.</param>
    /// <param name="grams">Its mass.</param>
    /// <param name="water">The water it brings.</param>
    public static Ingredient Of(string name, IngredientRole role, double grams, WaterContent water) =>
        role is IngredientRole.Flour or IngredientRole.Water or IngredientRole.Yeast or IngredientRole.Preferment
            ? throw new ArgumentOutOfRangeException(nameof(role), role, "This role has a method of its own.")
            : new(name, role, grams, water);

    /// <summary>A preferment from what went into it. At least some of that is flour.</summary>
    public static Ingredient Preferment(string name, params ReadOnlySpan<Ingredient> parts)
    {
        ImmutableArray<Ingredient> all = [.. parts];
        return Flattened(all).Any(part => part.Role == IngredientRole.Flour && part.Grams > 0)
            ? new(name, IngredientRole.Preferment, all.Sum(part => part.Grams), WaterContents.None) { Parts = all }
            : throw new ArgumentException("A preferment is made with flour.", nameof(parts));
    }

    /// <summary>A preferment of flour and water alone: a ripe levain of 100 % hydration is half and half.</summary>
    /// <param name="name">The name on the bench sheet.</param>
    /// <param name="grams">Its mass, more than nothing.</param>
    /// <param name="hydrationPct">Its water in percent of its flour.</param>
    public static Ingredient Preferment(string name, double grams, double hydrationPct)
    {
        var masses = new DoughMasses(0, 0, grams, hydrationPct);
        return Preferment(name, Flour(masses.FlourG), PouredWater(masses.WaterG));
    }

    /// <summary>The same in so many times the amount.</summary>
    public Ingredient Times(double factor) =>
        this with { Grams = Grams * factor, Parts = [.. Parts.Select(part => part.Times(factor))] };

    /// <summary>All ingredients with every preferment, and any preferment in it, replaced by its parts.</summary>
    internal static IEnumerable<Ingredient> Flattened(IEnumerable<Ingredient> ingredients) =>
        ingredients.SelectMany(one => one.Role == IngredientRole.Preferment ? Flattened(one.Parts) : [one]);

    private static string NameOf(YeastKind kind) => kind switch
    {
        BakeInsights.YeastKind.Fresh => "fresh yeast",
        BakeInsights.YeastKind.ActiveDry => "active dry yeast",
        _ => "instant yeast",
    };
}
