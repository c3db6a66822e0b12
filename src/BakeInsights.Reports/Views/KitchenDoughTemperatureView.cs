using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>A kitchen's own dough temperature, and the water that it takes, in words and tables.</summary>
public static class KitchenDoughTemperatureView
{
    private const string Title = "Dough temperature of this kitchen";

    /// <summary>What was learned, as a baker reads it, or why nothing was.</summary>
    /// <param name="learned">What was learned.</param>
    /// <param name="bakes">How many bakes were asked about.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<KitchenDoughTemperature> learned, int bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(learned);
        return learned.Match(found => Of(found, bakes, units), problem => Problem(Title, problem));
    }

    /// <summary>The water that a dough takes, as a baker reads it, or why none can be named.</summary>
    /// <param name="needed">The water.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<NeededWater> needed, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(needed);
        return needed.Match(found => Of(found, units), problem => Problem("Water", problem));
    }

    private static View Of(KitchenDoughTemperature learned, int bakes, UnitSystem units)
    {
        var figures = new Figures(units);
        return new View(
        [
            new ViewHeading(Title),
            new ViewParagraph(Headline(learned, figures)),
            Parts(learned, figures),
            AnswerBlocks.Basis(learned.Used.Count, bakes, learned.LeftOutBakes, [.. learned.Parts
                .Where(part => part.Journal is null && learned.Used.Count > 0)
                .Select(part => new LeftOutTerm(part.Name, part.WhyNoJournal))], "Not told by the journal alone"),
            new ViewList(learned.Caveats(units)),
        ]);
    }

    private static string Headline(KitchenDoughTemperature learned, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Temperature);
        var water = learned.Part("water").Together;
        return $"Water 1 {unit.Label} warmer makes the dough {Figures.Rounded(water.Value, 2)} {unit.Label} warmer "
            + $"({Figures.Range(water.Low, water.High, 2)}); the rule of three counts on 0.33. Single doughs scatter by "
            + $"{Figures.Rounded(unit.Difference(learned.Scatter.C), 1)} {unit.Label} about what is expected (one standard "
            + "deviation). Ranges are 95 % intervals.";
    }

    private static ViewTable Parts(KitchenDoughTemperature learned, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Temperature);
        return new ViewTable(
            "What warms the dough, the others held still: by journal and physics together, by the journal alone, by physics and trade figures.",
            [
                new ViewColumn("One step", false),
                new ViewColumn($"Both ({unit.Label})", true),
                new ViewColumn($"Journal ({unit.Label})", true),
                new ViewColumn($"Physics ({unit.Label})", true),
            ],
            [
                .. learned.Parts.Select(part =>
                {
                    var (step, factor) = part.Name switch
                    {
                        "warming" => ($"mixing for {DoughMinutes} min, all at {figures.WithUnit(Dimension.Temperature, ModelAnswer.CentreTemperatureC)}", unit.Factor),
                        "mixing" => ("mixing 1 min longer", unit.Factor),
                        _ => ($"{part.Name} 1 {unit.Label} warmer", 1),
                    };
                    return new[] { step, Range(part.Together, factor), Range(part.Journal, factor), Range(part.Physics, factor) };
                }),
            ]);
    }

    private static View Of(NeededWater needed, UnitSystem units)
    {
        var figures = new Figures(units);
        var unit = figures.UnitOf(Dimension.Temperature);
        string Ends(double? low, double? high) => Figures.Range(
            low is { } from ? unit.Value(from) : null, high is { } to ? unit.Value(to) : null, unit.Decimals, unit.Label);
        var plan = needed.Plan;
        string Grams(double grams) => figures.WithUnit(Dimension.Mass, grams);
        var ice = plan.IceG > 0 ? $", {Grams(plan.IceG)} ice" : "";
        List<ViewBlock> blocks =
        [
            new ViewHeading($"Water for a dough of {needed.Target.Text(units)}"),
            new ViewParagraph(
                $"{figures.WithUnit(Dimension.Temperature, needed.WaterC.Value)} ({Ends(needed.WaterC.Low, needed.WaterC.High)}), with flour at "
                + $"{needed.Conditions.Flour.Text(units)}, the room at {needed.Conditions.Room.Text(units)} and "
                + $"{Figures.Rounded(needed.Conditions.MixMin!.Value, 0)} min of mixing. {NeededWater.IntervalMeaning}"),
            new ViewParagraph(
                $"From the taps: {Grams(plan.ColdG)} cold, {Grams(plan.HotG)} hot{ice}. The dough then comes to "
                + $"{figures.WithUnit(Dimension.Temperature, needed.Dough.Estimate)} on average ({Ends(needed.Dough.Mean.Low, needed.Dough.Mean.High)}); "
                + $"one more dough lies in {Ends(needed.Dough.Prediction.Low, needed.Dough.Prediction.High)}."),
        ];
        var warnings = needed.Warnings(units);
        return new View(warnings.Count > 0 ? [.. blocks, new ViewList(warnings)] : blocks);
    }

    private static string DoughMinutes => Figures.Rounded(KitchenDoughTemperature.CentreMixMin, 0);

    private static string Range(Estimate? estimate, double factor) => estimate is { } found
        ? $"{Figures.Rounded(found.Value * factor, 2)} ({Figures.Range(found.Low * factor, found.High * factor, 2)})"
        : "–";

    private static View Problem(string title, FitProblem problem) =>
        new([new ViewHeading(title), new ViewParagraph($"{problem.Message} {problem.Remedy}")]);
}
