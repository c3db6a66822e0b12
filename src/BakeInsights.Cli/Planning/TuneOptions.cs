namespace BakeInsights.Cli;

/// <summary>Makes wishes of what was written behind the options of <c>bakeinsights tune</c>.</summary>
internal sealed class TuneOptions(TuneSettings settings)
{
    // What can be read at all: common practice, no source.
    private const double LongestMin = 2_880;
    private const double LargestVolume = 10;
    private const double LowestScore = 0;
    private const double HighestScore = 100;
    private const double ColdestRoomC = -10;
    private const double HottestRoomC = 50;
    private const double BoilingC = 100;

    private readonly UnitSystem _units = UnitsOption.Read(settings.Units);

    /// <summary>The units that people read.</summary>
    public UnitSystem Units => _units;

    /// <summary>Whether the question is asked backwards.</summary>
    public bool IsBackwards => settings.ReadyBy is not null;

    /// <summary>The wish for a journal.</summary>
    public TuneWish Wish(Journal journal)
    {
        if (IsBackwards && (settings.ReadyWithin ?? settings.VolumeAtLeast ?? settings.Crumb) is not null)
        {
            throw new CommandFailure("--ready-by asks backwards and takes no other wish: write --ready-within in its place.");
        }

        List<TuneGoal> goals = [];
        if (settings.ReadyWithin is { } within)
        {
            goals.Add(TuneGoal.ReadyWithin(Minutes("ready-within", within)));
        }

        if (settings.VolumeAtLeast is { } volume)
        {
            goals.Add(TuneGoal.VolumeAtLeast(Volume(volume)));
        }

        if (LimitsOption.Read("crumb", settings.Crumb, LowestScore, HighestScore, "3-5") is { } crumb)
        {
            goals.Add(TuneGoal.CrumbBetween(crumb.Low, crumb.High));
        }

        return goals.Count == 0 && !IsBackwards
            ? throw new CommandFailure("Nothing is wished for: say --ready-within \"90 min\", --volume-at-least 4.2 or --crumb 3-5, or ask backwards with --ready-by.")
            : new TuneWish(goals)
            {
                DoughTemperatureC = BakingLimits.DoughTemperature(settings.DoughTemp, _units),
                HydrationPct = BakingLimits.Hydration(settings.Hydration),
                YeastPct = BakingLimits.Yeast(settings.Yeast),
                House = House(journal),
                Kitchen = Kitchen(journal),
                Units = _units,
            };
    }

    /// <summary>The minutes of first rise that <c>--ready-by</c> asks for.</summary>
    public double ReadyByMinutes()
    {
        var text = settings.ReadyBy!;
        if (settings.MixedAt is null && ClockTime.TryParse(text, out _))
        {
            throw new CommandFailure($"--ready-by {text} is a time of day: say with --mixed-at when mixing ends, or write minutes, such as \"90 min\".");
        }

        if (settings.MixedAt is not { } mixed)
        {
            return Minutes("ready-by", text);
        }

        var (start, end) = (SheetValues.Time("mixed-at", mixed)!.Value, SheetValues.Time("ready-by", text)!.Value);
        var minutes = (end - start).TotalMinutes;
        return minutes > 0 ? minutes : throw new CommandFailure($"--ready-by {text} is no later than --mixed-at {mixed}: write the later time behind --ready-by.");
    }

    private DoughSettings? House(Journal journal) => settings.Formula is not { } name ? null
        : HouseFormula.Of(journal, name).Match(found => found, problem => throw new CommandFailure($"{problem.Message} {problem.Remedy}"));

    // What isn't said is as the journal has it.
    private TuneKitchen? Kitchen(Journal journal)
    {
        var values = new SheetValues(_units);
        var room = Sensible("kitchen", values.Temperature("kitchen", settings.Kitchen), ColdestRoomC, HottestRoomC);
        var flour = Sensible("flour-temp", values.Temperature("flour-temp", settings.FlourTemp), ColdestRoomC, HottestRoomC);
        var taps = values.BothTaps(settings.Taps);
        var ice = values.Number("ice", settings.Ice) ?? 0;
        if (ice < 0)
        {
            throw new CommandFailure($"--ice {settings.Ice} is less than none: write grams, such as 500.");
        }

        if (taps is { } both && (both.Cold.C < 0 || both.Hot < both.Cold || both.Hot.C > BoilingC))
        {
            throw new CommandFailure(
                $"--taps {settings.Taps} can't be water: it goes from {Temperature.FromC(0).Text(_units)} to {Temperature.FromC(BoilingC).Text(_units)}, the cold tap first, as 12C,55C.");
        }

        var usual = TuneKitchen.Usual(journal.Bakes);
        if (room is null && flour is null && taps is null && ice == 0)
        {
            return null;
        }

        if ((room ?? usual?.Conditions.Room) is not { } warm)
        {
            throw new CommandFailure("The journal doesn't say how warm its kitchen is: say it with --kitchen, such as --kitchen 21C.");
        }

        var (cold, hot) = taps ?? (usual?.Water.Cold ?? warm, usual?.Water.Hot ?? KitchenWater.WarmestForYeast);
        return new TuneKitchen(
            new MixingConditions(flour ?? (room is null ? usual!.Conditions.Flour : warm), warm), new KitchenWater(cold, hot, ice));
    }

    private Temperature? Sensible(string option, Temperature? value, double lowC, double highC) => value is { } one && (one.C < lowC || one.C > highC)
        ? throw new CommandFailure($"--{option} {one.Text(_units)} is no kitchen's: it goes from {Temperature.FromC(lowC).Text(_units)} to {Temperature.FromC(highC).Text(_units)}.")
        : value;

    private static double Minutes(string option, string text) =>
        QuantityText.TryParse(text, out var quantity) && (quantity.Unit is null ? quantity.Value
            : quantity.Unit.Dimension == Dimension.Duration ? quantity.Unit.ToCanonical(quantity.Value) : double.NaN) is > 0 and <= LongestMin and var minutes
            ? minutes
            : throw new CommandFailure($"--{option} {text} is no length of time: write it as \"90 min\" or \"1 h 20\", up to two days.");

    private double Volume(string text)
    {
        var unit = DisplayUnit.For(Dimension.SpecificVolume, _units);
        return QuantityText.TryParse(text, out var quantity) && quantity.Unit is null && quantity.Value / unit.Factor is > 0 and <= LargestVolume and var canonical
            ? canonical
            : throw new CommandFailure(FormattableString.Invariant(
                $"--volume-at-least {text} is no specific volume: write {unit.Label} as a number above 0, up to {unit.Value(LargestVolume):0.#}, such as {unit.Value(4.2):0.0}."));
    }
}
