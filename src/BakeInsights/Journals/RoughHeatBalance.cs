using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>How warm a dough should about be, to find a temperature that is mistyped; no more exact than that needs.</summary>
/// <remarks>
/// Flour, water and preferment by mass and specific heat, and the heat that flour sets free as it takes up water. The
/// mixer's work and what the bowl takes are left out, and so are doughs with milk or egg, whose temperatures nobody logs.
/// <see cref="HeatBalance"/> is the exact one; this one makes no object for each of a million rows.
/// </remarks>
internal static class RoughHeatBalance
{
    /// <summary>The dough's temperature in °C with water of this temperature; NaN where the row does not say enough.</summary>
    public static double DoughC(RowValues row, double waterC)
    {
        var values = row.Quantities;
        if (values[C.Milk.Index] > 0 || values[C.Egg.Index] > 0)
        {
            return double.NaN;
        }

        var room = values[C.RoomTemp.Index];
        var flour = values[C.Flour.Index] * SpecificHeats.Flour;
        var water = values[C.Water.Index] * SpecificHeats.Water;
        var heat = (flour * Or(values[C.FlourTemp.Index], room)) + (water * waterC) + (values[C.Flour.Index] * HeatBalance.TradeHydrationKjPerKgFlour);
        var capacity = flour + water;
        if (values[C.Preferment.Index] is > 0 and var preferment)
        {
            var wet = values[C.PrefermentHydration.Index] / 100;
            var fermented = preferment * (SpecificHeats.Flour + (wet * SpecificHeats.Water)) / (1 + wet);
            heat += fermented * Or(values[C.PrefermentTemp.Index], room);
            capacity += fermented;
        }

        return heat / capacity;
    }

    private static double Or(double value, double otherwise) => double.IsNaN(value) ? otherwise : value;
}
