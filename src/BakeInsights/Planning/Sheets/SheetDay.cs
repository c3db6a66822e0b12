namespace BakeInsights;

/// <summary>The day of a sheet: its clock times, and whether they fit.</summary>
/// <param name="Table">The timetable; without a clock it starts at midnight, and its times are time that went by.</param>
/// <param name="HasClock">Whether a start or a finish was given.</param>
/// <param name="FinishBy">When the bread has to be cut; null when nothing says so.</param>
/// <param name="Fit">Whether the day fits between a start and a finish; null unless both were given.</param>
/// <param name="Remedies">What would make it fit; empty when it fits, or nothing would.</param>
public sealed record SheetDay(
    Timetable Table, bool HasClock, TimeOnly? FinishBy, TimetableFit? Fit, IReadOnlyList<SheetRemedy> Remedies);
