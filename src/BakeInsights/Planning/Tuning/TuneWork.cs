using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The work of one tuning: chooses a formula with one set of draws, and counts its chances with another.</summary>
internal sealed class TuneWork
{
    private static readonly (Measure Setting, double Change)[] Steps =
    [
        (Measures.DoughTemperature, 2), (Measures.DoughTemperature, -2), (Measures.Hydration, 2), (Measures.Hydration, -2),
        (Measures.Yeast, 0.2), (Measures.Yeast, -0.2),
    ];

    private readonly TuneWish _wish;
    private readonly DoughSettings _house;
    private readonly double[] _housePlace;
    private readonly BakedRegion _region;
    private readonly TuneBounds _bounds;
    private readonly TuneModel _choosing;
    private readonly TuneModel _counting;
    private readonly FormulaSearch _search;

    public TuneWork(
        TuneWish wish, DoughSettings house, double[] housePlace, BakedRegion region, TuneBounds bounds, TuneModel choosing, TuneModel counting)
    {
        (_wish, _house, _housePlace, _region, _bounds) = (wish, house, housePlace, region, bounds);
        (_choosing, _counting) = (choosing, counting);
        _search = new FormulaSearch(region, bounds.Low, bounds.High);
    }

    /// <summary>The answer.</summary>
    public Attempt<TuneAnswer> Answer()
    {
        if (_search.Best(_choosing.Chance) is not { } best)
        {
            return new FitProblem(
                FitProblemKind.ImpossibleValue,
                [.. _wish.Limits.Select(one => one.Setting.Name).DefaultIfEmpty(Measures.DoughTemperature.Name)],
                "No dough between those that were baked keeps to all limits.",
                "Widen the limits, or bake such a dough first.");
        }

        var place = _search.Nearer(best, _choosing.Chance);
        var (houseChances, chances) = (_counting.Chances(_housePlace), _counting.Chances(place));
        var better = chances.Zip(houseChances, (changed, kept) => changed > kept ? 1.0 : 0).Average();
        var isChange = !_search.IsAllowed(_housePlace)
            || (chances.Average() - houseChances.Average() >= Tuning.LeastGain && better >= Tuning.LeastCertainty);
        return new TuneAnswer(this, best, isChange ? place : _housePlace)
        {
            Wish = _wish,
            Settings = _counting.Axes,
            House = Formula(_housePlace),
            Best = Formula(place),
            IsChange = isChange,
            ChanceOfBetter = better,
            OutOfReach = OutOfReach(best),
            Models = [.. _counting.Models.Select(model => new TunedModel(model.Question.Name, model.Basis.Used, model.Selection.LeftOutTerms))],
            Correlation = CorrelationOf(_counting),
            Kitchen = _bounds.Kitchen,
            Learned = _bounds.Learned,
        };
    }

    /// <summary>The safe formula on the way to the best one.</summary>
    public TunedFormula? Safe(double[] best)
    {
        var safe = _search.IsAllowed(_region.Anchor) ? _search.Nearest(best, _choosing.Chance, Tuning.SafeChance) : best;
        var formula = Formula(safe);
        return formula.Chance.Value >= Tuning.SafeChance ? formula : null;
    }

    /// <summary>What each goal asks of the others.</summary>
    public IReadOnlyList<GoalCost> Costs(double[] advised) => [.. _wish.Goals.Select(goal => Cost(goal, Alone(goal).Chance, advised))];

    /// <summary>The chance over dough temperature and hydration.</summary>
    public TuneMap? Map(double[] advised) => TuneMap.Of(_choosing, advised);

    // A goal by itself has at least the chance of all together.
    private GoalReach[] OutOfReach(double[] best)
    {
        if (_counting.Chance(best) >= Tuning.LeastChance)
        {
            return [];
        }

        var alone = _wish.Goals.Select(Alone).ToList();
        GoalReach[] single = [.. alone.Where(goal => goal.Chance < Tuning.LeastChance).Select(goal => goal.Reach)];
        return single.Length > 0 ? single : [.. alone.Select(goal => goal.Reach)];
    }

