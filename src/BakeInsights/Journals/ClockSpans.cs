using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Works out times that went by from times of day, where a bake has both of those and not the other.</summary>
/// <remarks>
/// The first time of day of a bake is taken to be on its day, and each that is earlier on the clock than the one before
/// it on the next day. No span here is longer than a day.
/// </remarks>
internal sealed class ClockSpans
{
    private const int MinutesInDay = 1_440;

    // The last days of the calendar have no next day to reckon with.
    private const int DaysAtTheEnd = 7;

    private static readonly IReadOnlyList<QuantityColumn> Times = [C.MixedAt, C.ReadyAt, C.LoadedAt, C.OutAt];

    private static readonly IReadOnlyList<(QuantityColumn Start, QuantityColumn End, QuantityColumn Span)> Spans =
    [
        (C.MixedAt, C.ReadyAt, C.Rise),
        (C.LoadedAt, C.OutAt, C.Baking),
    ];

    private readonly TimeZoneInfo? _zone;

    /// <summary>Makes one for the clocks of a time zone; null for clocks that are never changed.</summary>
    public ClockSpans(TimeZoneInfo? zone) => _zone = zone;

    /// <summary>Sets the spans of a row that are missing and can be known; each leaves a remark.</summary>
    public void Fill(RowValues row, NoticeLog notices)
    {
        foreach (var (start, end, span) in Spans)
        {
            if (double.IsNaN(row.Quantities[span.Index])
                && !double.IsNaN(row.Quantities[start.Index])
                && !double.IsNaN(row.Quantities[end.Index]))
            {
                row.Quantities[span.Index] = Minutes(row, start, end, span, notices);
            }
        }
    }

    private double Minutes(RowValues row, QuantityColumn start, QuantityColumn end, QuantityColumn span, NoticeLog notices)
    {
        var at = new SourceLine(row.File, row.Line);
        var text = $"{ClockText.Of(row.Quantities[start.Index])} to {ClockText.Of(row.Quantities[end.Index])}";
        var (from, to) = (SinceDay(row, start), SinceDay(row, end));
        if (_zone is not null && row.Day.DayNumber < DateOnly.MaxValue.DayNumber - DaysAtTheEnd)
        {
            if (Offset(row.Day, from) is not { } before || Offset(row.Day, to) is not { } after)
            {
                notices.Add(Notices.ClockChanged(at, span, start, end, text));
                return double.NaN;
            }

            to += before - after;
        }

        var minutes = to - from;
        var isMeant = minutes >= span.Low && minutes <= span.High;
        notices.Add(isMeant
            ? Notices.SpanTaken(at, span, start, end, text, minutes)
            : Notices.OutOfRange(at, span, span.Name, text, minutes));
        return isMeant ? minutes : double.NaN;
    }

    private static double SinceDay(RowValues row, QuantityColumn time)
    {
        var (days, before) = (0, 0.0);
        foreach (var column in Times)
        {
            var minutes = row.Quantities[column.Index];
            days += minutes < before ? 1 : 0;
            before = double.IsNaN(minutes) ? before : minutes;
            if (column == time)
            {
                break;
            }
        }

        return (days * MinutesInDay) + before;
    }

    // Minutes that the zone's clocks are ahead; null for a time that they showed twice or never.
    private double? Offset(DateOnly day, double minutes)
    {
        var time = day.ToDateTime(TimeOnly.MinValue).AddMinutes(minutes);
        return _zone!.IsInvalidTime(time) || _zone.IsAmbiguousTime(time) ? null : _zone.GetUtcOffset(time).TotalMinutes;
    }
}
