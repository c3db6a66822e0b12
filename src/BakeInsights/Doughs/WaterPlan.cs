using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>How to draw the water of a dough in one kitchen.</summary>
/// <param name="Needed">What was asked for; below freezing when ice is to go on melting in the dough.</param>
/// <param name="Reached">What the kitchen gives.</param>
/// <param name="ColdG">Water from the cold tap, in grams.</param>
/// <param name="HotG">Water from the hot tap, in grams.</param>
/// <param name="IceG">Ice in place of water, in grams.</param>
public sealed record WaterPlan(Temperature Needed, Temperature Reached, double ColdG, double HotG, double IceG)
{
    /// <summary>What the kitchen can't bring: needed less reached; less than zero where it can't cool enough.</summary>
    public TemperatureDifference OutOfReach => Needed - Reached;

    /// <summary>Whether the kitchen gives what was asked for.</summary>
    public bool IsReached => OutOfReach == TemperatureDifference.Zero;

    /// <summary>Whether the water is too warm to put yeast into (<see cref="KitchenWater.WarmestForYeast"/>).</summary>
    public bool IsTooWarmForYeast => Reached > KitchenWater.WarmestForYeast;

    /// <summary>What to mind, a sentence each; empty when nothing.</summary>
    public ImmutableArray<string> Warnings(UnitSystem system) =>
    [
        .. IsTooWarmForYeast
            ?
            [
                $"Keep the yeast out of this water: {Reached.Text(system)} is above "
                    + $"{KitchenWater.WarmestForYeast.Text(system)}. Warm flour or room instead, or let the dough rise longer.",
            ]
            : Array.Empty<string>(),
        .. OutOfReach > TemperatureDifference.Zero
            ?
            [
                $"The hot tap ends at {Reached.Text(system)}, {OutOfReach.Text(system)} short. "
                    + "Warm the flour, or let the dough rise longer.",
            ]
            : Array.Empty<string>(),
        .. OutOfReach < TemperatureDifference.Zero
            ?
            [
                $"The ice at hand cools the water only to {Reached.Text(system)}, {(-OutOfReach).Text(system)} short. "
                    + "Chill the flour, or mix for a shorter time.",
            ]
            : Array.Empty<string>(),
    ];
}
