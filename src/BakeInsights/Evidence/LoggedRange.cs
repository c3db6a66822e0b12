using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Which values of a cause the bakes had.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Least">The smallest.</param>
/// <param name="Middle">The median.</param>
/// <param name="Most">The largest.</param>
internal sealed record LoggedRange(DoughCause Cause, double Least, double Middle, double Most)
{
    // A temperature that was written in °F comes back with the rounding of its conversion.
    private const double Rounding = 1e-9;

    public static LoggedRange Of(DoughCause cause, double[] values) =>
        new(cause, values.Min(), Quantiles.Median(values), values.Max());

    /// <summary>The sentence that a value outside is warned with; null if it lies inside.</summary>
    public string? Warning(double value, UnitSystem system)
    {
        if (value >= Least - Rounding && value <= Most + Rounding)
        {
            return null;
        }

        var seen = Least == Most ? Text(Least, system) : $"{Text(Least, system)} to {Text(Most, system)}";
        return $"{Cause.Title} of {Text(value, system)} is outside what the journal's bakes had ({seen}); that the line goes on there is an assumption.";
    }

    private string Text(double value, UnitSystem system) => Cause == DoughCause.Mixing
        ? FormattableString.Invariant($"{value:0.#} min")
        : Temperature.FromC(value).Text(system);
}
