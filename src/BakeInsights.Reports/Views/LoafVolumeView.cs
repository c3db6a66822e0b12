using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>What moved the loaf's volume, in words and tables.</summary>
public static class LoafVolumeView
{
    private const int HydrationSteps = 5;

    private const string Title = "Loaf volume";

    /// <summary>The answer as a baker reads it, or why there is none.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="bakes">How many bakes were asked about.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<LoafVolumeAnswer> answer, int bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Match(
            found => Of(found, bakes, units),
            problem => new View([new ViewHeading(Title), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    private static View Of(LoafVolumeAnswer answer, int bakes, UnitSystem units)
    {
        var figures = new Figures(units);
        List<ViewBlock> blocks = [new ViewHeading(Title), new ViewParagraph(Headline(answer, figures))];
        if (answer.Coefficient(LoafVolume.HydrationTerm) is not null)
        {
            blocks.Add(Expected(answer, figures));
        }

        return new View(
        [
            .. blocks,
            AnswerBlocks.Basis(answer, bakes),
            AnswerBlocks.Reservations(answer),
            AnswerBlocks.Coefficients(answer),
        ]);
    }

    private static string Headline(LoafVolumeAnswer answer, Figures figures)
    {
        var share = $"{Accounting(answer)} for {Figures.Rounded(100 * answer.RSquared, 0)} % of the variation; "
            + $"single bakes scatter about it by {figures.WithUnit(Dimension.SpecificVolume, answer.ResidualSd)} (one standard deviation).";
        if (answer.BestHydration is not { } best)
        {
            return $"The journal names no best hydration. {answer.WhyNoBestHydration} {share}";
        }

        var centre = figures.WithUnit(Dimension.Temperature, ModelAnswer.CentreTemperatureC);
        return $"Loaves were largest at about {Figures.Rounded(best.Value, 1)} % hydration, for a dough of {centre} "
            + $"(95 % interval: {Figures.Range(best.Low, best.High, 1, "%")}). {share}";
    }

    private static string Accounting(LoafVolumeAnswer answer) =>
        (answer.Coefficient(LoafVolume.HydrationTerm), answer.Coefficient(LoafVolume.DoughTemperatureTerm)) switch
        {
            ({ }, { }) => "Hydration and dough temperature account",
            ({ }, null) => "Hydration accounts",
            _ => "Dough temperature accounts",
        };

    private static ViewTable Expected(LoafVolumeAnswer answer, Figures figures)
    {
        var baked = answer.RangeOf(Measures.Hydration)!;
        var hydrations = Enumerable.Range(0, HydrationSteps)
            .Select(step => baked.Least + (step * (baked.Most - baked.Least) / (HydrationSteps - 1)));
        var temperature = answer.Coefficient(LoafVolume.DoughTemperatureTerm) is null
            ? null
            : answer.Typical[Measures.DoughTemperature];
        var points = temperature is { } celsius
            ? answer.OverHydration(hydrations, celsius)
            : [.. hydrations.Select(percent => answer.At(answer.Typical.With(Measures.Hydration, percent)))];
        var dough = temperature is { } typical ? $" from a dough of {figures.WithUnit(Dimension.Temperature, typical)}" : "";
        return new ViewTable(
            $"Specific volume to expect{dough}, over the hydrations baked.",
            [
                new ViewColumn(figures.TitleOf(Measures.Hydration), true),
                new ViewColumn(figures.TitleOf(Measures.SpecificVolume), true),
                new ViewColumn("Mean, 95 % interval", true),
                new ViewColumn("One more bake, 95 %", true),
            ],
            [.. points.Select(point => Row(point, figures))]);
    }

    private static IReadOnlyList<string> Row(CurvePoint point, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.SpecificVolume);
        return
        [
            figures.Bare(Dimension.Percent, point.X),
            figures.Bare(Dimension.SpecificVolume, point.Estimate),
            Figures.Range(unit.Value(point.Mean.Low), unit.Value(point.Mean.High), unit.Decimals),
            Figures.Range(unit.Value(point.Prediction.Low), unit.Value(point.Prediction.High), unit.Decimals),
        ];
    }
}
