namespace BakeInsights.Tests;

/// <summary>Dough temperature, friction, ice, heat.</summary>
internal static class WaterExamples
{
    private const string School = "professional school notes, \"Dough temperature\", 2009";
    private const string Treatise = "A Treatise on Baking, \"The temperature of the bread dough\"";
    private const string IceTable = "printed table of lb ice for a lb of water, 3 decimals";

    public static IEnumerable<WorkedExample> All =>
    [
        .. Rule(1, "dough 75 °F; flour 65, room 65, friction 8", 75, 65, 65, 8, 87, School),
        .. Rule(2, "dough 80 °F; flour 65, room 75, friction 35", 80, 65, 75, 35, 65, "trade column, June 2018"),
        .. WorkedExample.InBothUnits(
            3, "water for dough 75 °F; room, flour, starter 71, friction 20",
            TemperatureRule.Water(F(75), F(71), F(71), Difference(20), F(71)), 67, 1e-9,
            "page \"Precise water temperature for the perfect loaf\""),
        .. Rule(4, "dough 78 °F; flour 67, shop 85, no friction", 78, 67, 85, 0, 82, Treatise),
        .. Rule(4, "dough 78 °F; flour 62, shop 72, no friction", 78, 62, 72, 0, 100, Treatise),
        new(
            5, "example 1 asked in °C: dough 23.8889; 18.3333, 18.3333, friction 4.4444", "°C",
            TemperatureRule.Water(
                Temperature.FromC(23.8889), Temperature.FromC(18.3333), Temperature.FromC(18.3333), TemperatureDifference.FromC(4.4444)).C,
            30.5556, 1e-3, WorkedExample.Apart),
        .. WorkedExample.InBothUnits(
            6, "water for dough 78 °F; flour 60, room 70, 8 min of mixing at 2 °F",
            TemperatureRule.Water(F(78), F(70), F(60), FrictionFactors.OfMixing(8)), 88, 1e-9, "trade text, 2 °F a minute"),
        new(
            7, "friction of a bake: dough 80 °F; 72, 68, 66", "°F difference",
            TemperatureRule.Friction(F(80), F(72), F(68), F(66)).F, 34, 1e-9, WorkedExample.Apart + "; rule of US Navy manual 14163"),
        new(
            7, "friction of a bake: dough 80 °F; 72, 68, 66", "°C difference",
            TemperatureRule.Friction(F(80), F(72), F(68), F(66)).C, 34 * 5 / 9.0, 1e-9, "converted, without the 32"),
        new(8, "ice in 40 kg, tap 68 °F, need 50", "kg", Ice.Replacing(40_000, F(68), F(50)) / 1_000, 4.0, 1e-6, WorkedExample.Apart),
        Table(80, 60, 0.103),
        Table(80, 0, 0.416),
        Table(32, 0, 0.222),
        Table(70, 50, 0.109),
        Table(40, 35, 0.030),
        Table(80, -30, 0.573),
        new(8, "ice where the tap is cold enough", "g", Ice.Replacing(1_000, F(50), F(60)), 0, 0, WorkedExample.Apart),
        new(
            9, "ice of -18 °C on top of 30 kg, 25 to 20 °C", "kg",
            Ice.OnTop(30_000, Temperature.FromC(25), Temperature.FromC(20), Temperature.FromC(-18)) / 1_000, 1.3832, 0.01,
            "heat-of-fusion exercise; its constants are rounded"),
        new(10, "water whose warming takes up 15 kJ/kg of 2 kg flour, to 15 °C", "°C", Hydration(15), 7.823, 0.01, "answer page to the exercise"),
        new(10, "the same with 15 kJ/kg of dough", "°C", Hydration(15 * 3 / 2.0), 4.234, 0.01, WorkedExample.Apart),
        new(11, "water for 25 °C, heat of hydration alone", "°C", Balance(HeatBalance.TradeHydrationKjPerKgFlour, 0), 22.68, 0.01, WorkedExample.Apart),
        new(11, "water for 25 °C, and 5 kJ/kg of mixing", "°C", Balance(HeatBalance.TradeHydrationKjPerKgFlour, 5), 19.64, 0.01, WorkedExample.Apart),
        new(11, "water for 25 °C, neither", "°C", Balance(0, 0), 28.24, 0.01, WorkedExample.Apart),
        new(11, "share of water in the heat, 60 % hydration", "-", Share(600), 0.588, 0.0005, WorkedExample.Apart),
        new(11, "share of water in the heat, 65 %", "-", Share(650), 0.607, 0.0005, WorkedExample.Apart),
        new(11, "share of water in the heat, 80 %", "-", Share(800), 0.655, 0.0005, WorkedExample.Apart),
        new(11, "warming by hydration, 65 %", "°C difference", Dough(650).HydrationWarming.C, 3.4, 0.05, WorkedExample.Apart),
        new(11, "warming by hydration, 65 %", "°F difference", Dough(650).HydrationWarming.F, 6.1, 0.05, WorkedExample.Apart),
    ];

    private static Temperature F(double degrees) => Temperature.FromF(degrees);

    private static TemperatureDifference Difference(double degreesF) => TemperatureDifference.FromF(degreesF);

    private static IEnumerable<WorkedExample> Rule(
        int number, string what, double dough, double flour, double room, double friction, double theirs, string source) =>
        WorkedExample.InBothUnits(
            number, "water for " + what, TemperatureRule.Water(F(dough), F(room), F(flour), Difference(friction)), theirs, 1e-9, source);

    private static WorkedExample Table(double tap, double needed, double theirs) => new(
        8, FormattableString.Invariant($"ice for tap {tap} °F, need {needed}"), "lb/lb",
        Ice.Replacing(1, F(tap), F(needed)), theirs, 0.005, IceTable);

    private static HeatBalance Dough(double waterG) => new(1_000, Temperature.FromC(20), waterG);

    private static double Share(double waterG) => Dough(waterG).WaterShare;

    private static double Balance(double hydration, double mixing) =>
        (Dough(650) with { HydrationKjPerKgFlour = hydration, MixingKjPerKgDough = mixing }).Water(Temperature.FromC(25)).C;

    private static double Hydration(double kjPerKgFlour) =>
        (new HeatBalance(2_000, Temperature.FromC(15), 1_000) with { HydrationKjPerKgFlour = kjPerKgFlour }).Water(Temperature.FromC(15)).C;
}
