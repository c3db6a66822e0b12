namespace BakeInsights.Reports;

/// <summary>The formula of a sheet in a table and in words.</summary>
internal sealed class SheetFormulaWords(Sheet sheet, UnitSystem units)
{
    // Salt and yeast are weighed on a finer scale than flour.
    private const double FineScaleG = 50;

    private readonly Figures _figures = new(units);

    /// <summary>What is weighed, and by the cup where that was asked for.</summary>
    public ViewTable Table()
    {
        List<ViewColumn> columns = [new("Ingredient", false), new("g", true)];
        if (units == UnitSystem.Us)
        {
            columns.Add(new(DisplayUnit.For(Dimension.Mass, units).Label, true));
        }

        columns.Add(new("% of flour", true));
        if (sheet.Cups is not null)
        {
            columns.AddRange([new("By the cup", false), new("Off by (%)", true)]);
        }

        var rows = sheet.Formula.Lines.Select((line, place) => Row(line, sheet.Cups?.Lines[place])).Append(Total()).ToList();
        return new("Formula", columns, rows);
    }

    /// <summary>How cups are filled and what they do to the dough; empty for a formula by weight.</summary>
    public IReadOnlyList<string> Cups()
    {
        if (sheet is not { Cups: { } cups, Filling: { } filling })
        {
            return [];
        }

        var flours = cups.Lines.Where(line => line.Ingredient.Role == IngredientRole.Flour).ToList();
        return
        [
            .. flours.Any(line => line.Amount is not null)
                ?
                [
                    $"{Filled(filling)} Such cups scatter by {Figures.Rounded(cups.FlourSpreadPct, 0)} % (one standard deviation): expect "
                        + $"{cups.HydrationText}, two doughs in three. \"Off by\" is what rounding to whole spoons and cups adds.",
                ]
                : Array.Empty<string>(),
            .. flours.Where(line => line.Amount is null).Select(line => $"No cup of {line.Ingredient.Name} is published: weigh it."),
        ];
    }

    /// <summary>Whose formula, how much, and of what.</summary>
    public string Subtitle()
    {
        var formula = sheet.FormulaBakes > 0
            ? $"{(sheet.FormulaName.Length > 0 ? sheet.FormulaName : "typical dough")} (median of {sheet.FormulaBakes} bakes)"
            : sheet.FormulaName;
        var pieces = sheet.Pieces is { } divided ? $"; {divided.Count} x {Grams(divided.PieceG)} g{Ounces(divided.PieceG)}" : "";
        return $"{sheet.Journal}: {formula}{pieces}";
    }

    /// <summary>What the amounts count on.</summary>
    public string Amounts() =>
        $"Hydration {_figures.WithUnit(Dimension.Percent, sheet.Formula.HydrationPct)}."
        + (sheet.Pieces is { } pieces ? $" {Figures.Rounded(pieces.LossPct, 1)} % of the dough is counted on to stay on bowl and hands." : "");

    private List<string> Row(FormulaLine line, HouseholdLine? byCup)
    {
        List<string> row = [line.Name, Grams(line.Grams)];
        if (units == UnitSystem.Us)
        {
            row.Add(Oz(line.Grams));
        }

        row.Add(_figures.Bare(Dimension.Percent, line.PctOfFlour));
        if (sheet.Cups is not null)
        {
            row.AddRange(byCup?.Amount is { } amount ? [amount.Text, Signed(amount.RoundingPct)] : ["weigh it", "–"]);
        }

        return row;
    }

    private List<string> Total()
    {
        List<string> row = ["dough", Grams(sheet.Formula.TotalG)];
        if (units == UnitSystem.Us)
        {
            row.Add(Oz(sheet.Formula.TotalG));
        }

        row.Add(_figures.Bare(Dimension.Percent, sheet.Formula.GrossDoughYield));
        if (sheet.Cups is not null)
        {
            row.AddRange(["", ""]);
        }

        return row;
    }

    private static string Grams(double grams) => Figures.Rounded(grams, grams < FineScaleG ? 1 : 0);

    private static string Oz(double grams)
    {
        var unit = DisplayUnit.For(Dimension.Mass, UnitSystem.Us);
        return Figures.Rounded(unit.Value(grams), grams < FineScaleG ? unit.Decimals + 1 : unit.Decimals);
    }

    private string Ounces(double grams) => units == UnitSystem.Us ? $" ({Oz(grams)} oz)" : "";

    private static string Signed(double pct) => Figures.Rounded(pct, 0) is var text && pct >= 0.5 ? "+" + text : text;

    private static string Filled(FlourMeasure filling) => filling switch
    {
        FlourMeasure.Spooned => "Fluff the flour, spoon it lightly into the cup and level it.",
        FlourMeasure.Scooped => "Dip the cup into the flour and level it.",
        FlourMeasure.Sifted => "Sift the flour, then spoon it into the cup and level it.",
        _ => "Fill all cups of flour in one way.",
    };
}
