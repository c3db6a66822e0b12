using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>What makes a dough ready by a wanted time, in words and a table.</summary>
public static class ReadyByView
{
    private const string Title = "Ready on time";
    private const double FlourG = 1_000;

    /// <summary>The answer as a baker reads it, or why there is none.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<ReadyByAnswer> answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Match(
            found => Of(found, units),
            problem => new View([new ViewHeading(Title), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    /// <summary>What the journal supports in place of a time that neither setting reaches; a line.</summary>
    public static string OutOfReach(ReadyByAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var figures = new Figures(units);
        var nearest = Needed(answer).ToList();
        return $"Ready in {Minutes(answer.Minutes)} is out of reach: " + (nearest.Count == 0
            ? "the journal can't tell what dough temperature and yeast do. Log bakes that differ in them."
            : string.Join("; ", nearest.Select(one =>
                $"a {one.Setting.Words} of {TuneWords.Setting(one.Setting, Math.Clamp(one.OnAverage.Value, one.Baked.Least, one.Baked.Most), figures)}, "
                + $"the nearest that was baked, gives {Minutes(one.Nearest.Estimate)} ({Range(one.Nearest.Prediction)} for one more bake, 95 %)"))
                + ". Change both with --ready-within, or bake other doughs first.");
    }

    private static View Of(ReadyByAnswer answer, UnitSystem units)
    {
        if (!answer.IsPossible)
        {
            return new View([new ViewHeading(Title), new ViewParagraph(OutOfReach(answer, units))]);
        }

        var figures = new Figures(units);
        return new View(
        [
            new ViewHeading(Title),
            new ViewParagraph(
                $"Wanted: ready {Minutes(answer.Minutes)} after mixing. As it is, with {TuneWords.Dough(answer.House, answer.House.Known.Where(setting => setting != Measures.ProofTime), figures)}, "
                + $"expect {Minutes(answer.AsItIs.Estimate)} ({Range(answer.AsItIs.Prediction)} for one more bake, 95 %)."),
            new ViewTable(
                "One setting changed, the others kept. On average: half of the doughs are ready by then; the range can't be told from it (95 %).",
                [
                    new ViewColumn("Setting", false), new ViewColumn("House formula", true), new ViewColumn("On average", true), new ViewColumn("Range", true),
                    new ViewColumn("Nine in ten", true), new ViewColumn("Baked", true),
                ],
                [.. Needed(answer).Select(one => Row(answer, one, figures))]),
            .. answer.WaterFor(FlourG * (answer.House[Measures.Hydration] ?? ModelAnswer.CentreHydrationPct) / 100) is { } water
                ? KitchenDoughTemperatureView.Of(water, units).Blocks
                : [],
            new ViewList([.. Remarks(answer)]),
        ]);
    }

    private static IEnumerable<NeededSetting> Needed(ReadyByAnswer answer) => new[] { answer.DoughTemperature, answer.Yeast }.OfType<NeededSetting>();

    private static IReadOnlyList<string> Row(ReadyByAnswer answer, NeededSetting one, Figures figures)
    {
        string Text(double value) => TuneWords.Setting(one.Setting, value, figures);
        return
        [
            one.Setting.Title,
            Text(answer.House[one.Setting]!.Value),
            Text(one.OnAverage.Value) + (one.IsBaked ? "" : ", not baked"),
            (one.OnAverage.Low, one.OnAverage.High) switch
            {
                ({ } low, { } high) => $"{Text(low)} to {Text(high)}",
                ({ } low, null) => $"{Text(low)} or more",
                (null, { } high) => $"{Text(high)} or less",
                _ => "no bounds",
            },
            one.Safe is { } safe ? Text(safe) : "–",
            $"{Text(one.Baked.Least)} to {Text(one.Baked.Most)}",
        ];
    }

    private static IEnumerable<string> Remarks(ReadyByAnswer answer)
    {
        yield return $"This rests on {JournalView.Count(answer.Used, "bake")}. Nine in ten: nine doughs of ten are ready by then; a dash where no value that was baked does it.";
        if (Needed(answer).Any(one => !one.IsBaked))
        {
            yield return "A value that was not baked is what the straight line says beyond the bakes: a guess.";
        }

        if (answer.Kitchen is null)
        {
            yield return "The journal has no room and water temperatures, so no water can be named.";
        }

        yield return ModelAnswer.NotACause;
    }

    private static string Minutes(double minutes) => Figures.Rounded(minutes, 0) + " min";

    private static string Range(Interval minutes) => Figures.Range(minutes.Low, minutes.High, 0);
}
