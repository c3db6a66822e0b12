namespace BakeInsights;

/// <summary>Which columns have anything in them, over many rows.</summary>
internal sealed class UsedColumns
{
    private readonly bool[] _quantities = new bool[BakeColumns.Layout.QuantityCount];
    private readonly bool[] _choices = new bool[BakeColumns.Layout.ChoiceCount];
    private readonly bool[] _texts = new bool[BakeColumns.Layout.TextCount];
    private readonly SortedSet<string> _own = new(StringComparer.Ordinal);

    /// <summary>The known columns in use, in canonical order; the name and the day always are.</summary>
    public IEnumerable<JournalColumn> Known => BakeColumns.All.Where(column => column switch
    {
        QuantityColumn quantity => _quantities[quantity.Index],
        ChoiceColumn choice => _choices[choice.Index],
        TextColumn text => text == BakeColumns.Id || _texts[text.Index],
        _ => true,
    });

    /// <summary>The journal's own columns in use.</summary>
    public IEnumerable<string> Own => _own;

    /// <summary>Takes a row into account.</summary>
    public void Add(RowValues row)
    {
        for (var i = 0; i < _quantities.Length; i++)
        {
            _quantities[i] |= !double.IsNaN(row.Quantities[i]);
        }

        for (var i = 0; i < _choices.Length; i++)
        {
            _choices[i] |= row.Choices[i] >= 0;
        }

        for (var i = 0; i < _texts.Length; i++)
        {
            _texts[i] |= row.Texts[i] is not null;
        }

        _own.UnionWith(row.OwnColumns.Keys);
    }
}
