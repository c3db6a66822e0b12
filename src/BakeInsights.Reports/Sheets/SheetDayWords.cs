namespace BakeInsights.Reports;

/// <summary>The day of a sheet in words: looks, what to do when it is early or late, and what would make it fit.</summary>
internal sealed class SheetDayWords(Sheet sheet, UnitSystem units)
{
    // One degree, as a probe of each kind is read: 1 °C, or 2 °F.
    private readonly double _stepC = units == UnitSystem.Us ? 2 / 1.8 : 1;

    private Timetable Table => sheet.Day.Table;

    private double MixedMin => Table.LooksMin[0] - sheet.LooksMin[0];

    /// <summary>A time of the day, or the time that went by where no clock was given.</summary>
    public string Clock(double minutes) => sheet.Day.HasClock ? ClockTime.Text(minutes, units) : TimetableView.Passed(minutes);

    /// <summary>The steps.</summary>
    public ViewTable Steps() => TimetableView.TableOf(Table, Clock);

    /// <summary>When to look: by the clock if mixing ends when expected, and minutes after mixing.</summary>
    public IReadOnlyList<(string Clock, string Minutes)> Looks() =>
        [.. Table.LooksMin.Zip(sheet.LooksMin, (clock, minutes) => (Clock(clock), Figures.Rounded(minutes, 0)))];

    /// <summary>When the dough will be ready.</summary>
    public string Ready()
    {
        var time = sheet.Rise.Time;
        string Range(double low, double high) => $"{Figures.Rounded(low, 0)} to {Figures.Rounded(high, 0)} min";
        var basis = sheet.Rise switch
        {
            { IsPredicted: true } rise => $"95 doughs in 100, by {rise.Bakes} bakes",
            { Bakes: > 0 } rise => $"the least and the most of {rise.Bakes} bakes",
            _ => "common practice",
        };
        return $"Ready about {Figures.Rounded(time.UsualMin, 0)} min after mixing ({Range(time.SoonestMin, time.LatestMin)}: {basis}). "
            + "Press a fresh spot at each look; ready is a dent that comes back slowly.";
    }

    /// <summary>Remarks on the times; empty when there is nothing to mind.</summary>
    public IReadOnlyList<string> Remarks() =>
    [
        .. sheet.Rise.Remarks.Select(remark => $"First rise: {remark}"), .. sheet.Proof.Remarks.Select(remark => $"Proof: {remark}"),
    ];

    /// <summary>What to do with a dough that does not keep to the times.</summary>
    public IReadOnlyList<string> EarlyAndLate()
    {
        var rise = sheet.Rise.Time;
        return
        [
            $"Early (before {Clock(MixedMin + rise.SoonestMin)}): divide at once, for a ready dough does not wait. If the oven is not hot yet, "
                + "chill the shaped pieces until it is.",
            $"Late (not ready at {Clock(MixedMin + rise.LatestMin)}): don't divide by the clock. Put the dough in a warmer place and look every "
                + $"{Figures.Rounded(LookSpacing.UsualMin, 0)} min; all that follows moves by as much.{Warmer()}",
        ];
    }

    /// <summary>Whether the day fits.</summary>
    public string Fit() => (sheet.Day, sheet.Day.Fit) switch
    {
        ({ FinishBy: { } finish }, { Fits: true }) =>
            $"The day fits: cut by {Clock(Table.Finish.LatestMin)} at the latest, {Minutes(finish) - Table.Finish.LatestMin:0} min before {Clock(Minutes(finish))}.",
        ({ FinishBy: { } finish }, { Fits: false } fit) =>
            $"The day does not fit: the bread may be cut as late as {Clock(Table.Finish.LatestMin)}, {Figures.Rounded(fit.OverMin, 0)} min after {Clock(Minutes(finish))}. "
            + (sheet.Day.Remedies.Count > 0
                ? $"It would with {(sheet.Day.Remedies.Count > 1 ? "one of these" : "this")}; the times here are without it."
                : $"No yeast up to {Figures.Rounded(YeastRemedy.MostFactor, 0)} times as much and no dough that the kitchen reaches makes it: start "
                    + $"{Figures.Rounded(Math.Ceiling(fit.OverMin), 0)} min earlier."),
        ({ FinishBy: { } finish }, null) =>
            $"Counted back from {Clock(Minutes(finish))}: start weighing at {Clock(Table.StartMin)}, and all is cut by then even when it is late.",
        ({ HasClock: true }, _) => $"From {Clock(Table.StartMin)} on; cut at {Clock(Table.Finish.UsualMin)}, or as late as {Clock(Table.Finish.LatestMin)}.",
        _ => "Times count from the start of weighing, in hours and minutes.",
    };

    /// <summary>Whether the hours are too few.</summary>
    public bool IsTooShort => sheet.Day.Fit is { Fits: false };

    /// <summary>What would make the day fit.</summary>
    public IReadOnlyList<string> Remedies() => [.. sheet.Day.Remedies.Select(Words)];

    /// <summary>What the spreads leave out.</summary>
    public string Spread() => TimetableView.SpreadOf(Table, Clock);

    private string Words(SheetRemedy remedy)
    {
        var then = $": ready in about {Figures.Rounded(remedy.Rise.UsualMin, 0)} min, cut by {Clock(remedy.FinishLatestMin)} at the latest.";
        return remedy switch
        {
            YeastRemedy yeast => $"More yeast: {Figures.Rounded(yeast.YeastG, 1)} g in place of {Figures.Rounded(sheet.Formula.GramsOf(IngredientRole.Yeast), 1)} g "
                + $"({Figures.Rounded(yeast.YeastPct, 2)} % of flour as instant yeast){then}"
                + (yeast.Factor > YeastRemedy.RuleHoldsTo ? " That is more than twice the yeast, further than the rule is good for: try it on one dough." : ""),
            WarmthRemedy warmth => $"A warmer dough: {warmth.Dough.Text(units)} in place of {sheet.Dough.Text(units)}, with water at "
                + $"{Temperature.FromC(warmth.Water.Plan.Reached.C).Text(units)}{then}",
            _ => throw new ArgumentException($"A {remedy.GetType().Name} has no words.", nameof(remedy)),
        };
    }

    private string Warmer()
    {
        if (sheet.ChangePctPerDegree is not { Low: { } low, High: { } high } change)
        {
            return "";
        }

        string Percent(double pct) => Figures.Rounded(100 * (Math.Pow(1 + (pct / 100), _stepC) - 1), 0);
        var step = TemperatureDifference.FromC(_stepC);
        return $" In this journal a dough {Figures.Rounded(units == UnitSystem.Us ? step.F : step.C, 0)} {DisplayUnit.For(Dimension.Temperature, units).Label} "
            + $"warmer changed the rise by {Percent(change.Value)} % ({Percent(low)} to {Percent(high)} %).";
    }

    private static double Minutes(TimeOnly time) => time.ToTimeSpan().TotalMinutes;
}
