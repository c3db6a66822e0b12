using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// Whether the whole family of a month keeps its word: causes, scores, groups, own columns, changes from the month before
/// and drifts. The long runs of the tables in docs/coverage are made by the same code with BAKEINSIGHTS_LONG_RUN=1.
/// </summary>
public class FamilyHonestyTests
{
    private const int ShortRun = 100;

    // Where judges score, the check of a score as an order takes most of the time.
    private const int ScoredLongRun = 2_000;

    public static TheoryData<int, bool> Months => new()
    {
        { 12, false }, { 20, false }, { 40, false }, { 12, true }, { 20, true }, { 40, true },
    };

    [Theory]
    [MemberData(nameof(Months))]
    public void A_month_in_which_nothing_matters_prints_a_finding_one_time_in_twenty_at_most(int bakes, bool isScored)
    {
        var months = MonthsOf(isScored);
        var kitchen = FamilyKitchen.NothingMatters(isScored);
        var families = LongRun.Simulate(months, bakes, random => Judged(kitchen.Month(random, bakes)));
        var found = families.Count(family => family.Findings.Count > 0);

        // Of 100 months with a chance of 5 % at most 13 print one, but for one time in a thousand: qbinom(0.999, 100, 0.05)
        // in R 4.2. In a long run at most 5.5 % may.
        LongRun.Write(
            $"family-nothing-{Name(bakes, isScored)}",
            [
                "| bakes | scores | months | questions a month | months with a finding |",
                "|---|---|---|---|---|",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {bakes} | {(isScored ? "yes" : "no")} | {months} | {families.Average(family => family.Answers.Count):F1} | {LongRun.Percent((double)found / months)} % |"),
                "",
                .. ByQuestion(families, (answer, _) => answer.PValue <= FindingFamily.FalseFindingChance, "p at most 0.05", _ => 0),
            ]);
        Assert.InRange(found, 0, months == ShortRun ? 13 : (int)(0.055 * months));
    }

    [Theory]
    [MemberData(nameof(Months))]
    public void Printed_intervals_hold_the_truth(int bakes, bool isScored)
    {
        var months = MonthsOf(isScored);
        var kitchen = FamilyKitchen.TradeEffects(isScored);
        var families = LongRun.Simulate(months, bakes + 1, random => Judged(kitchen.Month(random, bakes)));
        var held = families.SelectMany(family => family.Answers).SelectMany(answer => Held(answer, kitchen.TruthOf(answer))).ToList();
        var share = held.Average(holds => holds ? 1.0 : 0);
        var warmth = families.Average(FindsTemperature);

        // What the other questions cost it.
        var byCauses = families.Average(family => FindsTemperature(FindingFamily.Judge(family.Answers.Where(IsAboutACause), [])));
        LongRun.Write(
            $"family-trade-{Name(bakes, isScored)}",
            [
                "| bakes | scores | noise | months | intervals | hold the truth | temperature found | by causes alone |",
                "|---|---|---|---|---|---|---|---|",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {bakes} | {(isScored ? "yes" : "no")} | {FamilyKitchen.Noise:P0} | {months} | {held.Count} | {LongRun.Percent(share)} % | "
                        + $"{LongRun.Percent(warmth)} % | {LongRun.Percent(byCauses)} % |"),
                "",
                .. ByQuestion(families, (answer, truth) => Held(answer, truth).First(), "hold the truth", kitchen.TruthOf),
            ]);
        Assert.InRange(share, 0.93, 0.97);
        if (bakes >= 20)
        {
            // Three standard errors of simulating 95 %.
            Assert.InRange(warmth, 0.95 - (3 * Math.Sqrt(0.95 * 0.05 / months)), 1);
        }
    }

    private static int MonthsOf(bool isScored) => isScored ? LongRun.DataSets(ShortRun, ScoredLongRun) : LongRun.DataSets(ShortRun);

    private static string Name(int bakes, bool isScored) => isScored ? $"scored-{bakes}" : $"{bakes}";

    private static FindingFamily Judged(MonthAnswers month) => FindingFamily.Judge(month.Answers, month.Open);

    private static IEnumerable<bool> Held(Finding answer, (double Effect, double Bend) truth)
    {
        yield return Holds(answer.Effect, truth.Effect);
        if (answer.Bend is { } bend)
        {
            yield return Holds(bend, truth.Bend);
        }
    }

    private static double FindsTemperature(FindingFamily family) =>
        family.Findings.Any(answer => answer.Name == "rise_time.dough_temperature") ? 1 : 0;

    private static bool IsAboutACause(Finding answer) => answer.Name.Split('.') is ["rise_time" or "proof_time" or "loaf_volume", var cause]
        && !cause.StartsWith("between_", StringComparison.Ordinal) && !cause.StartsWith("own_", StringComparison.Ordinal);

    private static bool Holds(Estimate estimate, double truth) => (estimate.Low ?? double.NegativeInfinity) <= truth && truth <= (estimate.High ?? double.PositiveInfinity);

    private static IEnumerable<string> ByQuestion<T>(
        IReadOnlyList<FindingFamily> families, Func<Finding, T, bool> counts, string title, Func<Finding, T> truthOf) =>
    [
        $"| question | months that answer it | {title} |",
        "|---|---|---|",
        .. families.SelectMany(family => family.Answers).GroupBy(answer => answer.Name).OrderBy(same => same.Key, StringComparer.Ordinal)
            .Select(same => string.Create(
                CultureInfo.InvariantCulture,
                $"| `{same.Key}` | {same.Count()} | {LongRun.Percent(same.Average(answer => counts(answer, truthOf(answer)) ? 1.0 : 0))} % |")),
    ];
}
