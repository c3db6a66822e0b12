namespace BakeInsights.Inference.Tests;

/// <summary>The data sets that mixed models are compared on.</summary>
internal static class MixedCases
{
    public static MixedFit Fit(string name, MixedCriterion criterion)
    {
        var (design, response, groups, labels, slope) = Model(name);
        return MixedModel.Fit(design, response, groups, labels, slope, criterion).Value;
    }

    public static double Value(ReferenceTable table, string name, MixedCriterion criterion, string quantity)
    {
        var kind = criterion == MixedCriterion.Restricted ? "restricted" : "full";
        var (cases, criteria, quantities) = (table.Texts("case"), table.Texts("criterion"), table.Texts("quantity"));
        var row = Enumerable.Range(0, table.RowCount)
            .Single(i => cases[i] == name && criteria[i] == kind && quantities[i] == quantity);
        return table.Numbers("value")[row];
    }

    private static (Design Design, double[] Response, string Groups, string[] Labels, string? Slope) Model(string name)
    {
        switch (name)
        {
            case "dyestuff" or "dyestuff2":
                var dye = ReferenceTable.Read($"r/{name}.csv");
                return (Columns(dye), dye.Numbers("yield"), "batch", dye.Texts("batch"), null);
            case "sleepstudy" or "sleepstudy slope":
                var sleep = ReferenceTable.Read("r/sleepstudy.csv");
                return (Columns(sleep, sleep.Column("days")), sleep.Numbers("reaction"), "subject",
                    sleep.Texts("subject"), name == "sleepstudy" ? null : "days");
            case "bromate":
                var bread = ReferenceTable.Read("bread/bromate.csv");
                return (Columns(bread, bread.Column("level"), Product("level squared", bread, "level", "level")),
                    bread.Numbers("volume_ml"), "flour", bread.Texts("flour"), null);
            case "pastry":
                return Pastry();
            case "unequal":
                var unequal = ReferenceTable.Read("r/unequal.csv");
                return (Columns(unequal, unequal.Column("warmth"), unequal.Column("altitude")),
                    unequal.Numbers("rise"), "kitchen", unequal.Texts("kitchen"), null);
            case "unequal slope":
                var sloped = ReferenceTable.Read("r/unequal.csv");
                var warm = new DesignColumn("warm", [.. sloped.Numbers("warmth").Select(w => w - 24)]);
                return (Columns(sloped, warm, sloped.Column("altitude")),
                    sloped.Numbers("rise"), "kitchen", sloped.Texts("kitchen"), "warm");
            case "edge":
                var edge = ReferenceTable.Read("r/edge.csv");
                return (Columns(edge, edge.Column("x")), edge.Numbers("y"), "kitchen", edge.Texts("kitchen"), "x");
            default:
                throw new ArgumentOutOfRangeException(nameof(name), name, "No such case.");
        }
    }

    private static (Design, double[], string, string[], string?) Pastry()
    {
        var pastry = ReferenceTable.Read("bread/pastry.csv");
        string[] factors = ["x1", "x2", "x3"];
        var design = Columns(pastry,
        [
            .. factors.Select(pastry.Column),
            .. factors.Select(x => Product($"{x} squared", pastry, x, x)),
            Product("x1 x2", pastry, "x1", "x2"),
            Product("x1 x3", pastry, "x1", "x3"),
            Product("x2 x3", pastry, "x2", "x3"),
        ]);
        return (design, pastry.Numbers("y"), "day", pastry.Texts("day"), null);
    }

    private static Design Columns(ReferenceTable table, params DesignColumn[] columns) =>
        new([DesignColumn.Constant(table.RowCount), .. columns]);

    private static DesignColumn Product(string name, ReferenceTable table, string first, string second) =>
        new(name, [.. table.Numbers(first).Zip(table.Numbers(second), (a, b) => a * b)]);
}
