using System.Globalization;

namespace BakeInsights;

/// <summary>A day as somebody wrote it, and the days of the calendar that it can be.</summary>
/// <param name="DayFirst">The day, when the day of the month comes before the month or the year comes first; null when there is none.</param>
/// <param name="MonthFirst">The day, when the month comes before the day of the month; null when there is none.</param>
/// <param name="IsYearShort">Whether the year has two digits only.</param>
internal readonly record struct WrittenDay(DateOnly? DayFirst, DateOnly? MonthFirst, bool IsYearShort)
{
    private const int PartsOfDay = 3;
    private const int YearDigits = 4;
    private const int DigitsWithoutSigns = 8;

    // Eight digits are a day only in these centuries: other eight-digit numbers are no days of bakes.
    private const int FirstYearWithoutSigns = 1900;
    private const int LastYearWithoutSigns = 2099;

    /// <summary>Whether it can be two days, and only the order can tell.</summary>
    public bool IsEither => DayFirst is not null && MonthFirst is not null && DayFirst != MonthFirst;

    /// <summary>The order that it shows by itself.</summary>
    public DayOrder Shown => (DayFirst, MonthFirst) switch
    {
        (not null, null) => DayOrder.DayFirst,
        (null, not null) => DayOrder.MonthFirst,
        _ => DayOrder.NotShown,
    };

    /// <summary>Takes a text apart: "2026-10-31", "2026/10/31", "20261031", "31.10.2026", "10/31/2026".</summary>
    public static WrittenDay Parse(string text)
    {
        var plain = KitchenText.Plain(text);
        if (plain.Length == DigitsWithoutSigns && AllDigits(plain))
        {
            var year = Number(plain[..YearDigits]);
            return year is >= FirstYearWithoutSigns and <= LastYearWithoutSigns
                ? Certain(Day(year, Number(plain[4..6]), Number(plain[6..])))
                : default;
        }

        var sign = plain.AsSpan().IndexOfAny("/.-") is var at && at >= 0 ? plain[at] : '-';
        var parts = plain.Split(sign, StringSplitOptions.TrimEntries);
        if (parts.Length != PartsOfDay || parts.Any(part => !AllDigits(part)))
        {
            return default;
        }

        return (parts[0].Length, parts[1].Length, parts[2].Length) switch
        {
            (YearDigits, 1 or 2, 1 or 2) => Certain(Day(Number(parts[0]), Number(parts[1]), Number(parts[2]))),
            (1 or 2, 1 or 2, YearDigits) => new WrittenDay(
                Day(Number(parts[2]), Number(parts[1]), Number(parts[0])),
                Day(Number(parts[2]), Number(parts[0]), Number(parts[1])),
                IsYearShort: false),
            (1 or 2, 1 or 2, 1 or 2) => new WrittenDay(null, null, IsYearShort: true),
            _ => default,
        };
    }

    private static WrittenDay Certain(DateOnly? day) => new(day, day, IsYearShort: false);

    private static DateOnly? Day(int year, int month, int dayOfMonth) =>
        DayText.TryMake(year, month, dayOfMonth, out var day) ? day : null;

    private static bool AllDigits(string text) => text.Length > 0 && text.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0;

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
