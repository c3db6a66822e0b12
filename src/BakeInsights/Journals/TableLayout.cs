namespace BakeInsights;

/// <summary>The columns of one kind of file, each at its place in the arrays that hold a row.</summary>
internal sealed class TableLayout
{
    private TableLayout(
        string name, IReadOnlyList<JournalColumn> columns, IReadOnlyList<JournalColumn> required, IReadOnlyList<JournalColumn> key)
    {
        Key = key;
        Name = name;
        Columns = columns;
        Required = required;
        QuantityCount = columns.OfType<QuantityColumn>().Count();
        ChoiceCount = columns.OfType<ChoiceColumn>().Count();
        TextCount = columns.OfType<TextColumn>().Count();
    }

    /// <summary>What the rows of the file are.</summary>
    public string Name { get; }

    /// <summary>All columns, in canonical order.</summary>
    public IReadOnlyList<JournalColumn> Columns { get; }

    /// <summary>The columns that a row can't do without.</summary>
    public IReadOnlyList<JournalColumn> Required { get; }

    /// <summary>The columns that together are never the same in two rows; none where rows may be alike.</summary>
    public IReadOnlyList<JournalColumn> Key { get; }

    public int QuantityCount { get; }

    public int ChoiceCount { get; }

    public int TextCount { get; }

    /// <summary>Collects columns and gives each its place.</summary>
    public sealed class Builder(string name)
    {
        private readonly List<JournalColumn> _columns = [];

        public QuantityColumn Quantity(string stem, Dimension dimension, string meaning, double low, double high) =>
            Add(new QuantityColumn(PlaceOf<QuantityColumn>(), stem, dimension, meaning, low, high));

        /// <summary>A quantity whose name says the unit without ending in it: "minutes".</summary>
        public QuantityColumn NamedForUnit(string columnName, Dimension dimension, string meaning, double low, double high) =>
            Add(new QuantityColumn(PlaceOf<QuantityColumn>(), columnName, dimension, meaning, low, high, isNamedForUnit: true));

        public ChoiceColumn Choice(string columnName, string meaning, params string[] words) =>
            Add(new ChoiceColumn(PlaceOf<ChoiceColumn>(), columnName, meaning, words));

        public TextColumn Text(string columnName, string meaning) =>
            Add(new TextColumn(PlaceOf<TextColumn>(), columnName, meaning));

        public DayColumn Day(string columnName, string meaning) => Add(new DayColumn(columnName, meaning));

        public TableLayout Finish(IReadOnlyList<JournalColumn> required, IReadOnlyList<JournalColumn>? key = null) =>
            new(name, _columns, required, key ?? []);

        private int PlaceOf<TColumn>() => _columns.OfType<TColumn>().Count();

        private TColumn Add<TColumn>(TColumn column)
            where TColumn : JournalColumn
        {
            _columns.Add(column);
            return column;
        }
    }
}
