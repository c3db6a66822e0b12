using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>Whether a result goes with a column of the journal, in words and tables.</summary>
public static class ColumnView
{
    private const int Steps = 5;

    /// <summary>The answer as a baker reads it, or why there is none.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="bakes">How many bakes were asked about.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<ColumnAnswer> answer, int bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Match(
            found => Of(found, bakes, new Figures(units)),
            problem => new View([new ViewHeading("A column of the journal"), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    private static View Of(ColumnAnswer answer, int bakes, Figures figures) => new(
    [
        new ViewHeading(Figures.Sentence($"{answer.Result.Title} and {answer.ColumnTitle}")),
        new ViewParagraph(Headline(answer, figures)),
        answer.Form == ColumnForm.Levels ? Levels(answer, figures) : Along(answer, figures),
        Tests(answer),
        ColumnBasis.Of(bakes, answer.Used.Count, answer.LeftOutBakes, answer.HeldStill, answer.LeftOutTerms),
        new ViewList(answer.Caveats),
    ]);

    private static string Headline(ColumnAnswer answer, Figures figures)
    {
        var largest = answer.Largest;
        var from = DifferenceWords.Level(largest.From, largest.FromNumber, answer.ColumnDimension, figures);
        var to = DifferenceWords.Level(largest.To, largest.ToNumber, answer.ColumnDimension, figures);
        var effect = DifferenceWords.Signed(largest.Effect, answer.Result.Dimension, figures, "more", "less");
        var picked = answer.Form == ColumnForm.Curve || answer.Levels.Count > 2 ? "The largest difference" : "The difference";
        var chance = $"If {answer.ColumnTitle} did nothing, chance alone would set the bakes this far apart in "
            + $"{Figures.Chance(answer.PValue)} journals.";
        return $"{picked}: at {answer.ColumnTitle} {to} the {answer.ResultName} was {effect} than at {from}. {chance}{Best(answer, figures)}";
    }

    private static string Best(ColumnAnswer answer, Figures figures)
    {
        if (answer.Form != ColumnForm.Curve)
        {
            return "";
        }

        if (answer.Best is not { } best)
        {
            return $" The journal names no {answer.ColumnTitle} at which the {answer.ResultName} is highest. {answer.WhyNoBest}";
        }

        var unit = figures.UnitOf(answer.ColumnDimension);
        var decimals = answer.ColumnDimension == Dimension.Number ? 2 : unit.Decimals;
        double? In(double? value) => value is { } number ? unit.Value(number) : null;
        return $" The curve is highest at {Figures.Rounded(unit.Value(best.Value), decimals)} {unit.Label}".TrimEnd()
            + $" (95 % interval: {Figures.Range(In(best.Low), In(best.High), decimals)}).";
    }

    private static ViewTable Levels(ColumnAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(answer.Result.Dimension);
        return new ViewTable(
            $"The mean of each {answer.ColumnTitle}, all else as in the average bake used.",
            [
                new ViewColumn(answer.ColumnTitle, false),
                new ViewColumn("Bakes", true),
                new ViewColumn(figures.TitleOf(answer.Result), true),
                new ViewColumn("95 % interval", true),
            ],
            [
                .. answer.Levels.Select(level => new[]
                {
                    DifferenceWords.Level(level.Level, level.Number, answer.ColumnDimension, figures),
                    Figures.Rounded(level.Count, 0),
                    Figures.Rounded(unit.Value(level.Mean.Value), unit.Decimals),
                    Figures.Range(unit.Value(level.Mean.Low!.Value), unit.Value(level.Mean.High!.Value), unit.Decimals),
                }),
            ]);
    }

    private static ViewTable Along(ColumnAnswer answer, Figures figures)
    {
        double[] numbers = [.. answer.Used.Select(bake => answer.NumberOf(bake)!.Value)];
        var (least, most) = (numbers.Min(), numbers.Max());
        var unit = figures.UnitOf(answer.Result.Dimension);
        var column = figures.UnitOf(answer.ColumnDimension);
        var decimals = answer.ColumnDimension == Dimension.Number ? 2 : column.Decimals;
        return new ViewTable(
            $"The {answer.ResultName} to expect over what was tried, all else as in the average bake used.",
            [
                new ViewColumn(figures.TitleOf(answer.ColumnTitle, answer.ColumnDimension), true),
                new ViewColumn(figures.TitleOf(answer.Result), true),
                new ViewColumn("Mean, 95 % interval", true),
                new ViewColumn("One more bake, 95 %", true),
            ],
            [
                .. Enumerable.Range(0, Steps).Select(step => answer.At(least + (step * (most - least) / (Steps - 1)))).Select(point => new[]
                {
                    Figures.Rounded(column.Value(point.X!.Value), decimals),
                    Figures.Rounded(unit.Value(point.Estimate), unit.Decimals),
                    Figures.Range(unit.Value(point.Mean.Low), unit.Value(point.Mean.High), unit.Decimals),
                    Figures.Range(unit.Value(point.Prediction.Low), unit.Value(point.Prediction.High), unit.Decimals),
                }),
            ]);
    }

    private static ViewTable Tests(ColumnAnswer answer) => new(
        "Whether it matters, by the F test.",
        [
            new ViewColumn("Of", false),
            new ViewColumn("F", true),
            new ViewColumn("Degrees of freedom", true),
            new ViewColumn("p", true),
        ],
        [
            Row(answer.ColumnTitle, answer.Test),
            .. answer.Blocks.Select(block => Row(block.Block.Replace('_', ' '), block.Test)),
        ]);

    private static string[] Row(string name, NestedComparison test) =>
    [
        name,
        Figures.Rounded(test.FValue!.Value, 2),
        $"{test.ExtraDegreesOfFreedom} and {test.ResidualDegreesOfFreedom}",
        Figures.Probability(test.PValue!.Value),
    ];
}
