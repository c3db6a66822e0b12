namespace BakeInsights.Inference;

/// <summary>A named column of a <see cref="Design"/>: one number a row.</summary>
public sealed class DesignColumn
{
    private readonly double[] _values;

    /// <summary>Makes a column. The values are copied.</summary>
    /// <param name="name">The name, which problems and terms use.</param>
    /// <param name="values">The values by row. A NaN or an infinity is taken, and refused by the fit.</param>
    /// <exception cref="ArgumentException">The name is blank or there are no values.</exception>
    public DesignColumn(string name, IReadOnlyList<double> values)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            throw new ArgumentException($"Column {name} has no rows.", nameof(values));
        }

        Name = name;
        _values = [.. values];
        Values = Array.AsReadOnly(_values);
    }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The values by row.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>Whether every row holds the same number, other than zero: then the column is an intercept.</summary>
    public bool IsConstant => _values[0] != 0 && !Span.ContainsAnyExcept(_values[0]);

    /// <summary>The values for reading in a tight loop.</summary>
    internal ReadOnlySpan<double> Span => _values;

    /// <summary>The column of ones, whose coefficient is the intercept.</summary>
    /// <param name="rows">The number of rows.</param>
    public static DesignColumn Constant(int rows)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rows);
        return new DesignColumn("constant", Enumerable.Repeat(1.0, rows).ToArray());
    }
}
