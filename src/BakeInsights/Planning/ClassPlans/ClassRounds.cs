using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Draws by lot what each bench bakes in each round.</summary>
internal static class ClassRounds
{
    /// <summary>The bakes, bench after bench.</summary>
    public static IEnumerable<BenchBake> Of(ClassPlanWish wish, int rounds, int seed)
    {
        var forAll = wish.Factors.FirstOrDefault(factor => factor.Name == wish.SetForAll);
        var within = wish.Factors.Where(factor => factor != forAll).ToList();

        // The level that serves all in each round, in an order drawn by lot.
        var levels = forAll is null ? [] : RunPlan.FullFactorial([forAll], rounds / forAll.Levels.Count, seed).Runs.Select(run => run.Levels[0]).ToArray();
        var blocks = Blocks(wish, within, rounds * wish.Benches.Count, seed);
        for (var bench = 0; bench < wish.Benches.Count; bench++)
        {
            var order = 0;
            for (var round = 0; round < rounds; round++)
            {
                foreach (var combination in blocks[(bench * rounds) + round])
                {
                    order++;
                    yield return new BenchBake(wish.Benches[bench], round + 1, order, Levels(wish, within, combination, forAll is null ? null : levels[round]));
                }
            }
        }
    }

    private static IReadOnlyList<IReadOnlyList<string>>[] Blocks(ClassPlanWish wish, List<FactorLevels> within, int count, int seed)
    {
        if (within.Count == 0)
        {
            return [.. Enumerable.Repeat<IReadOnlyList<IReadOnlyList<string>>>([[]], count)];
        }

        if (wish.IsHalf)
        {
            return [.. Enumerable.Range(0, count).Select(block => RunPlan.HalfFactorial(within, 1, unchecked((seed * count) + block)).Runs.Select(run => run.Levels).ToArray())];
        }

        return count == 1
            ? [RunPlan.FullFactorial(within, 1, seed).Runs.Select(run => run.Levels).ToArray()]
            : [.. RunPlan.RandomizedBlocks(within, count, seed).Runs.GroupBy(run => run.Block).Select(block => block.Select(run => run.Levels).ToArray())];
    }

    private static IReadOnlyList<string> Levels(ClassPlanWish wish, List<FactorLevels> within, IReadOnlyList<string> combination, string? forAll) =>
        [.. wish.Factors.Select(factor => within.IndexOf(factor) is var place and >= 0 ? combination[place] : forAll!)];
}
