namespace BakeInsights.Inference;

/// <summary>The confidence set of a ratio of two estimates, by Fieller's theorem.</summary>
/// <remarks>
/// The set holds each ratio r for which (numerator - r denominator) can't be told from zero by Student's t. Its
/// coverage is exact for normal errors, and it is unbounded where the data can't exclude a denominator of zero.
/// Fieller (1954), Some problems in interval estimation, Journal of the Royal Statistical Society B 16, 175-185.
/// </remarks>
public sealed record RatioInterval
{
    /// <summary>What a covariance may exceed its bound by, relatively. Common practice, no source.</summary>
    private const double RoundingAllowance = 1e-9;

    private RatioInterval(double? estimate, RatioSetKind kind, double? low, double? high, Interval? gap) =>
        (Estimate, Kind, Low, High, Gap) = (estimate, kind, low, high, gap);

    /// <summary>The ratio of the estimates; null if the denominator's is zero.</summary>
    public double? Estimate { get; }

    /// <summary>The shape of the set.</summary>
    public RatioSetKind Kind { get; }

    /// <summary>The lowest ratio of the set; null if there is none.</summary>
    public double? Low { get; }

    /// <summary>The highest ratio of the set; null if there is none.</summary>
    public double? High { get; }

    /// <summary>The values between two rays, which the set leaves out; null unless there are two rays.</summary>
    public Interval? Gap { get; }

    /// <summary>Whether the set holds a ratio.</summary>
    public bool Contains(double ratio) =>
        !(ratio < Low || ratio > High) && !(Gap is { } gap && gap.Low < ratio && ratio < gap.High);

    /// <summary>Finds the set.</summary>
    /// <param name="numerator">The estimate above the line.</param>
    /// <param name="denominator">The estimate below the line.</param>
    /// <param name="covariance">The covariance of the two.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">
    /// The terms differ in degrees of freedom, the covariance exceeds what the standard errors allow, the denominator
    /// is exactly zero without error, or the level is not between 0 and 1.
    /// </exception>
    public static RatioInterval Fieller(Term numerator, Term denominator, double covariance, double level)
    {
        ArgumentNullException.ThrowIfNull(numerator);
        ArgumentNullException.ThrowIfNull(denominator);
        Refuse(numerator, denominator, covariance);

        var (a, b) = (numerator.Estimate, denominator.Estimate);
        var (va, vb) = (Square(numerator.StandardError), Square(denominator.StandardError));
        var t2 = Square(Tails.StudentQuantile(level, numerator.DegreesOfFreedom));

        // The set is where p r^2 - 2 q r + s <= 0. The discriminant q^2 - p s is written in the form in which small
        // variances don't cancel; where p > 0 it can't be negative, for the ratio itself is in the set.
        var p = Square(b) - (t2 * vb);
        var q = (a * b) - (t2 * covariance);
        var s = Square(a) - (t2 * va);
        var spread = (Square(b) * va) - (2 * a * b * covariance) + (Square(a) * vb);
        var discriminant = t2 * (spread - (t2 * ((va * vb) - Square(covariance))));
        double? estimate = b == 0 ? null : a / b;

        if ((p < 0 && discriminant <= 0) || (p == 0 && q == 0))
        {
            return new RatioInterval(estimate, RatioSetKind.WholeLine, null, null, null);
        }

        if (p == 0)
        {
            var end = s / (2 * q);
            return q > 0
                ? new RatioInterval(estimate, RatioSetKind.OneRay, end, null, null)
                : new RatioInterval(estimate, RatioSetKind.OneRay, null, end, null);
        }

        var ends = Roots(p, q, s, Math.Sqrt(Math.Max(discriminant, 0)));
        return p > 0
            ? new RatioInterval(estimate, RatioSetKind.Bounded, ends.Low, ends.High, null)
            : new RatioInterval(estimate, RatioSetKind.TwoRays, null, null, ends);
    }

    /// <summary>The set of the ratio with a fixed number added.</summary>
    internal RatioInterval Shifted(double by) => new(
        Estimate + by, Kind, Low + by, High + by,
        Gap is { } gap ? new Interval(gap.Low + by, gap.High + by) : null);

    private static void Refuse(Term numerator, Term denominator, double covariance)
    {
        if (numerator.DegreesOfFreedom != denominator.DegreesOfFreedom)
        {
            throw new ArgumentException("Numerator and denominator differ in degrees of freedom.", nameof(denominator));
        }

        if (denominator is { Estimate: 0, StandardError: 0 })
        {
            throw new ArgumentException("The denominator is exactly zero, so there is no ratio.", nameof(denominator));
        }

        var most = numerator.StandardError * denominator.StandardError;
        if (!(Math.Abs(covariance) <= most * (1 + RoundingAllowance)))
        {
            throw new ArgumentException(
                "The covariance exceeds the product of the standard errors.", nameof(covariance));
        }
    }

    /// <summary>The roots of p r^2 - 2 q r + s, without cancellation.</summary>
    private static Interval Roots(double p, double q, double s, double root)
    {
        var sum = q + Math.CopySign(root, q);
        var (first, second) = sum == 0 ? (0, 0) : (sum / p, s / sum);
        return new Interval(Math.Min(first, second), Math.Max(first, second));
    }

    private static double Square(double x) => x * x;
}
