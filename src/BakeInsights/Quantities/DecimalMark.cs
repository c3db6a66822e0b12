namespace BakeInsights;

/// <summary>The sign between the whole and the parts of a number, as a file's other numbers show it.</summary>
public enum DecimalMark
{
    /// <summary>No number of the file shows it; a single point is taken as one, a comma only where it can be nothing else.</summary>
    NotShown,

    /// <summary>A point: "24.5". A comma groups thousands.</summary>
    Point,

    /// <summary>A comma: "24,5". A point groups thousands.</summary>
    Comma,

    /// <summary>Some numbers show a point and some a comma; only those that can be read in one way are read.</summary>
    Both,
}
