using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The columns of a fit by what they are there for.</summary>
/// <param name="Blocks">The indicators of each block.</param>
/// <param name="HeldStill">The causes held still.</param>
/// <param name="Own">The terms of the column asked about.</param>
internal sealed record ColumnParts(
    IReadOnlyList<IReadOnlyList<DesignColumn>> Blocks, IReadOnlyList<DesignColumn> HeldStill, IReadOnlyList<DesignColumn> Own)
{
    /// <summary>All of them in order.</summary>
    public IEnumerable<DesignColumn> All => [.. Blocks.SelectMany(block => block), .. HeldStill, .. Own];

    /// <summary>Makes the columns for these bakes.</summary>
    public static ColumnParts Of(ColumnRows rows, string heldPrefix) => new(
        [.. rows.Blocks.Select(block => Indicators(rows, block))],
        [.. rows.HeldStill.Select(term => term.ColumnOf(rows.Bakes, heldPrefix))],
        OwnOf(rows));

    private static IReadOnlyList<DesignColumn> OwnOf(ColumnRows rows)
    {
        if (rows.Form == ColumnForm.Levels)
        {
            return Indicators(rows, rows.Column);
        }

        double[] values = [.. rows.Bakes.Select(bake => rows.Column.Number(bake)!.Value)];
        var line = new DesignColumn(rows.Column.Name, values);
        return rows.Form == ColumnForm.Line ? [line] : [line, DesignColumn.Power(rows.Column.Name + ColumnFit.SquaredSuffix, values, 2)];
    }

    // A column for every level but the first, in the levels' own order.
    private static IReadOnlyList<DesignColumn> Indicators(ColumnRows rows, ColumnCells cells)
    {
        var levels = rows.LevelsOf(cells);
        return
        [
            .. levels.Names.Skip(1).Select(name => new DesignColumn(
                $"{cells.Name} = {name}", [.. rows.Bakes.Select(bake => levels.NameOf(bake) == name ? 1.0 : 0.0)])),
        ];
    }
}
