namespace BakeInsights;

/// <summary>What kind of thing a number measures. Each dimension has one canonical unit that all values are kept in.</summary>
public enum Dimension
{
    /// <summary>A number without a unit, such as a count or a score.</summary>
    Number,

    /// <summary>Grams.</summary>
    Mass,

    /// <summary>Millilitres.</summary>
    Volume,

    /// <summary>Degrees Celsius on the scale, not a difference.</summary>
    Temperature,

    /// <summary>Minutes.</summary>
    Duration,

    /// <summary>Minutes after midnight.</summary>
    TimeOfDay,

    /// <summary>Parts in a hundred. Baker's percent when the name says "of flour".</summary>
    Percent,

    /// <summary>Millilitres of loaf for each gram of loaf.</summary>
    SpecificVolume,

    /// <summary>Millimetres.</summary>
    Length,
}
