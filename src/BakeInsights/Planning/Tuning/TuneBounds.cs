using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Between which values each setting is looked for.</summary>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
/// <param name="Problem">Why no dough is left; null when one may be.</param>
/// <param name="Kitchen">The kitchen that bounds the dough's temperature; null where none is known.</param>
/// <param name="Learned">How warm its doughs get.</param>
internal sealed record TuneBounds(double[] Low, double[] High, FitProblem? Problem, TuneKitchen? Kitchen, KitchenDoughTemperature? Learned)
{
    /// <summary>The bounds of what was baked, of the wish, and of what the kitchen's water reaches.</summary>
    public static TuneBounds Of(IReadOnlyList<Measure> axes, IReadOnlyList<FittedModel> models, IReadOnlyList<Bake> bakes, TuneWish wish)
    {
        Bake[] used = [.. models.SelectMany(model => model.Selection.Bakes).Distinct()];
        double[] low = [.. axes.Select(axis => used.Min(axis.Of)!.Value)];
        double[] high = [.. axes.Select(axis => used.Max(axis.Of)!.Value)];
        var kitchen = wish.Kitchen ?? UsualKitchen(bakes);
        var learned = kitchen is not null && KitchenDoughTemperature.Learn(bakes).TryGet(out var found, out _) ? found : null;
        var limits = wish.Limits.ToList();
        if (learned is not null)
        {
            limits.Add(Reach(learned, kitchen!));
        }

        FitProblem? problem = null;
        foreach (var limit in limits)
        {
            for (var axis = 0; axis < axes.Count; axis++)
            {
                if (axes[axis] != limit.Setting)
                {
                    continue;
                }

                if (limit.Low > high[axis] || limit.High < low[axis])
                {
                    problem ??= new FitProblem(
                        FitProblemKind.ImpossibleValue,
                        [limit.Setting.Name],
                        $"No dough was baked with a {limit.Setting.Words} within the limits.",
                        $"Widen them to reach what was baked, {FormattableString.Invariant($"{low[axis]:0.0} to {high[axis]:0.0}")} {DisplayUnit.For(limit.Setting.Dimension, UnitSystem.Metric).Label}, or bake outside it first.");
                }

                low[axis] = Math.Max(low[axis], limit.Low);
                high[axis] = Math.Min(high[axis], limit.High);
            }
        }

        return new TuneBounds(low, high, problem, kitchen, learned);
    }

    // The doughs that the coldest and the warmest water make; yeast bounds the warmest.
    private static SettingLimit Reach(KitchenDoughTemperature learned, TuneKitchen kitchen)
    {
        const double usualWaterG = 650;
        var coldest = kitchen.Water.Draw(Temperature.FromC(0), usualWaterG).Reached;
        var warmest = kitchen.Water.Hot < KitchenWater.WarmestForYeast ? kitchen.Water.Hot : KitchenWater.WarmestForYeast;
        return new SettingLimit(
            Measures.DoughTemperature,
            learned.At(coldest, kitchen.Conditions).Estimate,
            learned.At(warmest, kitchen.Conditions).Estimate);
    }

    // The journal's usual day, and water from its coldest up to what yeast bears.
    public static TuneKitchen? UsualKitchen(IReadOnlyList<Bake> bakes)
    {
        double? MiddleOf(QuantityColumn column) => bakes.Select(bake => bake[column]).Known().ToList() is { Count: > 0 } values
            ? Quantiles.Median([.. values])
            : null;
        if (MiddleOf(BakeColumns.RoomTemp) is not { } room || bakes.Select(bake => bake[BakeColumns.WaterTemp]).Known().ToList() is not { Count: > 0 } water)
        {
            return null;
        }

        var flour = MiddleOf(BakeColumns.FlourTemp) ?? room;
        var cold = Math.Clamp(water.Min(), 0, KitchenWater.WarmestForYeast.C);
        return new TuneKitchen(
            new MixingConditions(Temperature.FromC(flour), Temperature.FromC(room)),
            new KitchenWater(Temperature.FromC(cold), KitchenWater.WarmestForYeast));
    }
}
