namespace BakeInsights.Reports;

/// <summary>The water of a sheet in words.</summary>
internal sealed class SheetWaterWords(Sheet sheet, UnitSystem units)
{
    private readonly Figures _figures = new(units);

    /// <summary>The temperature, how to draw it, and what the kitchen can't reach; a sentence or two each.</summary>
    public IReadOnlyList<string> All() => sheet.Water.Match<IReadOnlyList<string>>(
        needed => [Needed(needed), Drawn(needed), .. needed.Warnings(units), .. Unknown()],
        problem => [$"{problem.Message} {problem.Remedy}"]);

    /// <summary>The headline: the water, or a dash where none can be named.</summary>
    public string Headline() => sheet.Water.Match(needed => Degrees(needed.WaterC.Value), _ => "–");

    private string Needed(NeededWater needed) =>
        $"Water at {Degrees(needed.WaterC.Value)} ({Ends(needed.WaterC.Low, needed.WaterC.High)}) for a dough of {sheet.Dough.Text(units)} after "
        + $"{Figures.Rounded(needed.Conditions.MixMin!.Value, 0)} min of mixing, with flour at {needed.Conditions.Flour.Text(units)} and the room at "
        + $"{needed.Conditions.Room.Text(units)}.";

    private string Drawn(NeededWater needed)
    {
        var plan = needed.Plan;
        var parts = new[] { (plan.ColdG, "cold"), (plan.HotG, "hot"), (plan.IceG, "ice") }
            .Where(part => part.Item1 >= 0.5)
            .Select(part => $"{Figures.Rounded(part.Item1, 0)} g {part.Item2}");
        return $"Draw {string.Join(" + ", parts)} and read the probe. One such dough comes to lie in {Ends(needed.Dough.Prediction.Low, needed.Dough.Prediction.High)}.";
    }

    // The kitchen's model rests on doughs of flour and water.
    private IEnumerable<string> Unknown() => new[] { IngredientRole.Milk, IngredientRole.Egg, IngredientRole.Preferment }
        .Where(role => sheet.Formula.GramsOf(role) > 0)
        .Take(1)
        .Select(_ => "The kitchen's model knows doughs without milk, egg and preferment: bring those to room temperature, and take this as a guess.");

    private string Degrees(double celsius) => _figures.WithUnit(Dimension.Temperature, celsius);

    private string Ends(double? low, double? high)
    {
        var unit = _figures.UnitOf(Dimension.Temperature);
        return Figures.Range(low is { } from ? unit.Value(from) : null, high is { } to ? unit.Value(to) : null, unit.Decimals, unit.Label);
    }
}
