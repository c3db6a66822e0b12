namespace BakeInsights.Inference;

/// <summary>A named column of a <see cref="Design"/>: one number a row.</summary>
public sealed class DesignColumn
{
    private readonly double[] _values;
    private readonly double[] _low;

    /// <summary>Makes a column. The values are copied.</summary>
    /// <param name="name">The name, which problems and terms use.</param>
    /// <param name="values">The values by row. A NaN or an infinity is taken, and refused by the fit.</param>
    /// <exception cref="ArgumentException">The name is blank or there are no values.</exception>
    public DesignColumn(string name, IReadOnlyList<double> values)
        : this(name, values, [])
    {
    }

    private DesignColumn(string name, IReadOnlyList<double> values, double[] low)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            throw new ArgumentException($"Column {name} has no rows.", nameof(values));
        }

        Name = name;
        _values = [.. values];
        _low = low;
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

    /// <summary>What rounding took off the values of a power, by row; empty for a column of plain numbers.</summary>
    internal ReadOnlySpan<double> LowSpan => _low;

    /// <summary>The column of a whole power of a predictor, formed and kept in doubled precision.</summary>
    /// <remarks>
    /// High powers nearly depend on the lower ones, and a power that is rounded to a double loses what tells them apart.
    /// </remarks>
    /// <param name="name">The name of the column.</param>
    /// <param name="values">The predictor by row.</param>
    /// <param name="degree">The power, 1 or more.</param>
    /// <exception cref="ArgumentException">The name is blank, there are no values, or the degree is below 1.</exception>
    public static DesignColumn Power(string name, IReadOnlyList<double> values, int degree)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentOutOfRangeException.ThrowIfLessThan(degree, 1);
        Doubled[] powers = [.. values.Select(x => (Doubled)x)];
        for (var k = 1; k < degree; k++)
        {
            for (var i = 0; i < powers.Length; i++)
            {
                powers[i] *= values[i];
            }
        }

        // An infinite power has no low part; it stays as it is, for the fit to refuse.
        return new DesignColumn(
            name,
            Array.ConvertAll(powers, power => double.IsFinite(power.Low) ? power.High : double.PositiveInfinity),
            Array.ConvertAll(powers, power => power.Low));
    }

    /// <summary>The column of ones, whose coefficient is the intercept.</summary>
    /// <param name="rows">The number of rows.</param>
    public static DesignColumn Constant(int rows)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rows);
        return new DesignColumn("constant", Enumerable.Repeat(1.0, rows).ToArray());
    }
}
