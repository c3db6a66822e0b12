namespace BakeInsights.Tests;

/// <summary>Yeast, temperature and rise curves.</summary>
internal static class FermentationExamples
{
    private const string PublishedFunction = "example of a published function for the same model";
    private const string Apart = WorkedExample.Apart;

    private static readonly CardinalResponse Cardinal = new(C(5), C(20), C(30), "an example");
    private static readonly FullSquareRootResponse SquareRoot = new(0.03, C(2), 0.25, C(45), "an example");
    private static readonly GompertzRise Gompertz = new(1.6, 0.025, 20);
    private static readonly LogisticRise Logistic = new(1.6, 0.025, 20);
    private static readonly TemperatureSpan TradeSpan = TemperatureSpan.Of(ExponentialResponse.Trade, C(20), C(30))!;

    public static IEnumerable<WorkedExample> All =>
    [
        new(17, "yeast for 12 h in place of 6 tsp for 1.5 h", "tsp", YeastForTime.Yeast(6, 90, 720), 0.75, 1e-12, "trade page on yeast and time"),
        Trade(22, 119.8),
        Trade(20, 144.9),
        Trade(28, 67.6),
        new(18, "Q10 of 10 % a °C", "-", TradeSpan.Q10, 2.5937, 5e-5, Apart),
        new(18, "activation energy of 10 % a °C, 20 to 30 °C", "kJ/mol", TradeSpan.ActivationKjPerMol, 70.42, 0.01, Apart),
        Rate(6, 0.0200, 5e-5),
        Rate(10, 0.33333, 5e-6),
        Rate(20, 1, 1e-6),
        Rate(22, 0.9633333, 1e-6),
        Rate(25, 0.7619048, 1e-6),
        Rate(29, 0.1969231, 1e-6),
        Rate(30, 0, 1e-6),
        Rate(4, 0, 1e-6),
        Growth(20, 0.5965),
        Growth(25, 0.8302),
        Growth(30, 0.9802),
        Growth(35, 0.9682),
        Ratkowsky(10, 0.057582),
        Ratkowsky(25, 0.469706),
        Ratkowsky(35, 0.825801),
        Ratkowsky(40, 0.661594),
        Curve("Gompertz, rise at 0 min", Gompertz.Rise(0), 0.0027770),
        Curve("Gompertz, rise at 30 min", Gompertz.Rise(30), 0.270467),
        Curve("Gompertz, rise at 60 min", Gompertz.Rise(60), 0.973249),
        Curve("Gompertz, rise at 120 min", Gompertz.Rise(120), 1.538988),
        Curve("Gompertz, steepest, minute", Gompertz.SteepestAtMin, 43.5443),
        Curve("Gompertz, rise where steepest", Gompertz.Rise(Gompertz.SteepestAtMin), 0.588607),
        Curve("Gompertz, slope where steepest", Gompertz.Slope(Gompertz.SteepestAtMin), 0.025),
        Curve("Gompertz, doubled, minute", Gompertz.DoublingMin!.Value, 61.3206),
        Curve("logistic, rise at 60 min", Logistic.Rise(60), 0.995935),
        Curve("logistic, steepest, minute", Logistic.SteepestAtMin, 52),
        Curve("logistic, rise where steepest", Logistic.Rise(Logistic.SteepestAtMin), 0.8),
        new(33, "looks every 10 min, SD they add", "min", LookSpacing.AddedSd(10), 2.887, 0.0005, Apart),
    ];

    private static Temperature C(double degrees) => Temperature.FromC(degrees);

    private static WorkedExample Trade(double at, double theirs) => new(
        18, FormattableString.Invariant($"90 min at 25 °C, at {at} °C with 10 % a °C"), "min",
        RiseElsewhere.Of(90, C(25), C(at), ExponentialResponse.Trade).Minutes!.Value, theirs, 0.05, Apart);

    private static WorkedExample Rate(double at, double theirs, double tolerance) => new(
        19, FormattableString.Invariant($"cardinal rate (5, 20, 30) at {at} °C"), "-", Cardinal.Rate(C(at)), theirs, tolerance, PublishedFunction);

    private static WorkedExample Growth(double at, double theirs) => new(
        20, FormattableString.Invariant($"growth of yeast (2.8, 32.3, 45.4) at {at} °C"), "-",
        CardinalResponse.YeastGrowth.Rate(C(at)), theirs, 1e-4, Apart);

    private static WorkedExample Ratkowsky(double at, double theirs) => new(
        21, FormattableString.Invariant($"square-root rate (b 0.03, 2, c 0.25, 45) at {at} °C"), "-",
        SquareRoot.Rate(C(at)), theirs, 1e-5, Apart);

    private static WorkedExample Curve(string what, double ours, double theirs) => new(
        22, what + " (1.6, 0.025, 20)", what.EndsWith("minute", StringComparison.Ordinal) ? "min" : "-", ours, theirs, 1e-4, Apart);
}
