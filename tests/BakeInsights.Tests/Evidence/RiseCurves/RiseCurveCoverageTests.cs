using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>How often the intervals of a rise curve hold a known truth. The long run writes docs/coverage/coverage-rise.md.</summary>
public class RiseCurveCoverageTests
{
    private const int Short = 300;

    // A share is to lie between 93 and 97 %, give or take two standard errors of simulating a share of 95 %.
    private const double Least = 0.93, Most = 0.97;

    [Fact]
    public void Intervals_of_lag_steepest_rise_ceiling_and_doubling_hold_the_truth_in_95_of_100_doughs()
    {
        string[] lines =
        [
            "| curve | readings | fitted | lag | steepest rise | ceiling | doubling | right curve chosen | doubling, of the chosen |",
            "|---|---|---|---|---|---|---|---|---|",
            .. from truth in new RiseCurve[] { new GompertzRise(1.6, 0.025, 25), new LogisticRise(1.6, 0.025, 25) }
               from n in new[] { 13, 25 }
               select Line(truth, n),
        ];
        LongRun.Write("coverage-rise", lines);
    }

    private static string Line(RiseCurve truth, int n)
    {
        var doughs = LongRun.Simulate(LongRun.DataSets(Short), n, random => Dough(truth, n, random));
        var fitted = doughs.OfType<Held>().ToList();
        string Share(Func<Held, bool> which)
        {
            var share = (double)fitted.Count(which) / fitted.Count;
            var error = Math.Sqrt(0.95 * 0.05 / fitted.Count);
            Assert.InRange(share, Least - (2 * error), Most + (2 * error));
            return LongRun.Percent(share) + " %";
        }

        var shares = string.Join(" | ", Share(h => h.Lag), Share(h => h.Steepest), Share(h => h.Ceiling), Share(h => h.Doubling));
        string Said(Func<Held, bool> which) => LongRun.Percent((double)fitted.Count(which) / fitted.Count) + " %";
        return $"| {truth.Name} | {n} | {LongRun.Percent((double)fitted.Count / doughs.Length)} % | {shares} | {Said(h => h.RightCurve)} | {Said(h => h.DoublingOfChosen)} |";
    }

    // Two hours of readings of a dough of 50 mm that err by 1 mm.
    private static Held? Dough(RiseCurve truth, int n, Random random)
    {
        const double start = 50, sd = 1, lastMin = 144;
        double[] minutes = [.. Enumerable.Range(0, n).Select(i => i * lastMin / (n - 1))];
        double[] sizes = [.. minutes.Select(minute => (start * (1 + truth.Rise(minute))) + (sd * Normal(random)))];
        var series = RiseSeries.Of(minutes, sizes, isHeight: true);
        if (!RiseCurves.Fit(series).TryGet(out var answer, out _))
        {
            return null;
        }

        var right = answer.Chosen.Curve.Name == truth.Name;
        var fit = right ? answer.Chosen : answer.Other.Match<RiseCurveFit?>(other => other, _ => null);
        return fit is null ? null : new Held(
            Holds(fit.Lag, truth.LagMin),
            Holds(fit.Steepest, truth.SteepestPerMin),
            Holds(fit.Ceiling, 1 + truth.Ceiling),
            fit.Doubling is { } doubling && Holds(doubling, truth.DoublingMin!.Value),
            right,
            answer.Chosen.Doubling is { } chosen && Holds(chosen, truth.DoublingMin!.Value));
    }

    private static bool Holds(Estimate estimate, double truth) => !(truth < estimate.Low || truth > estimate.High);

    // Marsaglia and Bray (1964), SIAM Review 6, 260-264.
    private static double Normal(Random random)
    {
        while (true)
        {
            var (u, v) = ((2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1);
            if ((u * u) + (v * v) is > 0 and < 1 and var s)
            {
                return u * Math.Sqrt(-2 * Math.Log(s) / s);
            }
        }
    }

    private sealed record Held(bool Lag, bool Steepest, bool Ceiling, bool Doubling, bool RightCurve, bool DoublingOfChosen);
}
