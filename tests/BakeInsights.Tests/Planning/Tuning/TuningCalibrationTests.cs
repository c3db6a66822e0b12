using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>How often the chances that tuning prints come true.</summary>
public class TuningCalibrationTests
{
    [Fact]
    public void Experiment()
    {
        var n = int.Parse(Environment.GetEnvironmentVariable("N") ?? "100");
        var lines = new List<string>();
        foreach (var (name, draw) in new (string, Func<Random, VirtualKitchen>)[] { ("drawn", TuneTrial.Drawn), ("usual", _ => VirtualKitchen.Usual), ("nothing", _ => VirtualKitchen.NothingMatters) })
        {
            var trials = LongRun.Simulate(n, 7, random => TuneTrial.Run(random, draw)).OfType<TuneTrial>().ToList();
            lines.Add($"{name} n={trials.Count} printed {trials.Average(t => t.Printed):F3} met {trials.Average(t => t.Met ? 1.0 : 0):F3} best-seen {trials.Average(t => t.BestSeenMet ? 1.0 : 0):F3} house {trials.Average(t => t.HouseMet ? 1.0 : 0):F3} changes {trials.Average(t => t.IsChange ? 1.0 : 0):F3}");
            foreach (var kind in trials.GroupBy(t => t.Kind).OrderBy(g => g.Key))
            {
                lines.Add($"   {kind.Key}: n {kind.Count()} printed {kind.Average(t => t.Printed):F3} met {kind.Average(t => t.Met ? 1.0 : 0):F3} changes {kind.Average(t => t.IsChange ? 1.0 : 0):F3}");
            }

            foreach (var tenth in trials.GroupBy(t => Math.Min(9, (int)(10 * t.Printed))).OrderBy(g => g.Key))
            {
                var p = tenth.Average(t => t.Printed);
                var m = tenth.Average(t => t.Met ? 1.0 : 0);
                var se = Math.Sqrt(tenth.Sum(t => t.Printed * (1 - t.Printed))) / tenth.Count();
                lines.Add($"   {tenth.Key}: n {tenth.Count()} printed {p:F3} met {m:F3} z {(m - p) / se:F1}");
            }
        }

        File.WriteAllLines("/tmp/tune-experiment.txt", lines);
    }
}
