using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>How far groups of bakes lie apart, in words and a table in the order of their names.</summary>
public static class GroupView
{
    /// <summary>The answer as a baker reads it, or why there is none.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="bakes">How many bakes were asked about.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<GroupAnswer> answer, int bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Match(
            found => Of(found, bakes, new Figures(units)),
            problem => new View([new ViewHeading("Groups side by side"), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    private static View Of(GroupAnswer answer, int bakes, Figures figures) => new(
    [
        new ViewHeading(Figures.Sentence($"{answer.Result.Title} by {answer.ColumnTitle}")),
        new ViewParagraph(Headline(answer, figures)),
        Table(answer, figures),
        ColumnBasis.Of(bakes, answer.Used.Count, answer.LeftOutBakes, answer.HeldStill, answer.LeftOutTerms),
        new ViewList(answer.Caveats),
    ]);

    private static string Headline(GroupAnswer answer, Figures figures)
    {
        var chance = $"If all were alike, chance alone would set their bakes this far apart in "
            + $"{Figures.Chance(answer.PValue)} journals (p {Figures.Probability(answer.PValue)}, F {Figures.Rounded(answer.Test.FValue!.Value, 2)} with "
            + $"{answer.Test.ExtraDegreesOfFreedom} and {answer.Test.ResidualDegreesOfFreedom} degrees of freedom).";
        var largest = answer.Largest;
        var difference = $"at {largest.To} the {answer.ResultName} was "
            + $"{DifferenceWords.Signed(largest.Effect, answer.Result.Dimension, figures, "more", "less")} than at {largest.From}";
        return answer.Spread is { } spread
            ? $"{SpreadWords(spread, answer, figures)} {chance} Of all pairs the farthest apart: {difference}."
            : $"Between the two, {difference}. {chance}";
    }

    private static string SpreadWords(Estimate spread, GroupAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(answer.Result.Dimension);
        var percent = answer.SpreadPct is { } pct ? $", or {Figures.Rounded(pct.Value, 1)} % ({Figures.Range(pct.Low, pct.High, 1)})" : "";
        var value = $"{Figures.Rounded(unit.Difference(spread.Value), unit.Decimals)} {unit.Label}".TrimEnd();
        return $"A {answer.ColumnTitle} typically lies {value} from the mean of all (one standard deviation; 95 % interval: "
            + $"{DifferenceWords.Interval(spread, unit)}){percent}.";
    }

    private static ViewTable Table(GroupAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(answer.Result.Dimension);
        var label = unit.Label.Length > 0 ? $" ({unit.Label})" : "";
        var isPooled = answer.Spread is not null;
        ViewColumn[] columns =
        [
            new(answer.ColumnTitle, false),
            new("Bakes", true),
            new($"Own mean{label}", true),
            new("95 % interval", true),
            .. isPooled ? new[] { new ViewColumn($"From the mean of all{label}", true), new ViewColumn("95 % interval", true) } : [],
        ];
        return new ViewTable(
            isPooled
                ? "Own mean: by its own bakes, all else as in the average bake. From the mean of all: of all such, not of these alone, and drawn towards it as far as the bakes are few. In the order of names."
                : "Own mean: by its own bakes, all else as in the average bake. In the order of names.",
            columns,
            [.. answer.Groups.Select(group => Row(group, unit))]);
    }

    private static IReadOnlyList<string> Row(GroupResult group, DisplayUnit unit) =>
    [
        group.Group,
        Figures.Rounded(group.Count, 0),
        Figures.Rounded(unit.Value(group.OwnMean.Value), unit.Decimals),
        Figures.Range(unit.Value(group.OwnMean.Low!.Value), unit.Value(group.OwnMean.High!.Value), unit.Decimals),
        .. group.Effect is { } effect ? new[] { DifferenceWords.Bare(effect, unit), DifferenceWords.Interval(effect, unit) } : [],
    ];
}
