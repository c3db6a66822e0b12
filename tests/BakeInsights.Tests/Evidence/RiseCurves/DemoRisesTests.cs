using System.Globalization;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The demo journal's rise readings, their card, and what the fits find.</summary>
public class DemoRisesTests
{
    private const string Path = DemoJournal.Folder + "/rise.csv";
    private static readonly string Card = File.ReadAllText(Repository.Path(DemoJournal.Folder + "/README.md"));

    [Fact]
    public void The_demo_readings_are_what_the_virtual_kitchen_writes_byte_for_byte()
    {
        var seed = int.Parse(Regex.Match(Card, @"The readings' seed is (\d+)").Groups[1].Value, CultureInfo.InvariantCulture);
        Approved.Matches(Path, DemoRises.RiseCsv(seed));
        Assert.Equal(System.Text.Encoding.UTF8.GetBytes(DemoRises.RiseCsv(seed)), File.ReadAllBytes(Repository.Path(Path)));
        Assert.NotEqual(DemoRises.RiseCsv(seed), DemoRises.RiseCsv(seed + 1));
    }

    [Fact]
    public void The_card_prints_the_truth_of_every_dough()
    {
        foreach (var truth in DemoRises.Truths)
        {
            var doubled = truth.Curve.DoublingMin is { } at ? at.ToString("F1", CultureInfo.InvariantCulture) : "never";
            var row = string.Create(
                CultureInfo.InvariantCulture,
                $"| {truth.BakeId} | {truth.Stage.ToString().ToLowerInvariant()} | {truth.Curve.Name} | {1 + truth.Curve.Ceiling:0.##} | {100 * truth.Curve.SteepestPerMin:0.##} | {truth.Curve.LagMin:0} | {doubled} |");
            Assert.Contains(row, Card, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_dough_with_enough_readings_has_intervals_that_hold_its_truth()
    {
        var attempts = RiseCurves.Of(DemoJournal.Journal);
        Assert.Equal(DemoRises.Truths.Select(truth => (truth.BakeId, truth.Stage)), attempts.Select(a => (a.BakeId, a.Stage!.Value)));
        foreach (var (truth, attempt) in DemoRises.Truths.Zip(attempts).SkipLast(1))
        {
            var fit = attempt.Outcome.Value.Chosen;
            Assert.Equal(truth.Curve.Name, fit.Curve.Name);
            Assert.True(Holds(fit.Lag, truth.Curve.LagMin), $"{truth.BakeId} {truth.Stage} lag {fit.Lag}");
            Assert.True(Holds(fit.Steepest, truth.Curve.SteepestPerMin), $"{truth.BakeId} {truth.Stage} steepest {fit.Steepest}");
            Assert.True(Holds(fit.Ceiling, 1 + truth.Curve.Ceiling), $"{truth.BakeId} {truth.Stage} ceiling {fit.Ceiling}");
            Assert.Equal(truth.Curve.DoublingMin is null, fit.Doubling is null);
            Assert.True(fit.Doubling is null || Holds(fit.Doubling, truth.Curve.DoublingMin!.Value), $"{truth.BakeId} doubling {fit.Doubling}");
        }

        // The last was given up after five readings.
        Assert.False(attempts[^1].Outcome.TryGet(out _, out var problem));
        Assert.StartsWith("Take at least 2 more", problem!.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_collapsed_dough_is_cut_after_its_highest_reading_and_says_so()
    {
        var answer = RiseCurves.Of(DemoJournal.Journal).Single(attempt => attempt.BakeId == "ML-12").Outcome.Value;
        Assert.True(answer.Series.CollapsedCount >= 3);
        Assert.Contains($"{answer.Series.CollapsedCount} readings after it were cut off", answer.Caveats[0], StringComparison.Ordinal);
    }

    private static bool Holds(Estimate estimate, double truth) => !(truth < estimate.Low || truth > estimate.High);
}
