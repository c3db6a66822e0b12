using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The scale that a model speaks on, and the way from there back to the result's unit.</summary>
/// <param name="IsLogarithmic">Whether the model speaks of the natural logarithm.</param>
internal readonly record struct ResultScale(bool IsLogarithmic)
{
    /// <summary>The result itself.</summary>
    public static ResultScale Plain => new(false);

    /// <summary>The result's natural logarithm, on which each cause is a percentage.</summary>
    public static ResultScale Logarithm => new(true);

    /// <summary>A result on the scale.</summary>
    public double Of(double value) => IsLogarithmic ? Math.Log(value) : value;

    /// <summary>A value in the result's unit.</summary>
    public double Back(double value) => IsLogarithmic ? Math.Exp(value) : value;

    /// <summary>An interval in the result's unit.</summary>
    public Interval Back(Interval interval) => new(Back(interval.Low), Back(interval.High));

    /// <summary>A difference in the result's unit, counted from a value in that unit.</summary>
    public Estimate Difference(Estimate change, double from) =>
        IsLogarithmic ? change.Through(logarithm => from * double.ExpM1(logarithm)) : change;

    /// <summary>A difference in percent; null where the model doesn't speak in percent.</summary>
    public Estimate? Percent(Estimate change) => IsLogarithmic ? change.Through(PercentOf) : null;

    /// <summary>The percentage that a difference of logarithms is.</summary>
    public static double PercentOf(double logarithm) => 100 * double.ExpM1(logarithm);
}
