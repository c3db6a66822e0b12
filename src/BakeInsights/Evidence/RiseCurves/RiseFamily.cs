using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>One of the two curves as a model of sizes: size = start x (1 + rise), all four numbers estimated.</summary>
/// <param name="Make">From ceiling, steepest rise a minute and lag to the curve.</param>
internal sealed record RiseFamily(Func<double, double, double, RiseCurve> Make)
{
    /// <summary>
    /// The places of the parameters in both models; doubling stands where the lag does. Ceiling and steepest rise go in
    /// as natural logarithms: so a search can't step to what is not above 0, and profiles end at the same values.
    /// </summary>
    public const int Start = 0, Ceiling = 1, Steepest = 2, Lag = 3, Doubling = 3;

    public static RiseFamily Gompertz { get; } = new((a, mu, lag) => new GompertzRise(a, mu, lag));

    public static RiseFamily Logistic { get; } = new((a, mu, lag) => new LogisticRise(a, mu, lag));

    /// <summary>
    /// Beyond so many starting sizes, or so many a minute, no dough goes; an interval that gets there has no end. Common
    /// practice, no source.
    /// </summary>
    private const double MostSizes = 1_000;

    /// <summary>
    /// Nor does a lag or a doubling lie so many lengths of the readings before or after them. Common practice, no source.
    /// </summary>
    private const double MostLengths = 10;

    /// <summary>The curve by start, ceiling, steepest rise and lag.</summary>
    /// <param name="minutes">The minutes of the readings, in order.</param>
    public NonlinearModel ByLag(IReadOnlyList<double> minutes) => new(
        ["start", "ln_ceiling", "ln_steepest", "lag"],
        (b, row) => IsPossible(b, minutes) ? Size(b, b[Lag], row[0]) : double.NaN);

    /// <summary>
    /// The same curve with the minute of doubling in place of the lag, so that the doubling's own interval can be
    /// profiled; only for ceilings beyond doubled.
    /// </summary>
    /// <param name="minutes">The minutes of the readings, in order.</param>
    public NonlinearModel ByDoubling(IReadOnlyList<double> minutes) => new(
        ["start", "ln_ceiling", "ln_steepest", "doubling"],
        (b, row) => IsPossible(b, minutes) && Make(Math.Exp(b[Ceiling]), Math.Exp(b[Steepest]), 0).DoublingMin is { } wait
            ? Size(b, b[Doubling] - wait, row[0])
            : double.NaN);

    private static bool IsPossible(IReadOnlyList<double> b, IReadOnlyList<double> minutes)
    {
        var reach = MostLengths * (minutes[^1] - minutes[0]);
        return b[Start] > 0
            && Math.Exp(b[Ceiling]) is > 0 and <= MostSizes
            && Math.Exp(b[Steepest]) is > 0 and <= MostSizes
            && b[Lag] >= minutes[0] - reach
            && b[Lag] <= minutes[^1] + reach;
    }

    private double Size(IReadOnlyList<double> b, double lag, double minutes) => double.IsFinite(lag)
        ? b[Start] * (1 + Make(Math.Exp(b[Ceiling]), Math.Exp(b[Steepest]), lag).Rise(minutes))
        : double.NaN;
}