    // The best chance of a goal by itself; and what the models expect at most of its result, or at least.
    private (GoalReach Reach, double Chance) Alone(TuneGoal goal)
    {
        var (choosing, counting) = (_choosing.With(one => one == goal ? one : null), _counting.With(one => one == goal ? one : null));
        var best = _search.Best(choosing.Chance)!;
        var chance = counting.Chance(best);
        var model = _counting.Models[_wish.Goals.Index().First(one => one.Item == goal).Index];
        double Expected(double[] place) => model.Fit.Combination(_counting.Row(model, place)).Estimate;

        // Too much is asked of a result whose lower bound lies above all that is expected; else too little.
        var sign = goal.Low is { } low && model.Question.Scale.Of(low) > Expected(best) ? 1 : -1;
        var extreme = _search.Best(place => sign * Expected(place))!;
        var row = _counting.Row(model, extreme);
        var scale = model.Question.Scale;
        return (
            new GoalReach(
                goal,
                Dough(extreme),
                new CurvePoint(null, scale.Back(Expected(extreme)), scale.Back(model.Fit.MeanInterval(row, ModelAnswer.Level)), scale.Back(model.Fit.PredictionInterval(row, ModelAnswer.Level)))),
            chance);
    }

    private TunedFormula Formula(double[] place)
    {
        var chances = _counting.Chances(place);
        Array.Sort(chances);
        const double tail = (1 - ModelAnswer.Level) / 2;
        double End(double share) => chances[(int)Math.Round(share * (chances.Length - 1))];
        return new TunedFormula(
            Dough(place),
            new Estimate(chances.Average(), End(tail), End(1 - tail)),
            [.. _wish.Goals.Select(goal => _counting.With(one => one == goal ? one : null).Chance(place))],
            _region.Holds(place));
    }

    private DoughSettings Dough(double[] place) =>
        _counting.Axes.Zip(place).Aggregate(_house, (dough, axis) => dough.With(axis.First, axis.Second));

    /// <summary>What steps away from a formula do.</summary>
    public IEnumerable<TuneStep> StepsFrom(double[] place)
    {
        foreach (var (setting, change) in Steps)
        {
            if (_counting.Axes.Index().FirstOrDefault(axis => axis.Item == setting) is (var axis, { }))
            {
                double[] moved = [.. place];
                moved[axis] += change;
                if (moved[axis] > 0)
                {
                    yield return new TuneStep(setting, change, Formula(moved));
                }
            }
        }
    }

    private GoalCost Cost(TuneGoal goal, double alone, double[] advised)
    {
        double? without = null;
        if (_wish.Goals.Count > 1)
        {
            var others = _search.Best(_choosing.With(one => one == goal ? null : one).Chance)!;
            without = _counting.With(one => one == goal ? null : one).Chance(others);
        }

        return new GoalCost(goal, alone, without, SafeBound(goal, advised));
    }

    // The bound that gives up just enough of one goal, by halving between half and twice it.
    private double? SafeBound(TuneGoal goal, double[] place)
    {
        if (goal.Low is not null && goal.High is not null)
        {
            return null;
        }

        const int halvings = 20;
        var bound = (goal.Low ?? goal.High)!.Value;
        var (strict, loose) = goal.Low is null ? (bound / 2, bound * 2) : (bound * 2, bound / 2);
        double At(double value) => _counting.With(one => one == goal ? one.At(value) : one).Chance(place);
        if (At(loose) < Tuning.SafeChance)
        {
            return null;
        }

        for (var step = 0; step < halvings; step++)
        {
            var middle = (strict + loose) / 2;
            (strict, loose) = At(middle) >= Tuning.SafeChance ? (strict, middle) : (middle, loose);
        }

        return loose;
    }

    private static Estimate? CorrelationOf(TuneModel model)
    {
        if (model.Models.Count != 2)
        {
            return null;
        }

        double[] correlations = [.. model.Draws.CorrelationsOf(0, 1).Order()];
        const double tail = (1 - ModelAnswer.Level) / 2;
        return new Estimate(
            correlations.Average(), correlations[(int)(tail * correlations.Length)], correlations[(int)((1 - tail) * correlations.Length)]);
    }
}
