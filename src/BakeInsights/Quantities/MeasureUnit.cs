namespace BakeInsights;

/// <summary>A unit that a journal may be written in.</summary>
public sealed class MeasureUnit
{
    private readonly Func<double, double> _toCanonical;

    internal MeasureUnit(
        string symbol, string headerSuffix, Dimension dimension, Func<double, double> toCanonical, params string[] spellings)
    {
        Symbol = symbol;
        HeaderSuffix = headerSuffix;
        Dimension = dimension;
        Spellings = [symbol, headerSuffix, .. spellings];
        _toCanonical = toCanonical;
    }

    /// <summary>How the unit is printed: "°F", "lb".</summary>
    public string Symbol { get; }

    /// <summary>How a column name ends when its cells are in this unit: <c>dough_temp_f</c>.</summary>
    public string HeaderSuffix { get; }

    /// <summary>What the unit measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>Every text that stands for the unit behind a number in a cell; letter case does not matter.</summary>
    public IReadOnlyList<string> Spellings { get; }

    /// <summary>The value in the canonical unit of <see cref="Dimension"/>.</summary>
    public double ToCanonical(double value) => _toCanonical(value);
}
