namespace BakeInsights;

/// <summary>What an answer compares: a dough like the typical one against one that differs in one thing.</summary>
/// <param name="Cause">The measure that differs; null where groups or months are compared.</param>
/// <param name="Change">By how much, in the measure's canonical unit, or by which factor; 0 without a measure.</param>
/// <param name="IsFactor">Whether the change is a factor (1.25 is a quarter more) rather than a difference.</param>
/// <param name="Words">What is compared where there is no measure, such as "bench 2 against the mean of all".</param>
public sealed record Contrast(Measure? Cause, double Change, bool IsFactor, string Words)
{
    /// <summary>More of a measure, the rest held still.</summary>
    public static Contrast More(Measure cause, double change) => new(cause, change, false, "");

    /// <summary>A measure times a factor, the rest held still.</summary>
    public static Contrast Times(Measure cause, double factor) => new(cause, factor, true, "");

    /// <summary>Two groups of bakes.</summary>
    public static Contrast Between(string words) => new(null, 0, false, words);
}
