namespace BakeInsights;

/// <summary>The clock times of a baking day, each with its spread.</summary>
public sealed class Timetable
{
    private Timetable(BakingDay day, double startMin, IReadOnlyList<TimetableRow> rows)
    {
        Day = day;
        StartMin = startMin;
        Rows = rows;
        var mixed = rows.Single(row => row.What == FirstRiseBegins).UsualMin;
        LooksMin = [.. LookSpacing.Between(day.FirstRise.SoonestMin, day.FirstRise.LatestMin).Select(minutes => mixed + minutes)];
    }

    private const string FirstRiseBegins = "First rise begins";

    /// <summary>How long the parts take.</summary>
    public BakingDay Day { get; }

    /// <summary>When weighing begins, in minutes after midnight; below 0 for the evening before.</summary>
    public double StartMin { get; }

    /// <summary>What to do, in the order of the usual times.</summary>
    public IReadOnlyList<TimetableRow> Rows { get; }

    /// <summary>
    /// When to look at the rising dough, if mixing ends when expected: over the whole spread of the first rise
    /// (<see cref="LookSpacing.Between"/>).
    /// </summary>
    public IReadOnlyList<double> LooksMin { get; }

    /// <summary>When the bread is cut.</summary>
    public TimetableRow Finish => Rows[^1];

    /// <summary>
    /// When the bread is cut if every single step is late: the plain sum of what has to be reckoned with. The rows count
    /// on steps that have nothing to do with each other, of which hardly all are late on one day; a bench that is slow at
    /// one thing is often slow at the next.
    /// </summary>
    public double AllLateMin => StartMin + Steps(Day).Sum(step => step.Then.LatestMin);

    /// <summary>The day from its start on.</summary>
    /// <param name="day">How long the parts take.</param>
    /// <param name="start">When weighing begins.</param>
    public static Timetable From(BakingDay day, TimeOnly start) => Of(day, start.ToTimeSpan().TotalMinutes);

    /// <summary>The day that is over by a time even when all is as late as has to be reckoned with.</summary>
    /// <param name="day">How long the parts take.</param>
    /// <param name="finish">When the bread has to be cut at the latest.</param>
    public static Timetable ToFinish(BakingDay day, TimeOnly finish) =>
        Of(day, finish.ToTimeSpan().TotalMinutes - Of(day, 0).Finish.LatestMin);

    /// <summary>
    /// Whether the day fits between two times, with what would make it fit. The first rise is what yeast, water and a
    /// warmer place can shorten, and its spread shrinks with it; the rest takes what it takes.
    /// </summary>
    /// <param name="opens">When the room opens.</param>
    /// <param name="closes">When everything has to be done.</param>
    public TimetableFit Within(TimeOnly opens, TimeOnly closes)
    {
        var end = closes.ToTimeSpan().TotalMinutes;
        var late = Finish.LatestMin - end;
        var early = opens.ToTimeSpan().TotalMinutes - StartMin;
        var over = Math.Max(late, 0) + Math.Max(early, 0);
        return new TimetableFit(over, over > 0 ? RiseThatFits(StartMin + Math.Max(early, 0), end) : null);
    }

    // Halving: the finish comes later the longer the rise.
    private double? RiseThatFits(double startMin, double endMin)
    {
        var usual = Day.FirstRise.UsualMin;
        double LatestAt(double share) => Of(Day with { FirstRise = Day.FirstRise.Times(share) }, startMin).Finish.LatestMin;
        if (LatestAt(0) >= endMin)
        {
            return null;
        }

        if (LatestAt(1) <= endMin)
        {
            return usual;
        }

        var (fits, late) = (0.0, 1.0);
        for (var halving = 0; halving < 40; halving++)
        {
            var middle = (fits + late) / 2;
            (fits, late) = LatestAt(middle) <= endMin ? (middle, late) : (fits, middle);
        }

        return fits * usual;
    }

    private static (string What, Duration Then)[] Steps(BakingDay day) =>
    [
        ("Weigh, take temperatures", day.Weighing), ("Mix", day.Mixing), (FirstRiseBegins, day.FirstRise), ("Divide", day.Dividing),
        ("Shape", day.Shaping), ("Proof begins", day.Proof), ("Load the oven", day.Baking), ("Out of the oven", day.Cooling),
    ];

    private static Timetable Of(BakingDay day, double startMin)
    {
        ArgumentNullException.ThrowIfNull(day);
        List<TimetableRow> rows = [];
        var passed = Duration.Exactly(0);
        foreach (var (what, then) in Steps(day))
        {
            rows.Add(Row(what, passed));
            passed += then;
        }

        rows.Add(Row("Cut", passed));

        // The oven has to be hot for the soonest dough.
        var load = rows.Single(row => row.What == "Load the oven");
        rows.Add(new TimetableRow(
            "Switch the oven on", load.SoonestMin - day.PreheatingMin, load.SoonestMin - day.PreheatingMin, load.SoonestMin - day.PreheatingMin));
        return new Timetable(day, startMin, [.. rows.OrderBy(row => row.UsualMin)]);

        TimetableRow Row(string what, Duration after) =>
            new(what, startMin + after.UsualMin, startMin + after.SoonestMin, startMin + after.LatestMin);
    }
}
