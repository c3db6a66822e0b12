namespace BakeInsights.Inference;

/// <summary>The right-hand side of a linear model: named columns of equal length, in a fixed order.</summary>
/// <remarks>
/// The order matters in one way: of columns that depend on each other, the last is called the dependent one.
/// </remarks>
public sealed class Design
{
    /// <summary>Makes a design.</summary>
    /// <exception cref="ArgumentException">There is no column, two share a name, or lengths differ.</exception>
    public Design(IEnumerable<DesignColumn> columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        Columns = Array.AsReadOnly(columns.ToArray());
        if (Columns.Count == 0)
        {
            throw new ArgumentException("A design needs at least one column.", nameof(columns));
        }

        Names = Array.AsReadOnly(Columns.Select(column => column.Name).ToArray());
        RowCount = Columns[0].Values.Count;
        if (Names.GroupBy(name => name).FirstOrDefault(sameName => sameName.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two columns are named {twice.Key}.", nameof(columns));
        }

        if (Columns.FirstOrDefault(column => column.Values.Count != RowCount) is { } odd)
        {
            throw new ArgumentException(
                $"Column {odd.Name} has {odd.Values.Count} rows and column {Names[0]} has {RowCount}.",
                nameof(columns));
        }
    }

    /// <summary>Makes a design.</summary>
    /// <exception cref="ArgumentException">There is no column, two share a name, or lengths differ.</exception>
    public Design(params DesignColumn[] columns)
        : this((IEnumerable<DesignColumn>)columns)
    {
    }

    /// <summary>The columns in order.</summary>
    public IReadOnlyList<DesignColumn> Columns { get; }

    /// <summary>The names of the columns in order.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The number of rows.</summary>
    public int RowCount { get; }

    /// <summary>Whether a column is constant, so that the fitted values can follow the mean.</summary>
    public bool HasConstant => Columns.Any(column => column.IsConstant);

    /// <summary>The place of a column, from 0.</summary>
    /// <exception cref="ArgumentException">No column has the name.</exception>
    public int IndexOf(string name)
    {
        for (var j = 0; j < Names.Count; j++)
        {
            if (Names[j] == name)
            {
                return j;
            }
        }

        throw new ArgumentException($"No column is named {name}; there are {string.Join(", ", Names)}.", nameof(name));
    }

    /// <summary>The values of all columns in one row, counted from 0.</summary>
    public IReadOnlyList<double> Row(int row) => Columns.Select(column => column.Values[row]).ToArray();

    /// <summary>The design of the named columns, in the order named.</summary>
    /// <exception cref="ArgumentException">A name is unknown or given twice, or there is none.</exception>
    public Design Select(params string[] names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return new Design(names.Select(name => Columns[IndexOf(name)]));
    }

    /// <summary>The design that lacks the named columns.</summary>
    /// <exception cref="ArgumentException">A name is unknown, or no column is left.</exception>
    public Design Without(params string[] names)
    {
        ArgumentNullException.ThrowIfNull(names);
        var left = names.Select(IndexOf).ToHashSet();
        return new Design(Columns.Where((_, j) => !left.Contains(j)));
    }
}
