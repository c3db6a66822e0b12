namespace BakeInsights;

/// <summary>How a result may go with a column.</summary>
public enum ColumnForm
{
    /// <summary>Each text or number of the column has a mean of its own.</summary>
    Levels,

    /// <summary>A straight line in the column's number.</summary>
    Line,

    /// <summary>A line with a bend, so that there can be a best number.</summary>
    Curve,
}
