using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The way from a model's scale back to the result's unit.</summary>
/// <param name="IsLogarithmic">Whether the model speaks of the natural logarithm.</param>
internal readonly record struct ResultScale(bool IsLogarithmic)
{
    /// <summary>A value in the result's unit.</summary>
    public double Back(double value) => IsLogarithmic ? Math.Exp(value) : value;

    /// <summary>An interval in the result's unit.</summary>
    public Interval Back(Interval interval) => new(Back(interval.Low), Back(interval.High));

    /// <summary>A difference in the result's unit, counted from a value in that unit.</summary>
    public Estimate Difference(double estimate, Interval interval, double from) => IsLogarithmic
        ? Scaled(estimate, interval, from)
        : new Estimate(estimate, interval.Low, interval.High);

    /// <summary>A difference in percent; null where the model doesn't speak in percent.</summary>
    public Estimate? Percent(double estimate, Interval interval) => IsLogarithmic ? Scaled(estimate, interval, 100) : null;

    private static Estimate Scaled(double estimate, Interval interval, double by) =>
        new(by * double.ExpM1(estimate), by * double.ExpM1(interval.Low), by * double.ExpM1(interval.High));
}
