using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The water that the next bakes take, by what the journal taught of the kitchen's dough temperature.</summary>
internal static class NextWater
{
    // The taps aren't known: anything between ice water and what yeast bears is taken as within reach.
    private static readonly KitchenWater AnyTap = new(Temperature.FromC(0), KitchenWater.WarmestForYeast);

    // Only the split between taps goes by it, and that isn't shown.
    private const double AnyWaterG = 1_000;

    /// <summary>A temperature in °C for each dough, or why there is none.</summary>
    public static (IReadOnlyList<double?> WaterC, string WhyNone) Of(IReadOnlyList<Bake> bakes, IReadOnlyList<DoughSettings> doughs)
    {
        IReadOnlyList<double?> none = [.. doughs.Select(_ => (double?)null)];
        if (!KitchenDoughTemperature.Learn(bakes).TryGet(out var kitchen, out var problem))
        {
            return (none, problem.Message);
        }

        if (kitchen.Used.Count == 0)
        {
            return (none, "No bake has water, flour, room and dough temperature together, so no water can be named.");
        }

        double Middle(QuantityColumn column) => Quantiles.Median(kitchen.Used.Select(bake => bake[column]!.Value));
        var conditions = new MixingConditions(Temperature.FromC(Middle(BakeColumns.FlourTemp)), Temperature.FromC(Middle(BakeColumns.RoomTemp)));
        List<double?> waters = [];
        foreach (var dough in doughs)
        {
            if (!kitchen.WaterFor(Temperature.FromC(dough[Measures.DoughTemperature]!.Value), conditions, AnyTap, AnyWaterG).TryGet(out var water, out problem))
            {
                return (none, problem.Message);
            }

            waters.Add(water.Plan.Reached.C);
        }

        return (waters, "");
    }
}
