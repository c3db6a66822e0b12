namespace BakeInsights.Inference;

/// <summary>What is believed of a quantity: a distribution, by its mean, spread and central intervals.</summary>
public sealed class Belief
{
    private readonly Func<double, Interval> _interval;

    private Belief(double mean, double? standardDeviation, Func<double, Interval> interval) =>
        (Mean, StandardDeviation, _interval) = (mean, standardDeviation, interval);

    /// <summary>The mean.</summary>
    public double Mean { get; }

    /// <summary>
    /// The standard deviation; null where it is infinite, as that of data with two degrees of freedom.
    /// </summary>
    public double? StandardDeviation { get; }

    /// <summary>
    /// The interval that holds the quantity with this probability, and leaves as much to either side.
    /// </summary>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval Interval(double level) => _interval(level);

    /// <summary>A normal distribution.</summary>
    internal static Belief Normal(double mean, double deviation) => new(
        mean, deviation, new Term("", mean, deviation, double.PositiveInfinity).Interval);

    /// <summary>Student's distribution about an estimate.</summary>
    internal static Belief Student(Term term) => new(
        term.Estimate,
        term.DegreesOfFreedom > 2
            ? term.StandardError * Math.Sqrt(term.DegreesOfFreedom / (term.DegreesOfFreedom - 2))
            : null,
        term.Interval);

    /// <summary>A mixture of normal distributions.</summary>
    /// <param name="parts">The parts, their weights summing to 1.</param>
    internal static Belief Mixture(IReadOnlyList<NormalPart> parts)
    {
        var mean = parts.Sum(part => part.Weight * part.Mean);
        var variance = parts.Sum(part =>
            part.Weight * ((part.Deviation * part.Deviation) + ((part.Mean - mean) * (part.Mean - mean))));
        return new Belief(mean, Math.Sqrt(variance), level => MixtureQuantiles.Central(parts, level));
    }
}

/// <summary>A part of a mixture of normal distributions.</summary>
internal readonly record struct NormalPart(double Weight, double Mean, double Deviation);
