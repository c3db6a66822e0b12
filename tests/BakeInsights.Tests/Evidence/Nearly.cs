using Xunit;

namespace BakeInsights.Tests;

/// <summary>Comparisons of answers that differ by rounding at most.</summary>
internal static class Nearly
{
    public const double Rounding = 1e-9;

    public static void Equal(double expected, double? actual) => Assert.True(
        actual is { } value && Math.Abs(value - expected) <= Rounding * Math.Abs(expected),
        $"Expected {expected:R} to a relative {Rounding:R}, got {actual:R}.");

    /// <summary>The same terms, to rounding that is measured by each term's own size and uncertainty.</summary>
    public static void Same(ModelAnswer expected, ModelAnswer actual)
    {
        Assert.Equal(expected.Terms.Select(term => term.Name), actual.Terms.Select(term => term.Name));
        foreach (var (one, other) in expected.Terms.Zip(actual.Terms))
        {
            var size = Math.Abs(one.Coefficient.Estimate) + one.Coefficient.StandardError;
            Assert.Equal(one.Coefficient.Estimate, other.Coefficient.Estimate, Rounding * size);
            Assert.Equal(one.Coefficient.StandardError, other.Coefficient.StandardError, Rounding * size);
        }
    }
}
