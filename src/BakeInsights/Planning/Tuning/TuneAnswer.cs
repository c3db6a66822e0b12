using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The formula that meets a baker's wishes best, as far as a journal can tell.</summary>
public sealed class TuneAnswer
{
    private readonly Lazy<TunedFormula?> _safe;
    private readonly Lazy<IReadOnlyList<TuneStep>> _steps;
    private readonly Lazy<IReadOnlyList<GoalCost>> _costs;
    private readonly Lazy<TuneMap?> _map;

    // What a simulation doesn't ask for is worked out only when somebody does.
    internal TuneAnswer(TuneWork work, double[] best, double[] advised)
    {
        _safe = new(() => work.Safe(best));
        _steps = new(() => [.. work.StepsFrom(advised)]);
        _costs = new(() => work.Costs(advised));
        _map = new(() => work.Map(advised));
    }

    /// <summary>What was wished.</summary>
    public required TuneWish Wish { get; init; }

    /// <summary>The settings that the models speak of.</summary>
    public required IReadOnlyList<Measure> Settings { get; init; }

    /// <summary>The house formula.</summary>
    public required TunedFormula House { get; init; }

    /// <summary>The formula with the best chance among the doughs baked; what hardly matters is as in the house formula.</summary>
    public required TunedFormula Best { get; init; }

    /// <summary>Whether the journal supports a change: <see cref="Tuning.LeastGain"/>, <see cref="Tuning.LeastCertainty"/>.</summary>
    public required bool IsChange { get; init; }

    /// <summary>The formula advised.</summary>
    public TunedFormula Advised => IsChange ? Best : House;

    /// <summary>The probability that <see cref="Best"/> has the better chance of the two.</summary>
    public required double ChanceOfBetter { get; init; }

    /// <summary>The formula nearest to the house formula, on the way to the best one, that is safe; null if none is.</summary>
    public TunedFormula? Safe => _safe.Value;

    /// <summary>What the journal supports of goals that can't be met, by themselves or together; empty when all can.</summary>
    public required IReadOnlyList<GoalReach> OutOfReach { get; init; }

    /// <summary>What a step away from the formula advised does.</summary>
    public IReadOnlyList<TuneStep> Steps => _steps.Value;

    /// <summary>What each goal asks of the others.</summary>
    public IReadOnlyList<GoalCost> Costs => _costs.Value;

    /// <summary>The chance over dough temperature and hydration; null where the models don't speak of both.</summary>
    public TuneMap? Map => _map.Value;

    /// <summary>What the models rest on, in the order of the goals.</summary>
    public required IReadOnlyList<TunedModel> Models { get; init; }

    /// <summary>How far the residuals of two results of one bake go together; null where not two are wished for.</summary>
    public required Estimate? Correlation { get; init; }

    /// <summary>The kitchen that was reckoned with; null where the journal knows none.</summary>
    public required TuneKitchen? Kitchen { get; init; }

    internal KitchenDoughTemperature? Learned { get; init; }

    /// <summary>The water for the dough advised; null where no kitchen is known.</summary>
    /// <param name="waterG">Water of the dough, in grams.</param>
    public Attempt<NeededWater>? WaterFor(double waterG) =>
        Learned is not null && Kitchen is not null && Advised.Settings[Measures.DoughTemperature] is { } celsius
            ? Learned.WaterFor(Temperature.FromC(celsius), Kitchen.Conditions, Kitchen.Water, waterG)
            : null;
}

/// <summary>What a journal supports of a goal.</summary>
/// <param name="Goal">The goal.</param>
/// <param name="Settings">The dough that comes nearest.</param>
/// <param name="Result">What to expect of it, in the result's canonical unit.</param>
public sealed record GoalReach(TuneGoal Goal, DoughSettings Settings, CurvePoint Result);

/// <summary>A model that a tuning rests on.</summary>
/// <param name="Result">What it explains.</param>
/// <param name="Used">How many bakes it rests on.</param>
/// <param name="LeftOutTerms">The terms that the journal can't support.</param>
public sealed record TunedModel(string Result, int Used, IReadOnlyList<LeftOutTerm> LeftOutTerms);
