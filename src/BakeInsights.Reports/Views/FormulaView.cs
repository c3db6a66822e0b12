namespace BakeInsights.Reports;

/// <summary>A formula as a table with both percentages, or in cups and spoons.</summary>
public static class FormulaView
{
    private const double FineScaleG = 50;

    /// <summary>What is weighed, line by line, and what the trade reads from it.</summary>
    public static View Of(Formula formula, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var figures = new Figures(units);
        return new View(
        [
            new ViewTable(
                "What is weighed. Percent of flour counts a preferment's flour; percent of dough is another thing.",
                [
                    new ViewColumn("Ingredient", false),
                    new ViewColumn(figures.TitleOf("Mass", Dimension.Mass), true),
                    new ViewColumn("% of flour", true),
                    new ViewColumn("% of dough", true),
                ],
                [.. formula.Lines.Select(line => Row(line, figures))]),
            new ViewList([.. Readings(formula, figures)]),
        ]);
    }

    /// <summary>What is filled, line by line, and what that does to the hydration.</summary>
    public static View Of(HouseholdFormula formula, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var figures = new Figures(units);
        return new View(
        [
            new ViewTable(
                "In cups and spoons; what has no published cup is weighed.",
                [new ViewColumn("Ingredient", false), new ViewColumn("Measure", false), new ViewColumn("Rounding (%)", true)],
                [
                    .. formula.Lines.Select(line => new[]
                    {
                        line.Ingredient.Name,
                        line.Amount?.Text ?? figures.WithUnit(Dimension.Mass, line.Ingredient.Grams),
                        line.Amount is { } amount ? Figures.Rounded(amount.RoundingPct, 1) : "–",
                    }),
                ]),
            new ViewParagraph(
                $"{Figures.Rounded(formula.HydrationPct, 0)} % hydration when every cup holds what it should; "
                + $"{formula.HydrationText} as cups are filled (two doughs in three)."),
        ]);
    }

    private static IReadOnlyList<string> Row(FormulaLine line, Figures figures)
    {
        // Salt and yeast are weighed on a finer scale than flour.
        var mass = figures.UnitOf(Dimension.Mass);
        var decimals = line.Grams < FineScaleG ? mass.Decimals + 1 : mass.Decimals;
        return
        [
            line.Name,
            Figures.Rounded(mass.Value(line.Grams), decimals),
            figures.Bare(Dimension.Percent, line.PctOfFlour),
            figures.Bare(Dimension.Percent, line.PctOfDough),
        ];
    }

    private static IEnumerable<string> Readings(Formula formula, Figures figures)
    {
        string Percent(double value) => figures.WithUnit(Dimension.Percent, value);
        yield return $"Dough: {figures.WithUnit(Dimension.Mass, formula.TotalG)}; all flour: {figures.WithUnit(Dimension.Mass, formula.Masses.FlourG)}.";
        yield return $"Hydration as stated: {Percent(formula.HydrationPct)}; by composition: {Percent(formula.EffectiveHydrationPct)}.";
        yield return $"Dough yield, milk as liquid: {Figures.Rounded(formula.DoughYield, 0)}.";
        if (formula.PrefermentedFlourPct > 0)
        {
            yield return $"Prefermented flour: {Percent(formula.PrefermentedFlourPct)} of all flour."
                + (formula.InoculationPct is { } inoculation ? $" Preferment: {Percent(inoculation)} of the flour weighed in." : "");
        }
    }
}
