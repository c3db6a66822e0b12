namespace BakeInsights;

/// <summary>Yeast of one kind as the mass of instant yeast that does about the same work.</summary>
/// <remarks>
/// Sources disagree. Used here, as culinary-school tables print them: fresh x 0.40 = active dry, fresh x 0.33 =
/// instant. Other texts print 0.50 and 0.35, and common practice takes instant as 0.75 of active dry, where these
/// factors give 0.825. Equal dry matter (fresh 69.00 % water, active dry 5.08 %; USDA Standard Reference 18374 and
/// 18375) gives fresh x 0.33 for a dry yeast whose cells are all alive.
/// </remarks>
public static class YeastEquivalent
{
    /// <summary>Grams of active dry yeast for one gram of fresh.</summary>
    public const double ActiveDryForFresh = 0.40;

    /// <summary>Grams of instant yeast for one gram of fresh.</summary>
    public const double InstantForFresh = 0.33;

    /// <summary>The mass of instant yeast, in grams, that stands for a mass of another kind.</summary>
    public static double Instant(double grams, YeastKind kind) => kind switch
    {
        YeastKind.Fresh => grams * InstantForFresh,
        YeastKind.ActiveDry => grams * InstantForFresh / ActiveDryForFresh,
        YeastKind.Instant => grams,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of yeast."),
    };

    /// <summary>The mass of one kind of yeast, in grams, that stands for a mass of another.</summary>
    public static double Convert(double grams, YeastKind from, YeastKind to) => Instant(grams, from) / Instant(1, to);

    /// <summary>
    /// Water, in grams, that goes in with another kind of yeast so that the dough keeps its mass. Dry yeast in place of
    /// fresh asks for water, which fresh yeast brings (0.60 to 0.67 g for each gram of it); negative the other way.
    /// </summary>
    public static double WaterToAdd(double grams, YeastKind from, YeastKind to) => grams - Convert(grams, from, to);
}
