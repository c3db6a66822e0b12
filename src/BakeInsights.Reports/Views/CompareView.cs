using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>Two formulas, or two ways of working, side by side.</summary>
public static class CompareView
{
    /// <summary>The comparison as a baker reads it, or why there is none.</summary>
    /// <param name="compared">The comparison.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<TwoWays> compared, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(compared);
        return compared.Match(
            found => Of(found, new Figures(units)),
            problem => new View([new ViewHeading("Two ways side by side"), new ViewParagraph($"{problem.Message} {problem.Remedy}".TrimEnd())]));
    }

    private static View Of(TwoWays ways, Figures figures)
    {
        List<ViewBlock> blocks =
        [
            new ViewHeading($"{Figures.Sentence(ways.First)} and {ways.Second}"),
            new ViewParagraph($"{JournalView.Count(ways.FirstCount, "bake")} with {ways.ColumnTitle} {ways.First}, {ways.SecondCount} with {ways.Second}."),
            new ViewList([.. ways.Compared.Select(one => Sentence(ways, one, figures)), .. ways.NotCompared.Select(not => $"{not.Result.Title}: not compared. {not.Reason}")]),
            Results(ways, figures),
        ];
        if (ways.SettingsBeside.Count > 0)
        {
            blocks.Add(Settings(ways, figures));
        }

        blocks.Add(new ViewList([.. Remarks(ways)]));
        return new View(blocks);
    }

    private static string Sentence(TwoWays ways, ResultCompared one, Figures figures)
    {
        var margin = $"{Figures.Significant(ways.Wish.MarginPct, 2)} %";
        var difference = DifferenceWords.Signed(one.Difference, one.Result.Dimension, figures, "more", "less");
        var inside = Figures.Range(one.PercentInterval90.Low, one.PercentInterval90.High, 1);
        var said = one.Likeness switch
        {
            Likeness.Alike => $"alike within {margin}: the 90 % interval of the difference, {inside} %, lies inside",
            Likeness.DifferentWithinMargin => $"different, but by less than {margin}: the 90 % interval is {inside} %",
            Likeness.Different => one.Finding.IsFinding ? "different" : "different if it were the only result asked about; with all of them counted it may be chance",
            _ => $"the journal can't tell: the 95 % interval reaches both ways, and the 90 % interval, {inside} %, past {margin}",
        };
        return $"{one.Result.Title}: {said}. With {ways.Second} it was {difference} than with {ways.First}.";
    }

    private static ViewTable Results(TwoWays ways, Figures figures) => new(
        "Means with all else as in the average bake used, and how far they lie apart; p counts all results asked about.",
        [
            new ViewColumn("Result", false),
            new ViewColumn(ways.First, true),
            new ViewColumn(ways.Second, true),
            new ViewColumn("Difference", true),
            new ViewColumn("95 % interval", true),
            new ViewColumn("p", true),
        ],
        [
            .. ways.Compared.Select(one =>
            {
                var unit = figures.UnitOf(one.Result.Dimension);
                return new[]
                {
                    figures.TitleOf(one.Result),
                    Figures.Rounded(unit.Value(one.FirstMean.Value), unit.Decimals),
                    Figures.Rounded(unit.Value(one.SecondMean.Value), unit.Decimals),
                    DifferenceWords.Bare(one.Difference, unit),
                    DifferenceWords.Interval(one.Difference, unit),
                    Figures.Probability(one.Finding.FamilyPValue),
                };
            }),
        ]);

    private static ViewTable Settings(TwoWays ways, Figures figures) => new(
        "How they were made: the middle, and from least to most.",
        [
            new ViewColumn("Setting", false),
            new ViewColumn(ways.First, true),
            new ViewColumn("from, to", true),
            new ViewColumn(ways.Second, true),
            new ViewColumn("from, to", true),
        ],
        [
            .. ways.SettingsBeside.Select(beside => new[]
            {
                figures.TitleOf(beside.Setting),
                figures.Bare(beside.Setting.Dimension, beside.First.Middle),
                Ends(beside.First, figures),
                figures.Bare(beside.Setting.Dimension, beside.Second.Middle),
                Ends(beside.Second, figures),
            }),
        ]);

    private static IEnumerable<string> Remarks(TwoWays ways)
    {
        foreach (var same in ways.Compared.GroupBy(one => Basis(one)))
        {
            yield return $"{Figures.Sentence(string.Join(", ", same.Select(one => one.Name)))}: {same.Key}";
        }

        foreach (var remark in ways.CannotTellApart)
        {
            yield return remark;
        }

        yield return ModelAnswer.NotACause;
    }

    private static string Basis(ResultCompared one)
    {
        List<string> parts = [$"{one.FirstCount} and {JournalView.Count(one.SecondCount, "bake")}"];
        parts.Add(one.Blocks.Count > 0
            ? $"compared within each {string.Join(" and each ", one.Blocks.Select(Words))}"
            : "compared without blocks");
        if (one.HeldStill.Count > 0)
        {
            parts.Add($"held still: {string.Join(", ", one.HeldStill.Select(Words))}");
        }

        if (one.NotHeldStill.Count > 0)
        {
            parts.Add($"not held still: {string.Join(", ", one.NotHeldStill.Select(left => Words(left.Name)))}");
        }

        return string.Join("; ", parts) + ".";
    }

    private static string Ends(MeasureSummary summary, Figures figures)
    {
        var unit = figures.UnitOf(summary.Measure.Dimension);
        return Figures.Range(unit.Value(summary.Least), unit.Value(summary.Most), unit.Decimals);
    }

    private static string Words(string name) => name switch
    {
        "baked_on" => "day",
        "flour_kind" => "kind of flour",
        _ => name.Replace('_', ' '),
    };
}
