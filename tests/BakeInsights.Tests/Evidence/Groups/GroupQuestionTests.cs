using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Benches of a made-up class, r/benches.csv, against lme4 and lm by r/columns.R.</summary>
public class GroupQuestionTests
{
    private static readonly IReadOnlyList<Bake> Benches = Journal.Read(Repository.ReferenceData("r/benches.csv")).Bakes;

    [Fact]
    public void Pooled_effects_are_those_of_lme4()
    {
        var answer = GroupQuestion.Ask(Benches, Measures.RiseTime).Value;

        Assert.Equal(["ash", "beech", "cherry", "elm", "fir"], answer.Groups.Select(group => group.Group));
        foreach (var group in answer.Groups)
        {
            // lme4 stops its search about 1e-8 from the top of the likelihood, which moves effects by some 1e-7.
            Assert.Equal(RExpected.Of("benches", $"effect {group.Group}"), Math.Log(1 + (group.EffectPct!.Value / 100)), 1e-6);
            Assert.InRange(group.Effect!.Value, group.Effect.Low!.Value, group.Effect.High!.Value);
        }

        Assert.Equal(RExpected.Of("benches", "spread"), Math.Log(1 + (answer.SpreadPct!.Value / 100)), 1e-6);
        Assert.Equal(RExpected.Of("benches", "residual"), Math.Sqrt(answer.Mixed!.Variances.Residual), 1e-6);
        Assert.Equal(RExpected.Of("benches", "overall"), Math.Log(answer.Overall), 1e-6);
    }

    [Fact]
    public void The_test_is_the_F_test_of_fixed_groups()
    {
        var answer = GroupQuestion.Ask(Benches, Measures.RiseTime).Value;
        var cherry = answer.Groups.Single(group => group.Group == "cherry");

        Nearly.Equal(RExpected.Of("benches", "F"), answer.Test.FValue);
        Nearly.Equal(RExpected.Of("benches", "p"), answer.Finding.PValue);
        Nearly.Equal(RExpected.Of("benches", "own mean cherry"), Math.Log(cherry.OwnMean.Value));
        Nearly.Equal(RExpected.Of("benches", "own mean cherry low"), Math.Log(cherry.OwnMean.Low!.Value));
        Assert.Equal("rise_time.between_group", answer.Finding.Name);
        Assert.Equal(["dough_temperature"], answer.HeldStill);
        Assert.Equal(Strength.Firm, FindingFamily.Judge([answer.Finding], []).Answers[0].Strength);
    }

    [Fact]
    public void Two_groups_have_their_difference_and_no_spread()
    {
        var answer = GroupQuestion.Ask([.. Benches.Where(bake => bake[BakeColumns.Group] is "ash" or "fir")], Measures.RiseTime).Value;

        Assert.Null(answer.Spread);
        Assert.All(answer.Groups, group => Assert.Null(group.Effect));
        Assert.Equal(("ash", "fir"), (answer.Largest.From, answer.Largest.To));
        Assert.Contains("not how far such groups lie apart", answer.Caveats[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_of_one_bake_are_left_out_and_one_group_is_a_problem()
    {
        var one = Benches.Where(bake => bake[BakeColumns.Group] == "ash").Concat(Benches.Where(bake => bake[BakeColumns.Group] == "fir").Take(1));
        var attempt = GroupQuestion.Ask([.. one], Measures.RiseTime);

        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal("Column group never varied: it is ash in all 4 bakes that can be used.", problem.Message);
        Assert.Equal("rise_time.between_group", GroupQuestion.Open(Measures.RiseTime, problem).Name);
    }

    [Fact]
    public void Bakers_are_groups_too()
    {
        var bakes = Benches.Select((bake, i) => OwnColumnBakes.Of(i, bake[BakeColumns.Rise]!.Value, bake[BakeColumns.DoughTemp]!.Value, own: ("oven place", $"{i % 4}"))).ToList();
        var answer = GroupQuestion.Ask(bakes, Measures.RiseTime, "oven place").Value;
        Assert.Equal(4, answer.Groups.Count);
        Assert.Equal("rise_time.between_oven place", answer.Finding.Name);
    }

    [Fact]
    public void The_order_of_the_bakes_does_not_matter()
    {
        var (forth, back) = (GroupQuestion.Ask(Benches, Measures.RiseTime).Value, GroupQuestion.Ask([.. Benches.Reverse()], Measures.RiseTime).Value);
        foreach (var (one, other) in forth.Groups.Zip(back.Groups))
        {
            Assert.Equal(one.Group, other.Group);
            Assert.Equal(one.Effect!.Value, other.Effect!.Value, 1e-7);
        }
    }
}
