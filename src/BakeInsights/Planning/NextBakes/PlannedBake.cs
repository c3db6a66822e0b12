namespace BakeInsights;

/// <summary>One bake to make.</summary>
/// <param name="Order">When, from 1.</param>
/// <param name="DoughTemperatureC">The dough's temperature to aim at, in °C.</param>
/// <param name="HydrationPct">Its hydration, in percent.</param>
/// <param name="YeastPct">Its yeast, in percent of flour as instant.</param>
/// <param name="WaterC">
/// The water that the kitchen's own model asks for, in °C, no colder than freezing and no warmer than yeast bears; null
/// where the journal lacks what it takes.
/// </param>
public sealed record PlannedBake(int Order, double DoughTemperatureC, double HydrationPct, double YeastPct, double? WaterC);
