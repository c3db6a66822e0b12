using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A number with the interval that holds the true one with the confidence of <see cref="ModelAnswer.Level"/>.</summary>
/// <param name="Value">The estimate.</param>
/// <param name="Low">The interval's lower end; null when it has none.</param>
/// <param name="High">The interval's upper end; null when it has none.</param>
public sealed record Estimate(double Value, double? Low, double? High)
{
    /// <summary>A term of a fit.</summary>
    internal static Estimate Of(Term term)
    {
        var interval = term.Interval(ModelAnswer.Level);
        return new(term.Estimate, interval.Low, interval.High);
    }

    /// <summary>What is believed of a number.</summary>
    internal static Estimate Of(Belief belief)
    {
        var interval = belief.Interval(ModelAnswer.Level);
        return new(belief.Mean, interval.Low, interval.High);
    }

    /// <summary>
    /// Something that rises with the number, such as its exponential: then the ends of the interval give the ends of
    /// its own, and an open end stays open.
    /// </summary>
    internal Estimate Through(Func<double, double> rising) =>
        new(rising(Value), Low is { } low ? rising(low) : null, High is { } high ? rising(high) : null);
}
