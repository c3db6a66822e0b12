using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>So many fillings of one cup or spoon.</summary>
/// <param name="Count">How often it is filled.</param>
/// <param name="Tool">What is filled.</param>
public readonly record struct Scoops(int Count, MeasuringTool Tool)
{
    /// <summary>In words: "4 x 1 cup", or "1/3 cup" for one.</summary>
    public string Text => Count == 1 ? Tool.Name : FormattableString.Invariant($"{Count} x {Tool.Name}");
}

/// <summary>A mass as cups and spoons that exist, for a class without scales.</summary>
public sealed record HouseholdAmount
{
    /// <summary>
    /// How far, in percent, the fillings may miss the mass before one more tool is taken to come closer: half of what
    /// filling a cup of spooned flour brings (<see cref="FlourFilling"/>), so that rounding is not what hurts.
    /// </summary>
    public const double RoundingAllowedPct = 2;

    /// <summary>The largest amount that is worth measuring by the cup (common practice, no source).</summary>
    public const int MostCups = 100;

    private HouseholdAmount(double wantedG, double givenG, ImmutableArray<Scoops> scoops, HouseholdWeight weight)
    {
        WantedG = wantedG;
        GivenG = givenG;
        Scoops = scoops;
        Weight = weight;
    }

    /// <summary>The mass asked for, in grams.</summary>
    public double WantedG { get; }

    /// <summary>The mass in the cups and spoons when they are filled as the weight's source filled them, in grams.</summary>
    public double GivenG { get; }

    /// <summary>What to fill, largest first.</summary>
    public ImmutableArray<Scoops> Scoops { get; }

    /// <summary>The weight of a cup that this rests on.</summary>
    public HouseholdWeight Weight { get; }

    /// <summary>What rounding to tools that exist adds, in percent of the mass asked for.</summary>
    public double RoundingPct => 100 * ((GivenG / WantedG) - 1);

    /// <summary>What to fill, in words: "4 x 1 cup + 1/3 cup".</summary>
    public string Text => string.Join(" + ", Scoops.Select(one => one.Text));

    /// <summary>
    /// The fewest fillings that come within <see cref="RoundingAllowedPct"/> of a mass, and of those the closest; where
    /// none does (small amounts of salt and yeast), the closest there is.
    /// </summary>
    /// <param name="grams">The mass, more than nothing, at most that of <see cref="MostCups"/> cups.</param>
    /// <param name="weight">What a cup of it weighs.</param>
    public static HouseholdAmount Of(double grams, HouseholdWeight weight)
    {
        ArgumentNullException.ThrowIfNull(weight);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(grams);
        var gramsInEighth = weight.GramsPerCup / MeasuringTool.EighthsInCup;
        var wanted = grams / gramsInEighth;
        ArgumentOutOfRangeException.ThrowIfGreaterThan(wanted, MostCups * MeasuringTool.EighthsInCup, nameof(grams));
        var low = (int)Math.Ceiling(wanted * (1 - (RoundingAllowedPct / 100)));
        var high = (int)Math.Floor(wanted * (1 + (RoundingAllowedPct / 100)));
        if (high < Math.Max(low, 1))
        {
            low = high = Math.Max(1, (int)Math.Round(wanted));
        }

        var fewest = FewestFillings(high);
        var chosen = Enumerable.Range(low, high - low + 1)
            .OrderBy(eighths => fewest[eighths].Fillings)
            .ThenBy(eighths => Math.Abs(eighths - wanted))
            .First();
        return new(grams, chosen * gramsInEighth, Taken(fewest, chosen), weight);
    }

    // For every amount up to the largest, the fewest fillings that make it up and the last tool of them.
    private static (int Fillings, MeasuringTool? Last)[] FewestFillings(int eighths)
    {
        var fewest = new (int Fillings, MeasuringTool? Last)[eighths + 1];
        for (var amount = 1; amount <= eighths; amount++)
        {
            fewest[amount] = MeasuringTool.Set
                .Where(tool => tool.Eighths <= amount)
                .Select(tool => (fewest[amount - tool.Eighths].Fillings + 1, (MeasuringTool?)tool))
                .MinBy(way => way.Item1);
        }

        return fewest;
    }

    private static ImmutableArray<Scoops> Taken((int Fillings, MeasuringTool? Last)[] fewest, int eighths)
    {
        var tools = new List<MeasuringTool>();
        for (var rest = eighths; rest > 0; rest -= tools[^1].Eighths)
        {
            tools.Add(fewest[rest].Last!);
        }

        return
        [
            .. tools.GroupBy(tool => tool)
                .OrderByDescending(group => group.Key.Eighths)
                .Select(group => new Scoops(group.Count(), group.Key)),
        ];
    }
}
