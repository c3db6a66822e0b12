namespace BakeInsights;

/// <summary>What one column of a file holds: which known column it is and the unit its cells are in.</summary>
/// <param name="Index">The place in the row, counted from 0.</param>
/// <param name="Header">The name as the file has it.</param>
/// <param name="Column">The known column, or null for one of the journal's own.</param>
/// <param name="Unit">The unit in the name; null when it has none.</param>
internal sealed record ColumnBinding(int Index, string Header, JournalColumn? Column, MeasureUnit? Unit)
{
    /// <summary>Whether a bare number in a cell is already in the column's canonical unit.</summary>
    public bool IsCanonical { get; } = Column is QuantityColumn { Dimension: not Dimension.TimeOfDay } quantity
        && MeasureUnits.Canonical(quantity.Dimension) == Unit;
}
