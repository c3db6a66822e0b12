using Xunit;

namespace BakeInsights.Tests;

/// <summary>How answers are judged, and what makes one doubtful.</summary>
public class FindingFamilyTests
{
    private static readonly IReadOnlyList<Bake> Few = Dough.Bakes(12, (dough, _) => dough);
    private static readonly IReadOnlyList<Bake> Many = Dough.Bakes(24, (dough, _) => dough);

    [Fact]
    public void Family_p_values_count_every_question() =>
        // Holm by hand: 4 x 0.01, max(0.04, 3 x 0.015), max(0.045, 2 x 0.03), max(0.06, 1 x 0.2).
        Assert.Equal(
            [0.045, 0.2, 0.04, 0.06],
            Judge(Answer("a", 0.015), Answer("b", 0.2), Answer("c", 0.01), Answer("d", 0.03)).Answers.Select(answer => Math.Round(answer.FamilyPValue, 12)));

    [Fact]
    public void An_answer_that_stands_alone_and_not_in_the_family_is_a_hint() =>
        Assert.Equal([Strength.BorneOut, Strength.Hint], Strengths(Answer("a", 0.001), Answer("b", 0.06)));

    [Fact]
    public void An_interval_that_reaches_both_ways_leaves_the_question_open() =>
        Assert.Equal([Strength.Open], Strengths(Answer("a", 0.4) with { Effect = new Estimate(1, -1, 3) }));

    [Fact]
    public void No_finding_rests_on_a_p_value_alone() =>
        Assert.Equal([Strength.Hint], Strengths(Answer("a", 1e-9) with { Effect = new Estimate(1, -1, 3) }));

    [Fact]
    public void A_bend_can_bear_an_answer_out() =>
        Assert.Equal([Strength.BorneOut], Strengths(Answer("a", 1e-9) with { Effect = new Estimate(0.1, -1, 1.2), Bend = new Estimate(-1, -2, -0.5) }));

    [Fact]
    public void Many_bakes_and_a_small_p_value_make_it_firm() =>
        Assert.Equal([Strength.Firm], Strengths(Answer("a", 1e-4) with { Bakes = Many }));

    [Fact]
    public void Odd_bakes_must_not_be_what_it_hangs_on()
    {
        var odd = Answer("a", 1e-4) with { OddBakes = [new OddBake(Few[0], "odd")] };
        Assert.Equal([Strength.Hint], Strengths(odd));
        Assert.Equal([Strength.Hint], Strengths(odd with { WithoutOddBakes = new Estimate(0.5, -1, 2) }));
        Assert.Equal([Strength.Hint], Strengths(odd with { WithoutOddBakes = new Estimate(-2, -3, -1) }));
        Assert.Equal([Strength.BorneOut], Strengths(odd with { WithoutOddBakes = new Estimate(1.5, 1, 2) }));
    }

    [Fact]
    public void A_cause_that_moved_with_another_is_no_finding() =>
        Assert.Equal([Strength.Hint], Strengths(Answer("a", 1e-9) with { MovedTogetherWith = [Measures.Salt] }));

    [Fact]
    public void A_question_asked_twice_is_refused() => Assert.Equal(
        "The question a is asked twice. (Parameter 'answers')",
        Assert.Throws<ArgumentException>(() => Judge(Answer("a", 0.1), Answer("a", 0.1))).Message);

    [Fact]
    public void Causes_that_moved_together_are_named_with_the_bakes_that_would_tell_them_apart()
    {
        // Wetter doughs were warmer too, to a tenth of a degree.
        var bakes = Dough.Bakes(24, (dough, i) => dough with { HydrationPct = 60 + (2 * (dough.Celsius!.Value - 20)) + (0.05 * (i % 3)) });
        var answers = CauseAnswers.Of(bakes);
        var answer = answers.Answers.Single(one => one.Name == "rise_time.dough_temperature");
        Assert.Equal([Measures.Hydration], answer.MovedTogetherWith);
        Assert.Equal("Bake some doughs that change dough temperature and leave hydration as it is.", answer.NextStep);
        Assert.False(Judge([.. answers.Answers]).Answers.Single(one => one.Name == answer.Name).IsFinding);
    }

    [Fact]
    public void A_mistyped_time_is_named_and_every_answer_given_without_it_too()
    {
        var sound = Effect(Dough.Bakes(24, (dough, _) => dough));
        var mistyped = Effect(Dough.Bakes(24, (dough, i) => i == 7 ? dough with { RiseMin = dough.RiseMin * 10 } : dough));
        var odd = Assert.Single(mistyped.OddBakes);
        Assert.Equal(("B8", "its rise time lies far above what its settings lead to expect"), (odd.Bake.Id, odd.What));
        Assert.Equal("Look at B8 again, or bake it once more.", mistyped.NextStep);
        Assert.Empty(sound.OddBakes);
        Assert.Null(sound.WithoutOddBakes);
        Assert.Equal(sound.EffectPct!.Value, 100 * mistyped.WithoutOddBakes!.Value / LevelOf(mistyped), 0.5);

        static Finding Effect(IReadOnlyList<Bake> bakes) =>
            CauseAnswers.Of(bakes).Answers.Single(answer => answer.Name == "rise_time.dough_temperature");

        // Minutes of the typical dough without the mistyped bake.
        static double LevelOf(Finding finding)
        {
            var rest = RiseTime.Ask([.. finding.Bakes.Where(bake => bake.Id != "B8")]).Value;
            return rest.At(DoughSettings.MedianOf(finding.Bakes)).Estimate;
        }
    }

    [Fact]
    public void A_dough_far_from_the_others_is_said_to_steer_the_answer()
    {
        var bakes = Dough.Bakes(24, (dough, i) => i == 7 ? dough with { Celsius = 2, RiseMin = dough.RiseMin * 1.8 } : dough);
        var answer = CauseAnswers.Of(bakes).Answers.Single(one => one.Name == "rise_time.dough_temperature");
        Assert.Contains(answer.OddBakes, odd => odd.Bake.Id == "B8");
    }

    private static FindingFamily Judge(params Finding[] answers) => FindingFamily.Judge(answers, []);

    private static IEnumerable<Strength> Strengths(params Finding[] answers) => Judge(answers).Answers.Select(answer => answer.Strength);

    private static Finding Answer(string name, double p) => new()
    {
        Name = name,
        Question = "Does it?",
        Result = Measures.RiseTime,
        Contrast = Contrast.More(Measures.DoughTemperature, 2),
        Effect = new Estimate(2, 1, 3),
        PValue = p,
        Bakes = Few,
        NextStep = "Bake.",
    };
}
