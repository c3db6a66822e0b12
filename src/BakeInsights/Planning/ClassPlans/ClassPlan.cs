using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A class's bakes, bench by bench.</summary>
public sealed record ClassPlan
{
    private ClassPlan()
    {
    }

    /// <summary>What was wished.</summary>
    public required ClassPlanWish Wish { get; init; }

    /// <summary>The bakes, bench after bench, each in the order in which it bakes them.</summary>
    public required IReadOnlyList<BenchBake> Bakes { get; init; }

    /// <summary>Rounds: in each, every bench bakes every combination once; where one setting serves all, at one level of it.</summary>
    public required int Rounds { get; init; }

    /// <summary>Spare bakes of each bench, to repeat what was lost.</summary>
    public required int SparePerBench { get; init; }

    /// <summary>The chance of finding the wished difference, for each factor.</summary>
    public required IReadOnlyList<FactorPower> Powers { get; init; }

    /// <summary>How much single bakes scatter, one standard deviation in the unit of the difference.</summary>
    public required double Scatter { get; init; }

    /// <summary>How many bakes of the journal the scatter rests on; null where it was given.</summary>
    public required int? ScatterBakes { get; init; }

    /// <summary>What the plan can't tell apart, one sentence each.</summary>
    public required IReadOnlyList<string> CannotTellApart { get; init; }

    /// <summary>Plans a class's bakes.</summary>
    /// <remarks>
    /// Every bench is a block, and so is every round: Fisher (1935), The Design of Experiments. Orders are drawn by lot
    /// within each (<see cref="RunPlan"/>). Rounds are added until the wished difference is found with the wished chance in
    /// every factor that a bench sets for itself; one that is set for all is compared from round to round, and its chance
    /// is only said.
    /// </remarks>
    /// <param name="journalBakes">Bakes that say how much bakes scatter; may be none if the wish says it.</param>
    /// <param name="wish">What is wished.</param>
    /// <param name="seed">The seed of the orders.</param>
    /// <returns>The plan, or the problem that says what is possible.</returns>
    /// <exception cref="ArgumentException">The wish has no factor or bench, a name twice, or a number out of range.</exception>
    public static Attempt<ClassPlan> Make(IReadOnlyList<Bake> journalBakes, ClassPlanWish wish, int seed)
    {
        ArgumentNullException.ThrowIfNull(journalBakes);
        ClassPlanChecks.Require(wish);
        if (ClassPlanChecks.Find(wish) is { } impossible)
        {
            return impossible;
        }

        if (!ClassScatter.Of(journalBakes, wish).TryGet(out var scatter, out var problem))
        {
            return problem;
        }

        var power = new ClassPower(wish, scatter.OnScale);
        var difference = ClassScatter.ScaleOf(wish.Result, wish.Difference);
        for (var sets = power.FewestSets; sets <= power.MostSets; sets++)
        {
            if (power.Least(sets, difference) >= wish.Power)
            {
                return Made(wish, power, sets, power.Of(sets, difference), scatter, seed);
            }
        }

        return ClassPlanChecks.TooMuch(wish, power, difference);
    }

    private static ClassPlan Made(ClassPlanWish wish, ClassPower power, int sets, IReadOnlyList<FactorPower> powers, ClassScatter scatter, int seed)
    {
        var rounds = sets * power.RoundsPerSet;
        const double percent = 100;
        return new ClassPlan
        {
            Wish = wish,
            Bakes = [.. ClassRounds.Of(wish, rounds, seed)],
            Rounds = rounds,
            SparePerBench = (int)Math.Ceiling(wish.SparePct / percent * rounds * power.BakesPerRound),
            Powers = powers,
            Scatter = scatter.InUnit,
            ScatterBakes = scatter.Bakes,
            CannotTellApart = [.. ClassConfounding.Of(wish, rounds)],
        };
    }
}
