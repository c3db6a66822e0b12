using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>How often the chances that tuning prints come true, chosen as the best of many.</summary>
public class TuningCalibrationTests
{
    private const int Seed = 7;

    // A long run's 10,000 data sets are more than this takes: 2,000 journals leave a share uncertain by 1 point.
    private const int ShareOfLongRun = 5;

    private static readonly (string Text, Func<Random, VirtualKitchen> Draw)[] Kitchens =
    [
        ("truth drawn, exact instruments", TuneTrial.Drawn),
        ("the usual one, all its errors", _ => VirtualKitchen.Usual),
        ("nothing matters, handbooks all wrong", _ => VirtualKitchen.NothingMatters),
    ];

    [Fact]
    public void Chances_come_true_as_often_as_printed_and_more_often_than_those_of_the_best_bake_seen()
    {
        var trials = Run(120, TuneTrial.Drawn);

        // Three standard errors of what so many printed chances leave to luck.
        Assert.InRange(Math.Abs(Share(trials, trial => trial.Met) - trials.Average(trial => trial.Printed)), 0, 3 * StandardError(trials));
        Assert.All(Tenths(trials), tenth => Assert.InRange(Math.Abs(Off(tenth)), 0, 3));
        Assert.True(Share(trials, trial => trial.Met) > Share(trials, trial => trial.BestSeenMet));
    }

    [Fact]
    public void Table_of_chances_can_be_made_again()
    {
        var journals = LongRun.DataSets(10 * ShareOfLongRun) / ShareOfLongRun;
        List<string> whole =
        [
            "| kitchen | journals | printed | came true | best bake seen, again | house formula | changes advised |",
            "|---|---|---|---|---|---|---|",
        ];
        List<string> parts =
        [
            "",
            "By tenths of the printed chance; the last column is how far what came true lies from it, in its standard errors.",
            "",
            "| kitchen | printed from | journals | printed | came true | off |",
            "|---|---|---|---|---|---|",
        ];
        foreach (var (text, draw) in Kitchens)
        {
            var trials = Run(journals, draw);
            whole.Add(FormattableString.Invariant($"| {text} | {trials.Count} | {LongRun.Percent(trials.Average(trial => trial.Printed))} % ")
                + $"| {LongRun.Percent(Share(trials, trial => trial.Met))} % | {LongRun.Percent(Share(trials, trial => trial.BestSeenMet))} % "
                + $"| {LongRun.Percent(Share(trials, trial => trial.HouseMet))} % | {LongRun.Percent(Share(trials, trial => trial.IsChange))} % |");
            parts.AddRange(Tenths(trials).Select(tenth => FormattableString.Invariant($"| {text} | {10 * Tenth(tenth[0])} % | {tenth.Count} ")
                + $"| {LongRun.Percent(tenth.Average(trial => trial.Printed))} % | {LongRun.Percent(Share(tenth, trial => trial.Met))} % "
                + FormattableString.Invariant($"| {Off(tenth):+0.0;-0.0;0.0} |")));
        }

        Assert.Equal(2 + Kitchens.Length, whole.Count);
        LongRun.Write("tuning", [.. whole, .. parts]);
    }

    private static List<TuneTrial> Run(int journals, Func<Random, VirtualKitchen> draw) =>
        [.. LongRun.Simulate(journals, Seed, random => TuneTrial.Run(random, draw)).OfType<TuneTrial>()];

    private static IEnumerable<List<TuneTrial>> Tenths(IEnumerable<TuneTrial> trials) =>
        trials.GroupBy(Tenth).OrderBy(tenth => tenth.Key).Select(tenth => tenth.ToList());

    private static int Tenth(TuneTrial trial) => Math.Min(9, (int)(10 * trial.Printed));

    private static double Share(List<TuneTrial> trials, Func<TuneTrial, bool> holds) => (double)trials.Count(holds) / trials.Count;

    private static double StandardError(List<TuneTrial> trials) =>
        Math.Sqrt(trials.Sum(trial => trial.Printed * (1 - trial.Printed))) / trials.Count;

    private static double Off(List<TuneTrial> trials) =>
        (Share(trials, trial => trial.Met) - trials.Average(trial => trial.Printed)) / StandardError(trials);
}
