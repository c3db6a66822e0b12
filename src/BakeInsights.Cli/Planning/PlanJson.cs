namespace BakeInsights.Cli;

/// <summary>What <c>plan --json</c> prints.</summary>
internal sealed record PlanJson(
    JournalJson Journal,
    IReadOnlyList<VariedJson> Varied,
    IReadOnlyList<string> Benches,
    string Result,
    double Difference,
    double Scatter,
    int? ScatterBakes,
    int Rounds,
    int SparePerBench,
    IReadOnlyList<BenchBakeJson> Bakes,
    IReadOnlyList<string> CannotTellApart)
{
    public static PlanJson From(JournalReading reading, ClassPlan plan) => new(
        JournalJson.From(reading),
        [
            .. plan.Wish.Factors.Zip(plan.Powers, (factor, power) => new VariedJson(
                factor.Name, factor.Levels, power.BakesPerLevel, power.Power, power.DegreesOfFreedom, power.IsBetweenRounds)),
        ],
        plan.Wish.Benches,
        plan.Wish.Result.Name,
        plan.Wish.Difference,
        plan.Scatter,
        plan.ScatterBakes,
        plan.Rounds,
        plan.SparePerBench,
        [.. plan.Bakes.Select(bake => new BenchBakeJson(bake.Bench, bake.Round, bake.Order, bake.Levels))],
        plan.CannotTellApart);
}

/// <summary>Something varied, and the chance of finding the difference in it.</summary>
internal sealed record VariedJson(
    string Name, IReadOnlyList<string> Levels, int BakesPerLevel, double Chance, int DegreesOfFreedom, bool BetweenRounds);

/// <summary>One bake; its levels in the order of what is varied.</summary>
internal sealed record BenchBakeJson(string Bench, int Round, int Order, IReadOnlyList<string> Levels);
