using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Comparisons of numbers.</summary>
internal static class Close
{
    /// <summary>The correct digits of a value: minus the decimal logarithm of its relative error, 0 to 15.</summary>
    /// <remarks>
    /// McCullough (1998), Assessing the reliability of statistical software, The American Statistician 52, 358-366;
    /// of the absolute error where the true value is zero. The certified values have 15 digits.
    /// </remarks>
    public static double Digits(double actual, double certified)
    {
        var error = Math.Abs(actual - certified) / (certified == 0 ? 1 : Math.Abs(certified));
        return error == 0 ? 15 : Math.Clamp(-Math.Log10(error), 0, 15);
    }

    public static void Relative(double expected, double? actual, double tolerance) =>
        Assert.True(
            actual is { } value && Math.Abs(value - expected) <= tolerance * Math.Abs(expected),
            $"Expected {expected:R} to a relative {tolerance:R}, got {actual:R}.");

    public static void Absolute(double expected, double? actual, double tolerance) =>
        Assert.True(
            actual is { } value && Math.Abs(value - expected) <= tolerance,
            $"Expected {expected:R} to {tolerance:R}, got {actual:R}.");
}
