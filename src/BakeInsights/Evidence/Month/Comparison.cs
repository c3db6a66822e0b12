using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What is compared between two months.</summary>
/// <param name="Name">The question's name, without its first part.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Question">The question.</param>
/// <param name="Exclusions">The bakes that can't speak to it.</param>
/// <param name="ValueOf">The value of a bake that can.</param>
/// <param name="IsLogarithm">Whether that is the natural logarithm of the measure.</param>
internal sealed record Comparison(
    string Name,
    Measure Measure,
    string Question,
    IReadOnlyList<Exclusion> Exclusions,
    Func<Bake, double> ValueOf,
    bool IsLogarithm)
{
    /// <summary>A difference in the measure's unit, and in percent where logarithms were compared.</summary>
    public (Estimate Effect, Estimate? Percent) InUnits(Term difference, IReadOnlyList<Bake> before)
    {
        var interval = difference.Interval(ModelAnswer.Level);
        return IsLogarithm
            ? OfLogarithms(difference, Math.Exp(before.Average(ValueOf)))
            : (new Estimate(difference.Estimate, interval.Low, interval.High), null);
    }

    /// <summary>A difference of logarithms as one of the measure from a base, and in percent of it.</summary>
    public static (Estimate Effect, Estimate Percent) OfLogarithms(Term difference, double from)
    {
        var interval = difference.Interval(ModelAnswer.Level);
        Estimate Times(double factor) => new(
            factor * (Math.Exp(difference.Estimate) - 1), factor * (Math.Exp(interval.Low) - 1), factor * (Math.Exp(interval.High) - 1));
        return (Times(from), Times(100));
    }
}
