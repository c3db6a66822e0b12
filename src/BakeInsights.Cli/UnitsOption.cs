namespace BakeInsights.Cli;

/// <summary>The words of <c>--units</c>.</summary>
internal static class UnitsOption
{
    /// <summary>°C, g, mL.</summary>
    public const string Metric = "metric";

    private const string Us = "us";

    /// <summary>The system of units of that name.</summary>
    /// <exception cref="CommandFailure">There is none.</exception>
    public static UnitSystem Read(string units) => units switch
    {
        Metric => UnitSystem.Metric,
        Us => UnitSystem.Us,
        _ => throw new CommandFailure($"There are no units {units}: say {Metric} or {Us}."),
    };
}
