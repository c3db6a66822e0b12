using System.Globalization;

namespace BakeInsights;

/// <summary>Times with a colon in them: of day, and of hours and minutes that went by.</summary>
internal static class ClockText
{
    private const int SecondsInMinute = 60;
    private const int SecondsInHour = 3_600;
    private const int MinutesInHour = 60;
    private const int HoursInHalfDay = 12;

    // Longest that hours are written with two digits of minutes behind: 999:59.
    private const int MostHourDigits = 3;

    private static readonly string[] OfDay = ["H:mm", "HH:mm", "H:mm:ss", "HH:mm:ss"];
    private static readonly string[] OfHalfDay = [.. OfDay, "%H", "HH"];

    /// <summary>Reads "19:40", "7:40 pm" or "7 p.m." as minutes after midnight; 12 am is midnight and 12 pm noon.</summary>
    public static bool TryTimeOfDay(string text, out double minutes)
    {
        var plain = KitchenText.Plain(text);
        var letters = plain.Replace(".", "", StringComparison.Ordinal).ToLowerInvariant();
        var half = letters.EndsWith("am", StringComparison.Ordinal) ? 0 : letters.EndsWith("pm", StringComparison.Ordinal) ? 1 : -1;
        var digits = half < 0 ? plain : letters[..^2].TrimEnd();
        minutes = 0;
        if (!TimeOnly.TryParseExact(digits, half < 0 ? OfDay : OfHalfDay, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            || (half >= 0 && time.Hour is 0 or > HoursInHalfDay))
        {
            return false;
        }

        minutes = time.ToTimeSpan().TotalMinutes;
        if (half >= 0)
        {
            minutes += (half - (time.Hour / HoursInHalfDay)) * HoursInHalfDay * MinutesInHour;
        }

        return true;
    }

    /// <summary>Reads "1:15" or "1:15:30" as minutes that went by.</summary>
    public static bool TryDuration(string text, out double minutes)
    {
        minutes = 0;
        var parts = text.Split(':');
        if (parts.Length is not (2 or 3) || parts[0].Length is 0 or > MostHourDigits || parts.Skip(1).Any(part => part.Length != 2))
        {
            return false;
        }

        var size = (double)MinutesInHour;
        foreach (var (place, part) in parts.Index())
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                || (place > 0 && number >= MinutesInHour))
            {
                return false;
            }

            minutes += number * size;
            size /= MinutesInHour;
        }

        return true;
    }

    /// <summary>Writes minutes after midnight as 19:40, with seconds where there are some.</summary>
    public static string Of(double minutes)
    {
        // Counted in seconds: rounding the minutes alone would make 9:60 of 9:59:45.
        var (hour, rest) = Math.DivRem((int)Math.Round(minutes * SecondsInMinute), SecondsInHour);
        var (minute, second) = Math.DivRem(rest, SecondsInMinute);
        return second == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{hour:00}:{minute:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{hour:00}:{minute:00}:{second:00}");
    }
}
