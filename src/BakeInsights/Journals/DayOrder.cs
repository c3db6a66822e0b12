namespace BakeInsights;

/// <summary>Whether the day or the month comes first where the year comes last, as a file's days show it.</summary>
internal enum DayOrder
{
    /// <summary>No day of the file shows it.</summary>
    NotShown,

    /// <summary>31/10/2026.</summary>
    DayFirst,

    /// <summary>10/31/2026.</summary>
    MonthFirst,

    /// <summary>Some days can only be one and some only the other.</summary>
    Both,
}
