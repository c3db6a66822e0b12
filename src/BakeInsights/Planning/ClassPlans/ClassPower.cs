using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a class of so many rounds can find.</summary>
/// <remarks>
/// The partial F test of a factor with two levels the difference apart and any others in the middle between them: of all
/// differences that large the hardest to find. Cohen (1988), Statistical Power Analysis for the Behavioral Sciences, 2nd
/// ed., section 8.2. The model has a level for each round of a bench, and the factors without their products.
/// </remarks>
/// <param name="Wish">What the class wants.</param>
/// <param name="Scatter">The standard deviation of a bake on the model's scale.</param>
internal sealed record ClassPower(ClassPlanWish Wish, double Scatter)
{
    private const double Significance = 0.05;

    private FactorLevels? SetForAll => Wish.Factors.FirstOrDefault(factor => factor.Name == Wish.SetForAll);

    private IEnumerable<FactorLevels> Within => Wish.Factors.Where(factor => factor != SetForAll);

    /// <summary>Bakes of one bench in one round.</summary>
    public int BakesPerRound => Within.Aggregate(1, (count, factor) => count * factor.Levels.Count) / (Wish.IsHalf ? 2 : 1);

    /// <summary>Rounds come in sets: with a factor set for all, one round for each of its levels.</summary>
    public int RoundsPerSet => SetForAll?.Levels.Count ?? 1;

    /// <summary>The most sets that a bench can bake.</summary>
    public int MostSets => Wish.MostPerBench / (BakesPerRound * RoundsPerSet);

    /// <summary>The fewest sets that leave a scatter to compare with.</summary>
    public int FewestSets => SetForAll is null ? 1 : 2;

    /// <summary>The chance for each factor after so many sets, of a difference on the model's scale.</summary>
    public IReadOnlyList<FactorPower> Of(int sets, double difference)
    {
        var rounds = sets * RoundsPerSet;
        var bakes = rounds * BakesPerRound * Wish.Benches.Count;
        var left = bakes - (rounds * Wish.Benches.Count) - Within.Sum(factor => factor.Levels.Count - 1);
        return
        [
            .. Wish.Factors.Select(factor => factor == SetForAll
                ? Chance(factor, bakes, rounds - factor.Levels.Count, difference, true)
                : Chance(factor, bakes, left, difference, false)),
        ];
    }

    /// <summary>
    /// The smallest chance of the factors that rounds are added for: all that a bench sets for itself. 0 where nothing is
    /// left over for the scatter.
    /// </summary>
    public double Least(int sets, double difference) => Counting(sets, difference).Min(factor => factor.Power);

    /// <summary>The difference that is found with the wished chance after so many sets; null where none can be.</summary>
    public double? Found(int sets)
    {
        if (sets < FewestSets || Counting(sets, 0).Any(factor => factor.DegreesOfFreedom < 1))
        {
            return null;
        }

        var (low, high) = (0.0, Scatter);
        while (Least(sets, high) < Wish.Power)
        {
            (low, high) = (high, 2 * high);
        }

        const double fine = 1e-6;
        while (high - low > fine * high)
        {
            var middle = (low + high) / 2;
            (low, high) = Least(sets, middle) < Wish.Power ? (middle, high) : (low, middle);
        }

        return high;
    }

    private IEnumerable<FactorPower> Counting(int sets, double difference) =>
        Of(sets, difference) is { Count: > 1 } several ? several.Where(factor => !factor.IsBetweenRounds) : Of(sets, difference);

    private FactorPower Chance(FactorLevels factor, int bakes, int left, double difference, bool isBetweenRounds)
    {
        var perLevel = bakes / factor.Levels.Count;
        var noncentrality = perLevel * difference * difference / (2 * Scatter * Scatter);
        return new FactorPower(
            factor.Name,
            left < 1 ? 0 : PowerOfF.Power(factor.Levels.Count - 1, left, noncentrality, Significance),
            perLevel, Math.Max(left, 0), isBetweenRounds);
    }
}
