namespace BakeInsights;

/// <summary>Temperatures of an invented kitchen and its tap through the year, in °C. All figures are our own choice.</summary>
/// <remarks>
/// A heated kitchen in a temperate town of the north: both go up and down once a year as a cosine does, and the tap, whose
/// pipes lie in the ground, comes later.
/// </remarks>
public sealed record KitchenClimate
{
    private const double DaysInYear = 365.25;

    /// <summary>The room's mean over the year.</summary>
    public double RoomMeanC { get; init; } = 20.5;

    /// <summary>How far the warmest day's room lies above the mean.</summary>
    public double RoomSwingC { get; init; } = 3;

    /// <summary>Standard deviation of the room from bake to bake.</summary>
    public double RoomSdC { get; init; } = 1.2;

    /// <summary>The tap's mean over the year.</summary>
    public double TapMeanC { get; init; } = 12.5;

    /// <summary>How far the tap's warmest day lies above its mean.</summary>
    public double TapSwingC { get; init; } = 6;

    /// <summary>The day of the year on which the room is warmest: the end of July.</summary>
    public double WarmestDay { get; init; } = 208;

    /// <summary>Days by which the tap comes later than the room.</summary>
    public double TapLagDays { get; init; } = 30;

    /// <summary>Flour stands this much below the room, near the floor.</summary>
    public double FlourBelowRoomC { get; init; } = 0.5;

    /// <summary>Standard deviation of the flour about that.</summary>
    public double FlourSdC { get; init; } = 0.4;

    /// <summary>The usual room of a day.</summary>
    public double RoomC(DateOnly day) => RoomMeanC + (RoomSwingC * Wave(day.DayOfYear - WarmestDay));

    /// <summary>The cold tap of a day.</summary>
    public double TapC(DateOnly day) => TapMeanC + (TapSwingC * Wave(day.DayOfYear - WarmestDay - TapLagDays));

    private static double Wave(double days) => Math.Cos(2 * Math.PI * days / DaysInYear);
}
