using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Groups of four rows, or of two to six; the spread between groups is as large as that within or half of it. One
/// column varies within groups, one is the same throughout each.
/// </summary>
public class MixedCoverageTests
{
    [Fact]
    public void Intervals_of_twelve_groups_hold_the_truth_in_ninety_five_percent()
    {
        var held = Run(new Kitchen(12, Between: 1, IsUnequal: true, HasSlope: false), Coverage.DataSets);

        Coverage.IsNinetyFivePercent(held.Count(h => h.Within));
        Coverage.IsNinetyFivePercent(held.Count(h => h.Across));
    }

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        var kitchens =
            from hasSlope in new[] { false, true }
            from between in new[] { 1.0, 0.5 }
            from groups in new[] { 3, 4, 5, 6, 8, 12, 20, 40 }
            where !hasSlope || between == 1
            select new Kitchen(groups, between, IsUnequal: true, hasSlope);
        string[] lines =
        [
            "| groups | spread between / within | slope by group | no variance found | constant | column within groups "
                + "| column across groups | effect of a group |",
            "|---|---|---|---|---|---|---|---|",
            .. from kitchen in kitchens
               let held = Run(kitchen, LongRun.DataSets(20))
               select $"| {kitchen.Groups} | {kitchen.Between:0.0} | {(kitchen.HasSlope ? "yes" : "no")} "
                   + $"| {Share(held, h => h.Edge)} | {Share(held, h => h.Constant)} | {Share(held, h => h.Within)} "
                   + $"| {(kitchen.Groups > 3 ? Share(held, h => h.Across) : "-")} "
                   + $"| {Share([.. held.Where(h => h.Effect != null)], h => h.Effect == true)} |",
        ];

        Assert.Equal(26, lines.Length);
        LongRun.Write("coverage-mixed", lines);
    }

    private static string Share(Held[] held, Func<Held, bool> which) =>
        LongRun.Percent((double)held.Count(which) / Math.Max(held.Length, 1)) + " %";

    private static Held[] Run(Kitchen kitchen, int dataSets) =>
        LongRun.Simulate(dataSets, kitchen.Groups, random => One(kitchen, random));

    private static Held One(Kitchen kitchen, Random random)
    {
        int[] groups = [.. Enumerable.Range(0, kitchen.Groups)
            .SelectMany(g => Enumerable.Repeat(g, kitchen.IsUnequal ? 2 + (g % 5) : 4))];
        double[] Draw(int count, double spread) =>
            [.. Enumerable.Range(0, count).Select(_ => Normal.Sample(random, 0, spread))];
        var (level, tilt, across) = (Draw(kitchen.Groups, kitchen.Between), Draw(kitchen.Groups, kitchen.Between),
            Draw(kitchen.Groups, 1));
        var (x, error) = (Draw(groups.Length, 1), Draw(groups.Length, 1));
        double[] y =
        [
            .. groups.Select((g, i) => 5 + (2 * x[i]) + across[g] + level[g] + (kitchen.HasSlope ? tilt[g] * x[i] : 0)
                + error[i]),
        ];
        var design = new Design(
            DesignColumn.Constant(y.Length),
            new DesignColumn("x", x),
            new DesignColumn("across", [.. groups.Select(g => across[g])]));
        string[] labels = [.. groups.Select(g => $"g{g:00}")];

        // Three groups leave nothing between them beside a constant and a column across: that column is left out.
        var used = kitchen.Groups == 3 ? design.Without("across") : design;
        if (kitchen.Groups == 3)
        {
            y = [.. y.Select((v, i) => v - across[groups[i]])];
        }

        var fit = MixedModel.Fit(used, y, "group", labels, kitchen.HasSlope ? "x" : null).Value;
        return new Held(
            fit.Boundary != MixedBoundary.Inside,
            fit.Terms[0].Interval(0.95).Contains(5),
            fit.Terms[1].Interval(0.95).Contains(2),
            kitchen.Groups > 3 && fit.Terms[2].Interval(0.95).Contains(1),
            fit.GroupEffects[0].Intercept.Interval(0.95)?.Contains(level[0]));
    }

    private sealed record Kitchen(int Groups, double Between, bool IsUnequal, bool HasSlope);

    private sealed record Held(bool Edge, bool Constant, bool Within, bool Across, bool? Effect);
}
