namespace BakeInsights;

/// <summary>The settings that a kitchen can tell apart, as candidates for the next bakes.</summary>
/// <param name="Measure">The setting.</param>
/// <param name="Limits">Between which values.</param>
/// <param name="Step">The step, in the canonical unit.</param>
/// <param name="Start">A value that is a round one.</param>
internal sealed record KitchenSteps(Measure Measure, SettingLimits Limits, double Step, double Start)
{
    /// <summary>What a baker sets: dough temperature, hydration, yeast.</summary>
    public static IReadOnlyList<Measure> Settings { get; } = [Measures.DoughTemperature, Measures.Hydration, Measures.Yeast];

    // A thermometer is read to half a degree, or to one of the smaller; flour and water to a percent; yeast to a tenth of
    // one (1 g in a kilogram of flour). Common practice, no source.
    private const double StepC = 0.5;
    private const double StepPoints = 1;
    private const double StepYeast = 0.1;

    // Ends that were worked out from grams, or turned from °F, come with rounding.
    private const double Rounding = 1e-6;

    public static KitchenSteps Of(Measure measure, SettingLimits limits, UnitSystem units) =>
        measure == Measures.Hydration ? new(measure, limits, StepPoints, 0)
        : measure == Measures.Yeast ? new(measure, limits, StepYeast, 0)
        : units == UnitSystem.Us ? new(measure, limits, TemperatureDifference.FromF(1).C, Temperature.FromF(32).C)
        : new(measure, limits, StepC, 0);

    /// <summary>The round values within the limits, no more than so many, the ends kept; the middle where there is none.</summary>
    public IReadOnlyList<double> Values(int most)
    {
        var first = (int)Math.Ceiling(((Limits.Low - Start) / Step) - Rounding);
        var last = (int)Math.Floor(((Limits.High - Start) / Step) + Rounding);
        var count = last - first + 1;
        return count < 1
            ? [Nearest((Limits.Low + Limits.High) / 2)]
            : [.. Places(count, most).Select(place => At(first + place))];
    }

    /// <summary>The round value nearest to one.</summary>
    public double Nearest(double value) => At((int)Math.Round((value - Start) / Step, MidpointRounding.AwayFromZero));

    // 0.1 has no double, and 13 of them are not 1.3; what is printed should be what was meant.
    private double At(int steps) => Math.Round(Start + (steps * Step), 9);

    private static IEnumerable<int> Places(int count, int most) => count <= most
        ? Enumerable.Range(0, count)
        : Enumerable.Range(0, most).Select(i => (int)Math.Round(i * (count - 1.0) / (most - 1), MidpointRounding.AwayFromZero)).Distinct();
}
