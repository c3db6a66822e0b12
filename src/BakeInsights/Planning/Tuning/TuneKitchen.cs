using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Under what conditions a dough is mixed, and with what water.</summary>
/// <param name="Conditions">Flour, room and mixing time.</param>
/// <param name="Water">The taps and the ice.</param>
public sealed record TuneKitchen(MixingConditions Conditions, KitchenWater Water)
{
    /// <summary>A journal's usual day: its medians, and water from its coldest up to what yeast bears; null where it has no room or water temperature.</summary>
    public static TuneKitchen? Usual(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
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
