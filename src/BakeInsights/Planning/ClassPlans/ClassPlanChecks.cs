using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Wishes that can't be planned.</summary>
internal static class ClassPlanChecks
{
    /// <summary>Refuses what a program shouldn't ask.</summary>
    public static void Require(ClassPlanWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (wish.Factors.Count == 0 || wish.Factors.Select(factor => factor.Name).Distinct().Count() < wish.Factors.Count)
        {
            throw new ArgumentException("A plan needs factors, each of its own name.", nameof(wish));
        }

        if (wish.Benches.Count == 0 || wish.Benches.Any(string.IsNullOrWhiteSpace) || wish.Benches.Distinct().Count() < wish.Benches.Count)
        {
            throw new ArgumentException("A plan needs benches, each of its own name.", nameof(wish));
        }

        if (wish.Result != Measures.RiseTime && wish.Result != Measures.SpecificVolume)
        {
            throw new ArgumentException("A plan is for the rise time or the specific volume.", nameof(wish));
        }

        if (!(wish.Difference > 0) || !(wish.Power is > 0.05 and < 1) || !(wish.SparePct is >= 0 and <= 100) || wish.MostPerBench < 1 || wish.Scatter is <= 0)
        {
            throw new ArgumentException("A number of the wish is out of its range.", nameof(wish));
        }
    }

    /// <summary>What can't be laid out at all; null if it can.</summary>
    public static FitProblem? Find(ClassPlanWish wish)
    {
        if (wish.SetForAll is { } name && wish.Factors.All(factor => factor.Name != name))
        {
            return Of(name, $"Nothing named {name} is varied, so it can't be set for all.", $"Name one of these: {Names(wish)}.");
        }

        if (!wish.IsHalf)
        {
            return null;
        }

        if (wish.SetForAll is not null)
        {
            return Of(Names(wish), "Half of the combinations and one setting for all are not planned together.", "Leave one of the two out.");
        }

        return wish.Factors.Count < 3 || wish.Factors.Any(factor => factor.Levels.Count != 2)
            ? Of(
                Names(wish),
                "Half of the combinations takes three things varied or more, each at two levels.",
                $"There are {wish.Factors.Count}, at {string.Join(", ", wish.Factors.Select(factor => factor.Levels.Count))}: plan all combinations, or change that.")
            : null;
    }

    /// <summary>The wished difference is too small for what the benches can bake: says what could be found.</summary>
    public static FitProblem TooMuch(ClassPlanWish wish, ClassPower power, double difference)
    {
        var least = power.BakesPerRound * power.RoundsPerSet * power.FewestSets;
        if (least > wish.MostPerBench)
        {
            return Of(
                Names(wish),
                $"Each bench would have to bake {least} at the least, and {wish.MostPerBench} are its most.",
                "Allow more bakes, vary less, or let half of the combinations do.");
        }

        if (power.Found(power.MostSets) is not { } found)
        {
            return Of(
                Names(wish),
                $"With at most {wish.MostPerBench} bakes at each of {Many(wish.Benches.Count)} nothing is left over to see the scatter by.",
                "Allow more bakes, or more benches.");
        }

        var (wished, could) = (Said(wish, wish.Difference), Said(wish, InUnit(wish, found)));
        var chance = FormattableString.Invariant($"{100 * power.Least(power.MostSets, difference):0}");
        return Of(
            Names(wish),
            FormattableString.Invariant(
                $"With at most {wish.MostPerBench} bakes at each of {Many(wish.Benches.Count)} a difference of {wished} is found in {chance} of 100 such classes."),
            FormattableString.Invariant($"{could} can be found in {100 * wish.Power:0} of 100: look for that, allow more bakes, or take more benches."));
    }

    private static double InUnit(ClassPlanWish wish, double onScale) => wish.Result == Measures.RiseTime ? ResultScale.PercentOf(onScale) : onScale;

    private static string Said(ClassPlanWish wish, double difference) => wish.Result == Measures.RiseTime
        ? FormattableString.Invariant($"{difference:0.#} %")
        : FormattableString.Invariant($"{difference:0.00} mL/g");

    private static string Many(int benches) => benches == 1 ? "1 bench" : $"{benches} benches";

    private static string Names(ClassPlanWish wish) => string.Join(", ", wish.Factors.Select(factor => factor.Name));

    private static FitProblem Of(string name, string message, string remedy) => new(FitProblemKind.TooFewRows, [name], message, remedy);
}
