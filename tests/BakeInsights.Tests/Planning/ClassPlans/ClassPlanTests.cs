using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>A class's bakes: layouts as printed, chances as R has them (r/compare.R).</summary>
public class ClassPlanTests
{
    private const double Tolerance = 1e-9;

    private static readonly FactorLevels Wet = new("hydration", "64", "70");
    private static readonly FactorLevels Warm = new("dough", "22", "26");
    private static readonly FactorLevels Salt = new("salt", "1.8", "2.2");
    private static readonly FactorLevels Oven = new("oven", "220", "240");
    private static readonly FactorLevels Flour = new("flour", "white", "half", "whole");

    private static ClassPlanWish Wish(int benches, params FactorLevels[] factors) =>
        new(factors, [.. Enumerable.Range(1, benches).Select(bench => $"bench {bench}")], Measures.SpecificVolume, 0.3) { Scatter = 0.2 };

    private static ClassPlan Plan(ClassPlanWish wish, int seed = 1) => ClassPlan.Make([], wish, seed).Value;

    [Fact]
    public void Every_bench_bakes_every_combination_once_in_each_round()
    {
        var plan = Plan(Wish(3, Wet, Warm));

        Assert.All(plan.Bakes.GroupBy(bake => (bake.Bench, bake.Round)), round => Assert.Equal(
            ["64 22", "64 26", "70 22", "70 26"], round.Select(bake => string.Join(' ', bake.Levels)).Order(StringComparer.Ordinal)));
        Assert.All(plan.Bakes.GroupBy(bake => bake.Bench), bench => Assert.Equal(Enumerable.Range(1, bench.Count()), bench.Select(bake => bake.Order)));
    }

    [Fact]
    public void Half_of_four_factors_is_the_printed_one()
    {
        var plan = Plan(Wish(2, Wet, Warm, Salt, Oven) with { IsHalf = true });

        // Montgomery (2017), Design and Analysis of Experiments, table 8.3: the half of 2^4 with I = ABCD, its runs
        // (1), ad, bd, ab, cd, ac, bc, abcd, each letter a factor at its high level.
        string[] printed = ["", "ad", "bd", "ab", "cd", "ac", "bc", "abcd"];
        Assert.All(plan.Bakes.GroupBy(bake => (bake.Bench, bake.Round)), round => Assert.Equal(
            printed.Order(StringComparer.Ordinal), round.Select(bake => Letters(plan, bake)).Order(StringComparer.Ordinal)));
        Assert.Contains("What hydration and dough do together can't be told from what salt and oven do together.", plan.CannotTellApart);
    }

    [Fact]
    public void Half_of_three_factors_is_the_printed_one_and_says_what_it_mixes_up()
    {
        var plan = Plan(Wish(3, Wet, Warm, Salt) with { IsHalf = true });

        // Box and Hunter (1961), Technometrics 3: the half of 2^3 with I = ABC: a, b, c, abc.
        Assert.All(plan.Bakes.GroupBy(bake => (bake.Bench, bake.Round)), round => Assert.Equal(
            ["a", "abc", "b", "c"], round.Select(bake => Letters(plan, bake)).Order(StringComparer.Ordinal)));
        Assert.Contains("What hydration does can't be told from what dough and salt do together beyond what each does by itself.", plan.CannotTellApart);
    }

