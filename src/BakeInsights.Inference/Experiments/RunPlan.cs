namespace BakeInsights.Inference;

/// <summary>A planned experiment: which levels are run, and in which order drawn by lot.</summary>
/// <remarks>
/// Order by lot is what lets differences be laid to the factors: Fisher (1935), The Design of Experiments. Layouts:
/// Montgomery (2017), Design and Analysis of Experiments, 9th ed., chapters 4, 5, 8 and 14.
/// </remarks>
/// <param name="Factors">The factors' names.</param>
/// <param name="Runs">The runs in the order in which they are to be made.</param>
public sealed record RunPlan(IReadOnlyList<string> Factors, IReadOnlyList<PlannedRun> Runs)
{
    /// <summary>Every combination of the levels, each as often.</summary>
    /// <param name="factors">The factors, at least one.</param>
    /// <param name="replicates">How often each combination is run, at least once.</param>
    /// <param name="seed">The seed of the order.</param>
    /// <exception cref="ArgumentException">There is no factor, two share a name, or replicates are below 1.</exception>
    public static RunPlan FullFactorial(IReadOnlyList<FactorLevels> factors, int replicates, int seed)
    {
        Refuse(factors, replicates);
        var combinations = Combinations(factors).ToArray();
        return Plan(factors, [[.. Enumerable.Repeat(combinations, replicates).SelectMany(c => c)]], seed);
    }

    /// <summary>
    /// Half of the combinations of two-level factors: those in which the product of all levels, as -1 and 1, is 1.
    /// Effects of one factor are mixed up only with those of all others together (resolution k).
    /// </summary>
    /// <remarks>Box and Hunter (1961), The 2^(k-p) fractional factorial designs, Technometrics 3, 311-351.</remarks>
    /// <param name="factors">Three factors or more of two levels each.</param>
    /// <param name="replicates">How often each combination is run, at least once.</param>
    /// <param name="seed">The seed of the order.</param>
    /// <exception cref="ArgumentException">
    /// There are fewer than three factors, or one has other than two levels.
    /// </exception>
    public static RunPlan HalfFactorial(IReadOnlyList<FactorLevels> factors, int replicates, int seed)
    {
        Refuse(factors, replicates);
        if (factors.Count < 3 || factors.Any(f => f.Levels.Count != 2))
        {
            throw new ArgumentException("A half needs three factors or more, each of two levels.", nameof(factors));
        }

        var half = Combinations(factors)
            .Where(levels => levels.Where((level, j) => level == factors[j].Levels[0]).Count() % 2 == 0).ToArray();
        return Plan(factors, [[.. Enumerable.Repeat(half, replicates).SelectMany(c => c)]], seed);
    }

