namespace BakeInsights;

/// <summary>
/// The trade's rule of three temperatures, or of four with a preferment: the temperatures of what goes in average to
/// that of the dough, once the mixer's friction is added.
/// </summary>
/// <remarks>
/// Water = n x dough - the others - friction (professional school notes, "Dough temperature", 2009; US Navy training
/// manual 14163, "General breadmaking procedures"). It is not a heat balance: it gives water one share in three, where
/// water holds six parts in ten of a dough's heat (<see cref="HeatBalance.WaterShare"/>), and the heat of hydration
/// hides in the friction factor. It works near the bake that the factor was taken from, because every error of the
/// rule is in the factor too; far from it, trust the balance or the kitchen's own records.
/// </remarks>
public static class TemperatureRule
{
    /// <summary>The water's temperature for a dough. Below freezing is right: it asks for <see cref="Ice"/>.</summary>
    /// <param name="dough">The dough wanted at the end of mixing.</param>
    /// <param name="room">The room.</param>
    /// <param name="flour">The flour.</param>
    /// <param name="friction">The friction factor of this mixer, batch and mixing time.</param>
    /// <param name="preferment">The preferment, when there is one.</param>
    public static Temperature Water(
        Temperature dough,
        Temperature room,
        Temperature flour,
        TemperatureDifference friction,
        Temperature? preferment = null) =>
        dough + Missing(dough, room, flour, preferment) - friction;

    /// <summary>The dough's temperature that the rule expects.</summary>
    public static Temperature Dough(
        Temperature water,
        Temperature room,
        Temperature flour,
        TemperatureDifference friction,
        Temperature? preferment = null)
    {
        var warmer = (room - water) + (flour - water) + friction;
        return preferment is { } fourth ? water + ((warmer + (fourth - water)) / 4) : water + (warmer / 3);
    }

    /// <summary>
    /// The friction factor that a bake shows. It belongs to one mixer, batch size, time and speed; the mean of the
    /// last few bakes is better than one (common practice).
    /// </summary>
    /// <param name="dough">The dough as measured at the end of mixing.</param>
    /// <param name="room">The room.</param>
    /// <param name="flour">The flour.</param>
    /// <param name="water">The water.</param>
    /// <param name="preferment">The preferment, when there was one.</param>
    public static TemperatureDifference Friction(
        Temperature dough, Temperature room, Temperature flour, Temperature water, Temperature? preferment = null) =>
        Missing(dough, room, flour, preferment) + (dough - water);

    private static TemperatureDifference Missing(
        Temperature dough, Temperature room, Temperature flour, Temperature? preferment) =>
        (dough - room) + (dough - flour) + (preferment is { } fourth ? dough - fourth : TemperatureDifference.Zero);
}
