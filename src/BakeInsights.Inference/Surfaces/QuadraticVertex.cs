namespace BakeInsights.Inference;

/// <summary>Where a fitted parabola in one variable turns, with the confidence set of the place.</summary>
/// <remarks>
/// In x the fit is b1 x + b2 x^2 and what doesn't hold x; other columns that hold x, such as x times z, shift the
/// slope by a fixed amount when z is held. The vertex is minus that slope at 0 over 2 b2, a ratio of estimates.
/// </remarks>
/// <param name="Kind">Whether the estimate is a maximum or a minimum; only a bounded set makes it certain.</param>
/// <param name="Location">The place of the vertex, in the unit of x, with its confidence set.</param>
public sealed record QuadraticVertex(VertexKind Kind, RatioInterval Location)
{
    /// <summary>Finds the vertex.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="linear">The name of the column x.</param>
    /// <param name="square">The name of the column x squared.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <param name="held">
    /// For each further column that is x times something held fixed: its name, and the value of that something.
    /// </param>
    /// <returns>The vertex, or the problem that the second-order coefficient is exactly zero.</returns>
    /// <exception cref="ArgumentException">
    /// A name is unknown, <paramref name="held"/> names x or its square, or the level is not between 0 and 1.
    /// </exception>
    public static Attempt<QuadraticVertex> Of(
        ILinearFit fit,
        string linear,
        string square,
        double level,
        IReadOnlyDictionary<string, double>? held = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var slope = new double[fit.Terms.Count];
        var bend = new double[fit.Terms.Count];
        slope[PlaceOf(fit, linear)] = -1;
        bend[PlaceOf(fit, square)] = 2;
        foreach (var (name, value) in held ?? new Dictionary<string, double>())
        {
            if (name == linear || name == square)
            {
                throw new ArgumentException($"Column {name} can't be held, for it holds x alone.", nameof(held));
            }

            slope[PlaceOf(fit, name)] = -value;
        }

        var denominator = fit.Combination(bend);
        if (denominator.Estimate == 0)
        {
            return new FitProblem(
                FitProblemKind.NoCurvature,
                [square],
                $"The coefficient of {square} is exactly zero, so the curve has no vertex.",
                $"Describe {linear} by a straight line.");
        }

        var location = RatioInterval.Fieller(
            fit.Combination(slope), denominator, fit.Covariance(slope, bend), level);
        return new QuadraticVertex(denominator.Estimate < 0 ? VertexKind.Maximum : VertexKind.Minimum, location);
    }

    private static int PlaceOf(ILinearFit fit, string name)
    {
        var names = fit.Terms.Select(term => term.Name).ToList();
        return names.IndexOf(name) is var place and >= 0
            ? place
            : throw new ArgumentException($"No column is named {name}; there are {string.Join(", ", names)}.", nameof(name));
    }
}