    /// <summary>
    /// Every combination once in each block, such as a day or an oven, in an order of the block's own.
    /// </summary>
    /// <param name="factors">The factors, at least one.</param>
    /// <param name="blocks">The number of blocks, at least 2.</param>
    /// <param name="seed">The seed of the orders.</param>
    /// <exception cref="ArgumentException">There is no factor, two share a name, or blocks are below 2.</exception>
    public static RunPlan RandomizedBlocks(IReadOnlyList<FactorLevels> factors, int blocks, int seed)
    {
        Refuse(factors, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(blocks, 2);
        var combinations = Combinations(factors).ToArray();
        return Plan(factors, [.. Enumerable.Repeat(combinations, blocks)], seed);
    }

    /// <summary>
    /// Each treatment once in each row and each column, such as days and places in the oven. The factors of the plan
    /// are row, column and treatment; blocks are the rows, run in order.
    /// </summary>
    /// <remarks>
    /// A square shifted by one a row, with rows, columns and treatments then put in an order by lot. Not every square
    /// can come up from 4 treatments on, but every treatment is as likely in each place, which is what the analysis
    /// needs. Fisher and Yates (1963), Statistical Tables, 6th ed.
    /// </remarks>
    /// <param name="treatment">The treatments, three or more.</param>
    /// <param name="seed">The seed.</param>
    /// <exception cref="ArgumentException">There are fewer than three treatments.</exception>
    public static RunPlan LatinSquare(FactorLevels treatment, int seed)
    {
        ArgumentNullException.ThrowIfNull(treatment);
        var size = treatment.Levels.Count;
        if (size < 3)
        {
            throw new ArgumentException(
                "A Latin square needs three treatments or more, to leave anything over.", nameof(treatment));
        }

        var stream = new SeededStream(seed, 0);
        var (rows, columns, treatments) = (Order(size, ref stream), Order(size, ref stream), Order(size, ref stream));
        var runs =
            from row in Enumerable.Range(0, size)
            from column in Enumerable.Range(0, size)
            let level = treatment.Levels[treatments[(rows[row] + columns[column]) % size]]
            select new PlannedRun((row * size) + column + 1, row + 1, [$"{row + 1}", $"{column + 1}", level]);
        return new RunPlan(["row", "column", treatment.Name], [.. runs]);
    }

    /// <summary>
    /// Whole plots, such as doughs or bakes, each at one level of the factor that is hard to change, and within each
    /// whole plot every combination of the others.
    /// </summary>
    /// <remarks>
    /// The whole plots are to be analysed as groups (<see cref="MixedModel"/>): the hard factor is compared with the
    /// spread between them, the others with that within.
    /// </remarks>
    /// <param name="whole">The factor that is hard to change.</param>
    /// <param name="within">The factors that are changed within a whole plot, at least one.</param>
    /// <param name="replicates">The whole plots at each level, at least 2.</param>
    /// <param name="seed">The seed of the orders.</param>
    /// <exception cref="ArgumentException">
    /// There is no factor within, two share a name, or replicates are below 2.
    /// </exception>
    public static RunPlan SplitPlot(FactorLevels whole, IReadOnlyList<FactorLevels> within, int replicates, int seed)
    {
        ArgumentNullException.ThrowIfNull(whole);
        Refuse(within, replicates);
        ArgumentOutOfRangeException.ThrowIfLessThan(replicates, 2);
        FactorLevels[] factors = [whole, .. within];
        Refuse(factors, replicates);
        var stream = new SeededStream(seed, 0);
        var plots = Order(whole.Levels.Count * replicates, ref stream)
            .Select(plot => whole.Levels[plot % whole.Levels.Count]);
        var combinations = Combinations(within).ToArray();
        var blocks = plots.Select(level => combinations.Select(c => (string[])[level, .. c]).ToArray());
        return Plan(factors, [.. blocks], seed);
    }

    private static void Refuse(IReadOnlyList<FactorLevels> factors, int replicates)
    {
        ArgumentNullException.ThrowIfNull(factors);
        ArgumentOutOfRangeException.ThrowIfLessThan(replicates, 1);
        if (factors.Count == 0 || factors.Select(f => f.Name).Distinct().Count() < factors.Count)
        {
            throw new ArgumentException("An experiment needs factors, each of its own name.", nameof(factors));
        }
    }

    /// <summary>Every combination, the last factor changing first.</summary>
    private static IEnumerable<string[]> Combinations(IReadOnlyList<FactorLevels> factors) =>
        factors.Aggregate<FactorLevels, IEnumerable<string[]>>(
            [[]],
            (start, factor) => start.SelectMany(levels => factor.Levels.Select(level => (string[])[.. levels, level])));

    /// <summary>Puts the runs of each block in an order by lot, block after block.</summary>
    private static RunPlan Plan(IReadOnlyList<FactorLevels> factors, string[][][] blocks, int seed)
    {
        var runs = new List<PlannedRun>();
        for (var block = 0; block < blocks.Length; block++)
        {
            var stream = new SeededStream(seed, block + 1);
            foreach (var place in Order(blocks[block].Length, ref stream))
            {
                runs.Add(new PlannedRun(runs.Count + 1, block + 1, blocks[block][place]));
            }
        }

        return new RunPlan([.. factors.Select(f => f.Name)], runs);
    }

    private static int[] Order(int count, ref SeededStream stream)
    {
        int[] order = [.. Enumerable.Range(0, count)];
        stream.Shuffle(order);
        return order;
    }
}
