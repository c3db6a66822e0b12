using System.Globalization;

namespace BakeInsights;

/// <summary>Times of a baking day as people read and write them.</summary>
public static class ClockTime
{
    private const double MinutesInDay = 1_440;

    /// <summary>Reads "13:00", "1:00 pm" or "1 pm".</summary>
    public static bool TryParse(string text, out TimeOnly time)
    {
        ArgumentNullException.ThrowIfNull(text);
        var isTime = ClockText.TryTimeOfDay(text, out var minutes);
        time = isTime ? TimeOnly.FromTimeSpan(TimeSpan.FromMinutes(minutes)) : default;
        return isTime;
    }

    /// <summary>
    /// Minutes after a day's first midnight to the whole minute: "13:05", or "1:05 pm" in US units; on another day
    /// "23:40 the day before" and "0:20 the day after".
    /// </summary>
    public static string Text(double minutes, UnitSystem system)
    {
        if (!double.IsFinite(minutes) || Math.Abs(minutes) > MinutesInDay * TimeSpan.MaxValue.Days)
        {
            throw new ArgumentOutOfRangeException(nameof(minutes), minutes, "A time is a finite number of minutes.");
        }

        var whole = Math.Round(minutes, MidpointRounding.AwayFromZero);
        var days = Math.Floor(whole / MinutesInDay);
        var time = TimeOnly.FromTimeSpan(TimeSpan.FromMinutes(whole - (days * MinutesInDay)));
        var clock = system == UnitSystem.Us
            ? time.ToString("h:mm", CultureInfo.InvariantCulture) + (time.Hour < 12 ? " am" : " pm")
            : time.ToString("H:mm", CultureInfo.InvariantCulture);
        return days switch
        {
            0 => clock,
            -1 => clock + " the day before",
            1 => clock + " the day after",
            < 0 => string.Create(CultureInfo.InvariantCulture, $"{clock}, {-days} days before"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{clock}, {days} days after"),
        };
    }
}
