using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Levels for groups of bakes, and looks that are not spans.</summary>
public class BlocksTests
{
    [Fact]
    public void A_bench_with_its_own_way_is_not_taken_for_the_work_of_a_cause()
    {
        // Bench B is 30 % slower and was given the warmer doughs: without levels warmth would seem to help less.
        static Dough Benches(Dough dough, int index) => index % 2 == 0
            ? dough with { Group = "A" }
            : dough with { Group = "B", Celsius = dough.Celsius + 2, RiseMin = dough.RiseMin * 1.3 * Math.Exp(-0.0953 * 2) };
        var blocked = RiseTime.Ask(Dough.Bakes(30, Benches)).Value;
        var unblocked = RiseTime.Ask(Dough.Bakes(30, (dough, index) => Benches(dough, index) with { Group = null })).Value;
        Assert.Equal(["group"], blocked.Blocks);
        Assert.EndsWith("; a level for each group", blocked.Model, StringComparison.Ordinal);
        Assert.Empty(unblocked.Blocks);
        Assert.Equal(-0.0953, blocked.Coefficient(RiseTime.DoughTemperatureTerm)!.Estimate, 0.004);
        Assert.True(unblocked.Coefficient(RiseTime.DoughTemperatureTerm)!.Estimate > -0.09);
        Assert.Equal(
            Math.Log(1.3) / 2, -blocked.Fit.Terms.Single(term => term.Name == "group A").Estimate, 0.01);
    }

    [Theory]
    [InlineData(16, 4, false)] // 16 - 5 coefficients - 3 levels leaves 8, and ten are wanted
    [InlineData(18, 4, true)]
    [InlineData(60, 13, false)] // more than twelve groups
    [InlineData(60, 12, true)]
    [InlineData(30, 15, false)] // two bakes a group, and more than twelve
    public void A_grouping_is_used_where_it_can_be_afforded(int bakes, int groups, bool used)
    {
        var answer = RiseTime.Ask(Dough.Bakes(bakes, (dough, index) => dough with { Group = $"bench {index % groups}" })).Value;
        Assert.Equal(used ? ["group"] : [], answer.Blocks);
    }

    [Fact]
    public void Groups_that_kept_to_their_own_settings_are_said_to_be_entangled_with_them()
    {
        var answer = RiseTime.Ask(Dough.Bakes(30, (dough, index) => dough with { SaltPct = 1.6 + (0.4 * (index % 2)), Group = index % 2 == 0 ? "A" : "B" })).Value;
        Assert.Empty(answer.Blocks);
        Assert.Contains("Each group kept to its own settings, so the journal can't tell the group from them.", answer.Caveats);
    }

    [Fact]
    public void Bakers_who_each_belong_to_one_group_are_said_to_and_not_called_entangled_with_settings()
    {
        var bakes = ClassDemo.Kitchen.Bakes(3, 72);
        var answer = RiseTime.Ask(bakes).Value;
        Assert.Equal(["group"], answer.Blocks);
        Assert.Contains(
            "Each baker belongs to one group: the level of the group stands for the baker too, and a baker is not told from another of the same group.",
            answer.Caveats);
        Assert.DoesNotContain(answer.Caveats, caveat => caveat.Contains("settings", StringComparison.Ordinal));
        Assert.Contains(CauseAnswers.Of(bakes).Answers[0].Caveats, caveat => caveat.StartsWith("Each baker belongs to one group", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rise_ready_at_the_first_look_is_left_out_with_its_reason()
    {
        var answer = RiseTime.Ask(Dough.Bakes(24, (dough, index) => index == 3 ? dough with { NotReadyMin = 0 } : dough)).Value;
        var left = Assert.Single(answer.LeftOutBakes);
        Assert.Equal("ready at the first look, so that only the latest time is known", left.Reason);
        Assert.Equal(["B4"], left.Bakes.Select(bake => bake.Id));
        Assert.Equal(24, answer.AllLooks!.Bakes);
    }

    [Fact]
    public void Every_look_as_it_is_agrees_with_the_likelihood_and_is_said()
    {
        // Scatter of about 13 %, looks every 30 minutes.
        static Dough Looked(Dough dough, int index)
        {
            var looks = dough.RiseMin!.Value * Math.Exp(0.05 * ((index * 17 % 9) - 4)) / 30;
            return index == 3
                ? dough with { Stopped = true, RiseMin = Math.Floor(looks) * 30 }
                : dough with { NotReadyMin = Math.Floor(looks) * 30, RiseMin = Math.Ceiling(looks) * 30 };
        }

        var bakes = Dough.Bakes(40, Looked);
        var answer = RiseTime.Ask(bakes).Value;
        var looks = answer.AllLooks!;
        Assert.Equal(40, looks.Bakes);

        // The same rows given to the likelihood by hand.
        Bake[] rows = [.. bakes.Where(bake => bake.RiseOutcome != RiseOutcome.Stopped), .. bakes.Where(bake => bake.RiseOutcome == RiseOutcome.Stopped)];
        var design = new Design(
        [
            new DesignColumn("one", [.. rows.Select(_ => 1.0)]),
            new DesignColumn("t", [.. rows.Select(bake => Measures.DoughTemperature.Of(bake)!.Value)]),
            new DesignColumn("y", [.. rows.Select(bake => Math.Log(Measures.Yeast.Of(bake)!.Value))]),
            new DesignColumn("h", [.. rows.Select(bake => Measures.Hydration.Of(bake)!.Value)]),
            new DesignColumn("s", [.. rows.Select(bake => Measures.Salt.Of(bake)!.Value)]),
        ]);
        var byHand = CensoredLogNormal.Fit(design, [.. rows.Select(bake => bake.RiseOutcome == RiseOutcome.Stopped
            ? CensoredValue.Above(bake[BakeColumns.Rise]!.Value)
            : CensoredValue.Between(bake[BakeColumns.RiseNotReady]!.Value, bake[BakeColumns.Rise]!.Value))]).Value;
        Assert.Equal(100 * (Math.Exp(byHand.Terms[1].Estimate) - 1), looks.ChangePctOfOneDegree.Value, 1e-6);
        Assert.Contains(answer.Caveats, caveat => caveat.StartsWith(
            "With every look as it is, 40 bakes, stopped rises and wide spans among them, 1 °C warmer changes the time by \u2212", StringComparison.Ordinal));
    }
}
