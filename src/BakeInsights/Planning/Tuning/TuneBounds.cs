using System.Globalization;
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
        var kitchen = wish.Kitchen ?? TuneKitchen.Usual(bakes);
        var learned = kitchen is not null && KitchenDoughTemperature.Learn(bakes).TryGet(out var found, out _) ? found : null;
        var limits = wish.Limits.ToList();
        if (learned is not null)
        {
            limits.Add((Measures.DoughTemperature, Reach(learned, kitchen!)));
        }

        FitProblem? problem = null;
        foreach (var (setting, limit) in limits)
        {
            if (axes.Index().FirstOrDefault(one => one.Item == setting) is not (var axis, { }))
            {
                continue;
            }

            if (limit.Low > high[axis] || limit.High < low[axis])
            {
                problem ??= Apart(setting, limit, low[axis], high[axis], wish.Units);
            }

            low[axis] = Math.Max(low[axis], limit.Low);
            high[axis] = Math.Min(high[axis], limit.High);
        }

        return new TuneBounds(low, high, problem, kitchen, learned);
    }

    private static FitProblem Apart(Measure setting, SettingLimits limits, double low, double high, UnitSystem units)
    {
        var unit = DisplayUnit.For(setting.Dimension, units);
        string Ends(double from, double to) => string.Create(
            CultureInfo.InvariantCulture, $"{unit.Value(from).ToString("F" + unit.Decimals, CultureInfo.InvariantCulture)} to {unit.Value(to).ToString("F" + unit.Decimals, CultureInfo.InvariantCulture)} {unit.Label}");
        return new FitProblem(
            FitProblemKind.ImpossibleValue,
            [setting.Name],
            $"No dough was baked with a {setting.Words} of {Ends(limits.Low, limits.High)}.",
            $"The bakes had {Ends(low, high)}: wish for some of that, or bake such a dough first.");
    }

    // The doughs that the coldest and the warmest water make; yeast bounds the warmest.
    private static SettingLimits Reach(KitchenDoughTemperature learned, TuneKitchen kitchen)
    {
        const double usualWaterG = 650;
        var coldest = kitchen.Water.Draw(Temperature.FromC(0), usualWaterG).Reached;
        var warmest = kitchen.Water.Hot < KitchenWater.WarmestForYeast ? kitchen.Water.Hot : KitchenWater.WarmestForYeast;
        double[] ends = [learned.At(coldest, kitchen.Conditions).Estimate, learned.At(warmest, kitchen.Conditions).Estimate];
        return new SettingLimits(ends.Min(), ends.Max());
    }
}
