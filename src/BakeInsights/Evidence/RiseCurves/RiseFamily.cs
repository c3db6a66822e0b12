using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>One of the two curves as a model of sizes: size = start x (1 + rise), all four numbers estimated.</summary>
/// <param name="Make">From ceiling, steepest rise a minute and lag to the curve.</param>
internal sealed record RiseFamily(Func<double, double, double, RiseCurve> Make)
{
    /// <summary>The places of the parameters in both models; doubling stands where the lag does.</summary>
    public const int Start = 0, Ceiling = 1, Steepest = 2, Lag = 3, Doubling = 3;

    public static RiseFamily Gompertz { get; } = new((a, mu, lag) => new GompertzRise(a, mu, lag));

    public static RiseFamily Logistic { get; } = new((a, mu, lag) => new LogisticRise(a, mu, lag));

    /// <summary>The curve by start, ceiling, steepest rise and lag.</summary>
    public NonlinearModel ByLag => new(
        ["start", "ceiling", "steepest", "lag"],
        (b, row) => IsPossible(b) ? Size(b, b[Lag], row[0]) : double.NaN);

    /// <summary>
    /// The same curve with the minute of doubling in place of the lag, so that the doubling's own interval can be
    /// profiled; only for ceilings beyond doubled.
    /// </summary>
    public NonlinearModel ByDoubling => new(
        ["start", "ceiling", "steepest", "doubling"],
        (b, row) => IsPossible(b) && Make(b[Ceiling], b[Steepest], 0).DoublingMin is { } wait
            ? Size(b, b[Doubling] - wait, row[0])
            : double.NaN);

    private static bool IsPossible(IReadOnlyList<double> b) => b[Start] > 0 && b[Ceiling] > 0 && b[Steepest] > 0;

    private double Size(IReadOnlyList<double> b, double lag, double minutes) => double.IsFinite(lag)
        ? b[Start] * (1 + Make(b[Ceiling], b[Steepest], lag).Rise(minutes))
        : double.NaN;
}
