namespace BakeInsights;

/// <summary>Keeps the bakes of a journal for as long as it may be one that is kept whole.</summary>
internal sealed class KeptRows
{
    private List<RowValues>? _rows = [];

    /// <summary>All rows so far, or null once there were too many.</summary>
    public IReadOnlyList<RowValues>? All => _rows;

    /// <summary>
    /// Keeps a copy of a row. The row that is one too many is counted in, and then all are given to
    /// <paramref name="letGo"/> and forgotten.
    /// </summary>
    public void Add(RowValues row, Action<IReadOnlyList<RowValues>>? letGo = null)
    {
        if (_rows is null)
        {
            return;
        }

        _rows.Add(row.Copy());
        if (_rows.Count > JournalReader.KeptBakes)
        {
            letGo?.Invoke(_rows);
            _rows = null;
            GiveBack();
        }
    }

    // The rest of a long journal makes no garbage, so that the collector would never come by itself, and the process
    // would hold on to the memory of all these bakes to its end.
    private static void GiveBack() => GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
}
