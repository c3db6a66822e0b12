using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>How warm a dough should about be, to find a temperature that is mistyped; no more exact than that needs.</summary>
/// <remarks>
/// Flour, water and preferment by mass and specific heat, and the heat that flour sets free as it takes up water. The
/// mixer's work and what the bowl takes are left out, and so are doughs with milk or egg, whose temperatures nobody logs.
/// </remarks>
internal static class RoughHeatBalance
{
    // kJ/(kg K): physics; Cengel and Boles, Thermodynamics, 8th edition, problem 5-157.
    private const double Water = 4.18;
    private const double Flour = 1.76;

    // kJ for each kg of flour: 6.5 BTU/lb (trade dictionary, "heat of hydration").
    private const double Wetting = 15.1;

    /// <summary>The dough's temperature in °C with water of this temperature; NaN where the row does not say enough.</summary>
    public static double DoughC(RowValues row, double waterC)
    {
        var values = row.Quantities;
        if (values[C.Milk.Index] > 0 || values[C.Egg.Index] > 0)
        {
            return double.NaN;
        }

        var room = values[C.RoomTemp.Index];
        var flour = values[C.Flour.Index] * Flour;
        var water = values[C.Water.Index] * Water;
        var heat = (flour * Or(values[C.FlourTemp.Index], room)) + (water * waterC) + (values[C.Flour.Index] * Wetting);
        var capacity = flour + water;
        if (values[C.Preferment.Index] is > 0 and var preferment)
        {
            var wet = values[C.PrefermentHydration.Index] / 100;
            var fermented = preferment * (Flour + (wet * Water)) / (1 + wet);
            heat += fermented * Or(values[C.PrefermentTemp.Index], room);
            capacity += fermented;
        }

        return heat / capacity;
    }

    private static double Or(double value, double otherwise) => double.IsNaN(value) ? otherwise : value;
}
