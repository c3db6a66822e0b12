using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Lays a bake's steps into the hours that there are.</summary>
internal static class SheetDays
{
    /// <summary>The day, or why the hours can't hold it.</summary>
    /// <param name="day">How long the parts take.</param>
    /// <param name="wishes">The start and the finish.</param>
    /// <param name="remediesFor">What would make a day fit that does not, by the rise that would.</param>
    /// <param name="units">The units of clock times in a problem.</param>
    public static Attempt<SheetDay> Of(
        BakingDay day, SheetWishes wishes, Func<TimeOnly, TimeOnly, double, IReadOnlyList<SheetRemedy>> remediesFor, UnitSystem units)
    {
        if (wishes is not { Start: { } start, FinishBy: { } finish })
        {
            return new SheetDay(
                wishes.FinishBy is { } end ? Timetable.ToFinish(day, end) : Timetable.From(day, wishes.Start ?? TimeOnly.MinValue),
                wishes.FinishBy is not null || wishes.Start is not null,
                wishes.FinishBy,
                null,
                []);
        }

        if (finish <= start)
        {
            return Problem(
                $"A day that starts at {Clock(start)} can't be over by {Clock(finish)}.",
                $"Give a finish after the start, or leave one of the two away: the other then follows.");
        }

        var table = Timetable.From(day, start);
        var fit = table.Within(start, finish);
        if (fit.Fits || fit.RiseThatFitsMin is not null)
        {
            return new SheetDay(table, true, finish, fit, fit.RiseThatFitsMin is { } rise ? remediesFor(start, finish, rise) : []);
        }

        var hours = (finish - start).TotalMinutes;
        var without = Timetable.From(day with { FirstRise = Duration.Exactly(0) }, start).Finish.LatestMin - table.StartMin;
        var whole = table.Finish.LatestMin - table.StartMin;
        return Problem(
            $"From {Clock(start)} to {Clock(finish)} are {Minutes(hours)}, and the day takes up to {Minutes(without)} without any first rise, {Minutes(whole)} with it.",
            $"Finish by {ClockTime.Text(table.Finish.LatestMin, units)} or later, or start at "
                + $"{ClockTime.Text(finish.ToTimeSpan().TotalMinutes - whole, units)} or earlier.");

        string Clock(TimeOnly time) => ClockTime.Text(time.ToTimeSpan().TotalMinutes, units);
    }

    private static string Minutes(double minutes) => FormattableString.Invariant($"{Math.Ceiling(minutes - 0.5):0} min");

    private static FitProblem Problem(string message, string remedy) =>
        new(FitProblemKind.ImpossibleValue, ["finish_by"], message, remedy);
}
