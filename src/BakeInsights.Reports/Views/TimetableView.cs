namespace BakeInsights.Reports;

/// <summary>The clock times of a baking day as a table, and how its spreads are to be read.</summary>
public static class TimetableView
{
    private const int MinutesInHour = 60;

    /// <summary>A row for each step, and when to look at the dough.</summary>
    /// <param name="table">The timetable.</param>
    /// <param name="units">The units to speak in; they decide between 13:00 and 1:00 pm.</param>
    public static View Of(Timetable table, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new View(
        [
            TableOf(table, minutes => ClockTime.Text(minutes, units)),
            new ViewParagraph(SpreadOf(table, minutes => ClockTime.Text(minutes, units))),
            new ViewParagraph($"Look at the dough at {string.Join(", ", table.LooksMin.Select(minutes => ClockTime.Text(minutes, units)))}."),
        ]);
    }

    /// <summary>The table alone.</summary>
    internal static ViewTable TableOf(Timetable table, Func<double, string> clock) => new(
        "The day, step by step.",
        [new ViewColumn("What", false), new ViewColumn("Soonest", true), new ViewColumn("Usual", true), new ViewColumn("Latest", true)],
        [.. table.Rows.Select(row => new[] { row.What, clock(row.SoonestMin), clock(row.UsualMin), clock(row.LatestMin) })]);

    /// <summary>What the spreads are and what they leave out.</summary>
    internal static string SpreadOf(Timetable table, Func<double, string> clock) =>
        "Soonest and latest count on steps that have nothing to do with each other: their spreads add as roots of squares. "
        + $"Were every step late at once, the bread would be cut at {clock(table.AllLateMin)}.";

    /// <summary>Minutes that went by, as hours and minutes: "+1:05".</summary>
    internal static string Passed(double minutes)
    {
        var whole = (int)Math.Round(Math.Abs(minutes), MidpointRounding.AwayFromZero);
        return FormattableString.Invariant($"{(minutes <= -0.5 ? "−" : "+")}{whole / MinutesInHour}:{whole % MinutesInHour:00}");
    }
}
