namespace BakeInsights;

/// <summary>All columns of <c>formulas.csv</c>: a row is one ingredient of one formula.</summary>
/// <remarks>The ranges are what can be meant at all; common practice of the trade, no source.</remarks>
public static class FormulaColumns
{
    private const double HeaviestG = 100_000;

    private static readonly TableLayout.Builder Columns = new("ingredients of formulas");

    /// <summary>The formula's name.</summary>
    public static TextColumn Formula { get; } = Columns.Text("formula", "name of the formula, as the bakes have it");

    /// <summary>The ingredient.</summary>
    public static TextColumn Ingredient { get; } = Columns.Text("ingredient", "the ingredient, once in its formula");

    /// <summary>Baker's percent.</summary>
    public static QuantityColumn Percent { get; } =
        Columns.NamedForUnit("percent", Dimension.Percent, "percent of all flour", 0, 400);

    /// <summary>What goes in.</summary>
    public static QuantityColumn Amount { get; } =
        Columns.Quantity("amount", Dimension.Mass, "how much of it, where no percentage is given", 0, HeaviestG);

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [Formula, Ingredient], key: [Formula, Ingredient]);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