    [Fact]
    public void What_is_set_for_all_is_the_same_at_every_bench_in_a_round()
    {
        var plan = Plan(Wish(4, Oven, Wet) with { SetForAll = "oven" });

        Assert.All(plan.Bakes.GroupBy(bake => bake.Round), round => Assert.Single(round.Select(bake => bake.Levels[0]).Distinct()));
        Assert.All(
            plan.Bakes.GroupBy(bake => bake.Levels[0]),
            level => Assert.Equal(plan.Rounds / 2, level.Select(bake => bake.Round).Distinct().Count()));
        Assert.Equal([true, false], plan.Powers.Select(power => power.IsBetweenRounds));
        Assert.Equal(plan.Rounds - 2, plan.Powers[0].DegreesOfFreedom);
        Assert.StartsWith($"Oven is the same for all benches in a round, so it is compared from round to round, {plan.Rounds} in all", plan.CannotTellApart[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Chances_are_those_of_R()
    {
        static IReadOnlyList<FactorPower> Of(ClassPlanWish wish, int sets, double difference) => new ClassPower(wish, 0.2).Of(sets, difference);

        Assert.Equal(CompareExpected.Of("plan", "two by two, 3 benches, 2 rounds"), Of(Wish(3, Wet, Warm), 2, 0.3)[0].Power, Tolerance);
        Assert.Equal(CompareExpected.Of("plan", "three by two, 4 benches, 1 round, three"), Of(Wish(4, Flour, Wet), 1, 0.3)[0].Power, Tolerance);
        Assert.Equal(CompareExpected.Of("plan", "three by two, 4 benches, 1 round, two"), Of(Wish(4, Flour, Wet), 1, 0.3)[1].Power, Tolerance);
        Assert.Equal(
            CompareExpected.Of("plan", "half of 2^3, 3 benches, 3 rounds"),
            Of(Wish(3, Wet, Warm, Salt) with { IsHalf = true }, 3, 0.15)[2].Power, Tolerance);

        // 40,000 made-up classes, fitted one by one: five standard errors.
        Assert.Equal(CompareExpected.Of("plan", "two by two, simulated"), Of(Wish(3, Wet, Warm), 2, 0.3)[0].Power, 5 * 0.0013);
    }

    [Fact]
    public void One_bench_and_one_factor_is_the_t_test_of_pairs()
    {
        // Each round is a pair; a difference of two bakes scatters by the root of two of one. Cohen (1988), section 2.3.4.
        var pairs = new PowerOfT(TTestLayout.OneGroup, 0.2 * Math.Sqrt(2), 0.05, true) { CountsWrongSide = true };

        foreach (var rounds in new[] { 2, 5, 12 })
        {
            Assert.Equal(pairs.Power(rounds, 0.3), new ClassPower(Wish(1, Wet), 0.2).Of(rounds, 0.3)[0].Power, Tolerance);
        }
    }

    [Fact]
    public void Rounds_are_as_few_as_the_wished_chance_allows()
    {
        var wish = Wish(3, Wet, Warm);
        var plan = Plan(wish);
        var power = new ClassPower(wish, 0.2);

        Assert.True(power.Least(plan.Rounds, 0.3) >= 0.8);
        Assert.True(power.Least(plan.Rounds - 1, 0.3) < 0.8);
        Assert.Equal((int)Math.Ceiling(0.1 * plan.Rounds * 4), plan.SparePerBench);
    }

    [Fact]
    public void The_journals_own_scatter_is_used_where_none_is_said()
    {
        var plan = ClassPlan.Make(DemoJournal.Journal.Bakes, new ClassPlanWish([Wet], ["a", "b"], Measures.RiseTime, 15), 1).Value;
        var fit = RiseTime.Ask(DemoJournal.Journal.Bakes).Value;

        Assert.Equal(100 * (Math.Exp(fit.ResidualSd) - 1), plan.Scatter, Tolerance);
        Assert.Equal(fit.UsedCount, plan.ScatterBakes);
    }

    [Fact]
    public void Same_seed_same_plan_and_another_seed_another_order()
    {
        static string Written(int seed) => string.Join(';', Plan(Wish(3, Wet, Warm), seed).Bakes.Select(bake => $"{bake.Bench} {bake.Order} {string.Join(' ', bake.Levels)}"));

        Assert.Equal(Written(5), Written(5));
        Assert.NotEqual(Written(5), Written(6));
    }

    [Fact]
    public void Wishes_that_cannot_be_met_say_what_can()
    {
        // R 4.2, noncentral t of 4 degrees of freedom: 1 - pt(q, 4, ncp) + pt(-q, 4, ncp) with q = qt(0.975, 4) and
        // ncp = 0.3 / (0.2 sqrt(2 / 4)) is 0.369, and 0.8 with 0.532 in place of 0.3.
        Refuses(
            Wish(2, Wet, Warm) with { MostPerBench = 4 },
            "With at most 4 bakes at each of 2 benches a difference of 0.30 mL/g is found in 37 of 100 such classes.",
            "0.53 mL/g can be found in 80 of 100: look for that, allow more bakes, or take more benches.");
        Refuses(
            Wish(2, Wet, Warm, Salt) with { MostPerBench = 4 },
            "Each bench would have to bake 8 at the least, and 4 are its most.",
            "Allow more bakes, vary less, or let half of the combinations do.");
        Refuses(
            Wish(1, Wet) with { MostPerBench = 2 },
            "With at most 2 bakes at each of 1 bench nothing is left over to see the scatter by.",
            "Allow more bakes, or more benches.");
        Refuses(
            Wish(2, Wet, Flour) with { IsHalf = true },
            "Half of the combinations takes three things varied or more, each at two levels.",
            "There are 2, at 2, 3: plan all combinations, or change that.");
        Refuses(Wish(2, Wet, Warm) with { SetForAll = "proof" }, "Nothing named proof is varied, so it can't be set for all.", "Name one of these: hydration, dough.");
        Refuses(
            Wish(2, Wet, Warm, Salt) with { SetForAll = "salt", IsHalf = true },
            "Half of the combinations and one setting for all are not planned together.", "Leave one of the two out.");
        Refuses(
            Wish(2, Wet) with { Scatter = null },
            "The journal doesn't say how much the specific volume scatters: no bake has a loaf volume that can be used.",
            "Say how much, one standard deviation in mL/g, or log more bakes first.");
    }

    private static void Refuses(ClassPlanWish wish, string message, string remedy)
    {
        Assert.False(ClassPlan.Make([], wish, 1).TryGet(out _, out var problem));
        Assert.Equal((message, remedy), (problem.Message, problem.Remedy));
    }

    private static string Letters(ClassPlan plan, BenchBake bake) => string.Concat(
        plan.Wish.Factors.Select((factor, place) => bake.Levels[place] == factor.Levels[1] ? "abcd"[place].ToString() : ""));
}
