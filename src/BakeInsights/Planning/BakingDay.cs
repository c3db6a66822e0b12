namespace BakeInsights;

/// <summary>How long the parts of a baking day take, in the order in which they come.</summary>
/// <param name="FirstRise">From the end of mixing until the dough is ready: a prediction interval of the journal.</param>
/// <param name="Proof">From shaping until the loaf is ready for the oven.</param>
/// <param name="Baking">In the oven.</param>
public sealed record BakingDay(Duration FirstRise, Duration Proof, Duration Baking)
{
    /// <summary>Weighing and taking temperatures; common practice, no source, as are those below.</summary>
    public Duration Weighing { get; init; } = new(15, 10, 20);

    /// <summary>Mixing and kneading.</summary>
    public Duration Mixing { get; init; } = new(12, 8, 18);

    /// <summary>Dividing the dough and weighing the pieces.</summary>
    public Duration Dividing { get; init; } = new(10, 5, 15);

    /// <summary>Shaping.</summary>
    public Duration Shaping { get; init; } = new(10, 5, 15);

    /// <summary>How long before loading the oven is switched on.</summary>
    public double PreheatingMin { get; init; } = 45;

    /// <summary>From the oven until the knife: half an hour to an hour, better the hour.</summary>
    public Duration Cooling { get; init; } = new(60, 30, 60);
}
