namespace BakeInsights;

/// <summary>The columns of one kind of file, each at its place in the arrays that hold a row.</summary>
internal sealed class TableLayout
{
    private TableLayout(string name, IReadOnlyList<JournalColumn> columns, IReadOnlyList<JournalColumn> required)
    {
        Name = name;
        Columns = columns;
        Required = required;
        QuantityCount = columns.OfType<QuantityColumn>().Count();
        ChoiceCount = columns.OfType<ChoiceColumn>().Count();
        TextCount = columns.OfType<TextColumn>().Count();
    }

    /// <summary>What the kind of file is called.</summary>
    public string Name { get; }

    /// <summary>All columns, in canonical order.</summary>
    public IReadOnlyList<JournalColumn> Columns { get; }

    /// <summary>The columns that a row can't do without.</summary>
    public IReadOnlyList<JournalColumn> Required { get; }

    public int QuantityCount { get; }

    public int ChoiceCount { get; }

    public int TextCount { get; }

    /// <summary>Collects columns and gives each its place.</summary>
    public sealed class Builder(string name)
    {
        private readonly List<JournalColumn> _columns = [];

        public QuantityColumn Quantity(string stem, Dimension dimension, string meaning, double low, double high) =>
            Add(new QuantityColumn(PlaceOf<QuantityColumn>(), stem, dimension, meaning, low, high));

        public ChoiceColumn Choice(string columnName, string meaning, params string[] words) =>
            Add(new ChoiceColumn(PlaceOf<ChoiceColumn>(), columnName, meaning, words));

        public TextColumn Text(string columnName, string meaning) =>
            Add(new TextColumn(PlaceOf<TextColumn>(), columnName, meaning));

        public DayColumn Day(string columnName, string meaning) => Add(new DayColumn(columnName, meaning));

        public TableLayout Finish(IReadOnlyList<JournalColumn> required) => new(name, _columns, required);

        private int PlaceOf<TColumn>() => _columns.OfType<TColumn>().Count();

        private TColumn Add<TColumn>(TColumn column)
            where TColumn : JournalColumn
        {
            _columns.Add(column);
            return column;
        }
    }
}
