namespace BakeInsights;

/// <summary>
/// How long foods that need a cold place may go without one. Two rules are in force for two kinds of kitchens, and they
/// differ; whether a dough with milk or egg is such a food is for the local authority to say, not for this toolkit.
/// </summary>
public static class WarmHold
{
    /// <summary>At home: two hours between 40 and 140 °F (USDA Food Safety and Inspection Service).</summary>
    public const double HomeMinutes = 120;

    /// <summary>At home where it is hotter than <see cref="Hot"/>: one hour (the same).</summary>
    public const double HotHomeMinutes = 60;

    /// <summary>In retail: four hours from a start at 41 °F or colder (FDA Food Code 3-501.19).</summary>
    public const double RetailMinutes = 240;

    /// <summary>What counts as hot at home: 90 °F (USDA Food Safety and Inspection Service).</summary>
    public static Temperature Hot { get; } = Temperature.FromF(90);

    /// <summary>The home rule's limit at the warmest place of a plan, in minutes: the stricter of the two rules.</summary>
    public static double LimitAt(Temperature? warmestPlace) => warmestPlace > Hot ? HotHomeMinutes : HomeMinutes;
}
