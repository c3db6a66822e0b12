namespace BakeInsights;

/// <summary>The friction factor that each bake shows.</summary>
public static class FrictionByBake
{
    /// <summary>
    /// The friction factor by the rule of three temperatures, or of four with a preferment
    /// (<see cref="TemperatureRule.Friction"/>). Its values are differences of temperature: 5 °F are 2.8 °C.
    /// </summary>
    public static Measure FrictionFactor { get; } = new(
        "friction_factor_c", "Friction factor", Dimension.Temperature,
        "3 x dough_temp_c - room_temp_c - flour_temp_c - water_temp_c; 4 x and less preferment_temp_c too with a preferment",
        "professional school notes, Dough temperature, 2009", Friction);

    private static double? Friction(Bake bake)
    {
        if (bake[BakeColumns.DoughTemp] is not { } dough || bake[BakeColumns.RoomTemp] is not { } room
            || bake[BakeColumns.FlourTemp] is not { } flour || bake[BakeColumns.WaterTemp] is not { } water)
        {
            return null;
        }

        var hasPreferment = bake[BakeColumns.Preferment] > 0;
        if (hasPreferment && bake[BakeColumns.PrefermentTemp] is null)
        {
            return null;
        }

        return TemperatureRule.Friction(
            Temperature.FromC(dough), Temperature.FromC(room), Temperature.FromC(flour), Temperature.FromC(water),
            hasPreferment ? Temperature.FromC(bake[BakeColumns.PrefermentTemp]!.Value) : null).C;
    }
}
