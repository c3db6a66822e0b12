using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Looks for the house formula with the best chance of what a baker wishes.</summary>
/// <remarks>
/// The chance is that of one more bake, over draws of the models' coefficients, their residuals' spreads and correlation,
/// and the bake's own luck (<see cref="JointRegression"/>); the formula is chosen with one set of draws, and its chance
/// counted with another. Among many formulas the one that looks best looks better than it is; what is believed of the terms
/// before any bake (<see cref="TunedResult"/>), and staying among the doughs baked, keep that small: docs/tuning.md has
/// how often the chance came true.
/// </remarks>
public static class Tuning
{
    /// <summary>The chance that is called safe. Our own choice.</summary>
    public const double SafeChance = 0.9;

    /// <summary>A change is advised when it adds at least this to the chance of the house formula. Our own choice.</summary>
    public const double LeastGain = 0.05;

    /// <summary>And when it is the better formula with at least this probability. Our own choice.</summary>
    public const double LeastCertainty = 0.95;

    /// <summary>A goal that no dough baked has this chance of can't be met. Our own choice.</summary>
    public const double LeastChance = 0.01;

    private const int DrawsToChoose = 400;
    private const int DrawsToCount = 4_000;

    /// <summary>Tunes.</summary>
    /// <param name="bakes">The journal's bakes.</param>
    /// <param name="wish">What is wished for.</param>
    /// <param name="seed">The seed of the draws; the same one gives the same answer.</param>
    /// <returns>The answer; or a problem: a result can't be modelled, or no dough baked keeps to the limits.</returns>
    /// <exception cref="ArgumentException">There is no goal, or two are of one result.</exception>
    public static Attempt<TuneAnswer> Ask(IReadOnlyList<Bake> bakes, TuneWish wish, int seed)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(wish);
        if (wish.Goals.Count == 0 || wish.Goals.Select(goal => goal.Result).Distinct().Count() < wish.Goals.Count)
        {
            throw new ArgumentException("A wish has at least one goal, and each result once.", nameof(wish));
        }

        List<FittedModel> models = [];
        foreach (var goal in wish.Goals)
        {
            if (!FittedModel.Make(goal.Tuned.Question, bakes).TryGet(out var model, out var problem))
            {
                return problem;
            }

            models.Add(model);
        }

        Measure[] axes = [.. DoughSettings.Settable.Where(setting => models.Any(model => BakedRegion.AxesOf(model).Contains(setting)))];
        var typical = DoughSettings.MedianOf([.. models.SelectMany(model => model.Selection.Bakes).Distinct()]);
        var house = axes.Aggregate(typical, (dough, axis) => wish.House?[axis] is { } value ? dough.With(axis, value) : dough);
        double[] housePlace = [.. axes.Select(axis => house[axis]!.Value)];
        if (BakedRegion.Of(models, axes, housePlace) is not { } region)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [.. wish.Goals.Select(goal => goal.Result.Name)],
                $"No bake has all of {string.Join(", ", wish.Goals.Select(goal => goal.Result.Words))} and the settings that they go with.",
                "Log them together for some bakes.");
        }

        var bounds = TuneBounds.Of(axes, models, bakes, wish);
        if (bounds.Problem is { } impossible)
        {
            return impossible;
        }

        return TuneModel.Draw(models, wish.Goals, axes, DrawsToChoose, unchecked(2 * seed)).Match<Attempt<TuneAnswer>>(
            choosing => TuneModel.Draw(models, wish.Goals, axes, DrawsToCount, unchecked((2 * seed) + 1)).Match<Attempt<TuneAnswer>>(
                counting => new TuneWork(wish, house, housePlace, region, bounds, choosing, counting).Answer(),
                problem => problem),
            problem => problem);
    }
}
