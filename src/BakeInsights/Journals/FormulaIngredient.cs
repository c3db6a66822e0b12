using System.Collections.Immutable;
using C = BakeInsights.FormulaColumns;

namespace BakeInsights;

/// <summary>One ingredient of a formula, by percent of flour or by weight.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Ingredient">The ingredient, once in the formula.</param>
/// <param name="Percent">Percent of all flour.</param>
/// <param name="AmountG">Its weight in g.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record FormulaIngredient(
    string Formula,
    string Ingredient,
    double? Percent,
    double? AmountG,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    internal static FormulaIngredient From(RowValues row) => new(
        row.Of(C.Formula)!,
        row.Of(C.Ingredient)!,
        row.Of(C.Percent),
        row.Of(C.Amount),
        row.Origin,
        row.OwnCells());
}
