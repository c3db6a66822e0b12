using System.Globalization;
using Xunit;
using static BakeInsights.Tests.ScoredJournal;

namespace BakeInsights.Tests;

public class ScoreAnswersTests
{
    private static readonly ScoredAttribute Crumb = Scale("crumb", 1, 10, AttributeKind.MoreIsBetter);
    private static readonly ScoredAttribute Openness = Scale("openness", 1, 9, AttributeKind.MiddleIsBest);

    [Fact]
    public void A_known_effect_of_hydration_is_found_in_points_for_a_kitchen_step()
    {
        // 0.2 points for each percent of hydration: 0.6 for three.
        var bakes = Bakes(40);
        var found = ScoreAnswers.Of(bakes, Panel(bakes, "crumb", 0.2), [Crumb]);
        var answer = Answer(found, "crumb_score.hydration");
        Assert.InRange(answer.Effect.Value, 0.5, 0.7);
        Assert.True(answer.Effect.Low > 0);
        Assert.True(answer.PValue < 0.001);
        Assert.Equal((Measures.Hydration, 3.0), (answer.Contrast.Cause, answer.Contrast.Change));
        Assert.Equal(["crumb_score.hydration", "crumb_score.dough_temperature", "crumb_score.proof_time"], found.Answers.Select(one => one.Name));
        Assert.Equal(AgreementVerdict.Enough, Assert.Single(found.Attributes).Verdict);
        Assert.Equal(["crumb_score.hydration"], FindingFamily.Judge(found.Answers, found.Open).Findings.Select(one => one.Name));
    }

    [Fact]
    public void A_strict_judge_who_came_for_the_wet_doughs_does_not_pass_for_the_hydration()
    {
        var bakes = Bakes(40);
        IEnumerable<Score> Scores(Bake bake, int index)
        {
            var quality = 6 + (0.2 * (Measures.Hydration.Of(bake)!.Value - 66)) + Unexplained(index);
            yield return Score(bake, "Mild", "crumb", quality + 1);
            if (index % 3 == 0 || Measures.Hydration.Of(bake) > 67)
            {
                yield return Score(bake, "Strict", "crumb", quality - 3);
            }
        }

        var answer = Answer(ScoreAnswers.Of(bakes, [.. bakes.SelectMany(Scores)], [Crumb]), "crumb_score.hydration");
        Assert.InRange(answer.Effect.Value, 0.5, 0.7);
        Assert.Equal(40, answer.Bakes.Count);
    }

    [Fact]
    public void Scoring_every_loaf_twice_makes_no_answer_surer()
    {
        var bakes = Bakes(20);
        var once = Panel(bakes, "crumb", 0.1);
        Score[] twice = [.. once.Select(score => score with { Loaf = "1" }), .. once.Select(score => score with { Loaf = "2" })];
        var (one, two) = (ScoreAnswers.Of(bakes, once, [Crumb]), ScoreAnswers.Of(bakes, twice, [Crumb]));
        Assert.Equal(one.Answers.Select(answer => answer.PValue), two.Answers.Select(answer => answer.PValue));
        Assert.Equal(one.Answers.Select(answer => answer.Effect), two.Answers.Select(answer => answer.Effect));
        Assert.Equal(one.Attributes[0].Agreement.Value.AllJudges, two.Attributes[0].Agreement.Value.AllJudges);
    }

    [Fact]
    public void What_is_best_in_the_middle_is_asked_which_way_off_it_lies_and_what_moves_it_there()
    {
        // Wetter doughs are more open, and these are too open: 6.5 where 5 is best.
        var bakes = Bakes(30);
        var found = ScoreAnswers.Of(bakes, Panel(bakes, "openness", 0.15, 6.5), [Openness]);
        var middle = Answer(found, "openness_score.middle");
        Assert.InRange(middle.Effect.Value, 1.2, 1.8);
        Assert.True(middle.Effect.Low > 0);
        var hydration = Answer(found, "openness_score.hydration");
        Assert.Equal("Did the openness move up or down its scale in a wetter dough?", hydration.Question);
        Assert.True(hydration.Effect.Low > 0);
        Assert.Equal(
            "Bake pairs that differ in hydration alone, the second with less of it: if the answer holds, that leads toward the middle.",
            hydration.NextStep);
        var tight = Answer(ScoreAnswers.Of(bakes, Panel(bakes, "openness", 0.15, 3), [Openness]), "openness_score.hydration");
        Assert.Contains("the second with more of it", tight.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Judges_who_agree_too_little_get_no_model()
    {
        var bakes = Bakes(20);
        Score[] scores =
        [
            .. bakes.Select((bake, index) => Score(bake, "A", "crumb", 1 + (index * 7 % 10))),
            .. bakes.Select((bake, index) => Score(bake, "B", "crumb", 10 - (index * 7 % 10))),
        ];
        var found = ScoreAnswers.Of(bakes, scores, [Crumb]);
        Assert.Equal(AgreementVerdict.TooLittle, found.Attributes[0].Verdict);
        Assert.Empty(found.Answers);
        Assert.Equal(3, found.Open.Count);
        Assert.All(found.Open, open => Assert.StartsWith("The judges agree too little about the crumb", open.Reason, StringComparison.Ordinal));
    }

    [Fact]
    public void Judges_who_differ_by_a_steady_shift_agree_fully()
    {
        var bakes = Bakes(12);
        Score[] scores =
        [
            .. bakes.Select((bake, index) => Score(bake, "A", "crumb", 3 + (index * 7 % 5))),
            .. bakes.Select((bake, index) => Score(bake, "B", "crumb", 5 + (index * 7 % 5))),
        ];
        var agreement = ScoreAnswers.Of(bakes, scores, [Crumb]).Attributes[0].Agreement.Value;
        Assert.Equal(new Estimate(1, null, null), agreement.AllJudges);
        Assert.Equal(1, agreement.Concordance!.Value, 12);
        Assert.True(agreement.SameScore is null or { Value: < 1 });
        Assert.Equal([-2.0, 2.0], agreement.Standings.Select(standing => standing.Shift));
    }

    [Fact]
    public void Agreement_in_a_journal_is_that_of_the_published_table()
    {
        // Shrout and Fleiss (1979), Psychological Bulletin 86, 420-428: ratings of table 2, correlations of table 4.
        double[,] published =
        {
            { 9, 2, 5, 8 }, { 6, 1, 3, 2 }, { 8, 4, 6, 8 }, { 7, 1, 2, 6 }, { 10, 5, 6, 9 }, { 6, 2, 4, 7 },
        };
        var bakes = Bakes(6);
        Score[] scores =
        [
            .. from i in Enumerable.Range(0, 6)
               from j in Enumerable.Range(0, 4)
               select Score(bakes[i], $"J{j + 1}", "crumb", published[i, j]),
        ];
        var agreement = ScoreAnswers.Of(bakes, scores, [Crumb]).Attributes[0].Agreement.Value;
        Assert.Equal(0.71, agreement.OneJudge.Value, 0.005);
        Assert.Equal(0.91, agreement.AllJudges!.Value, 0.005);
        Assert.Equal(0.29, agreement.SameScore!.Value, 0.005);
        Assert.Equal(6, agreement.Pairs.Count);
        Assert.Equal(24, agreement.Points.Count);
    }

    [Fact]
    public void A_column_of_the_bakes_serves_where_nobody_judged()
    {
        string[] lines =
        [
            "bake_id,baked_on,flour_g,water_g,crumb_score,flavour_score",
            .. Enumerable.Range(0, 14).Select(i => string.Create(
                CultureInfo.InvariantCulture,
                $"B{i},2026-10-{i + 1:00},1000,{600 + (10 * (i * 5 % 13))},{Whole(2 + ((i * 5 % 13) / 6.0), 5)},{1 + (i * 3 % 5)}")),
        ];
        var bakes = Csv.Read(lines).Bakes;
        var found = ScoreAnswers.Of(bakes, [Score(bakes[0], "A", "flavour", 3)], []);
        Assert.Equal([("crumb_score", false), ("flavour_score", true)], found.Attributes.Select(one => (one.Name, one.IsJudged)));
        var answer = Assert.Single(found.Answers);
        Assert.Equal("crumb_score.hydration", answer.Name);
        Assert.Contains("The crumb scores stand in the bakes themselves, without judges, so nobody's agreement is known.", answer.Caveats);
        Assert.Contains(found.Open, open => open.Name == "crumb_score.proof_time" && open.Reason == "It is not in the journal.");
        Assert.Equal(3, found.Open.Count(open => open.Name.StartsWith("flavour_score.", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_few_coarse_scores_on_a_line_are_no_proof()
    {
        // 3 in four like doughs and 4 in one that is wetter: a perfect line that one score in five makes.
        var bakes = Csv.Read(
            "bake_id,baked_on,flour_g,water_g,crumb_score",
            "A,2026-10-01,1000,650,3", "B,2026-10-02,1000,650,3", "C,2026-10-03,1000,650,3", "D,2026-10-04,1000,650,3", "E,2026-10-05,1000,700,4").Bakes;
        var answer = Assert.Single(ScoreAnswers.Of(bakes, [], []).Answers);
        Assert.True(answer.PValue > 0.05);
        Assert.True(answer.Effect.Low < 0);
    }

    [Fact]
    public void Bakes_that_each_had_other_judges_answer_nothing_and_say_what_would_help()
    {
        var bakes = Bakes(12);
        var found = ScoreAnswers.Of(bakes, [.. bakes.Select((bake, index) => Score(bake, $"J{index / 2}", "crumb", 3 + (index % 4)))], [Crumb]);
        Assert.Empty(found.Answers);
        Assert.All(found.Open, open => Assert.Equal("Let the same judges score the crumb of every bake.", open.NextStep));
    }

    [Fact]
    public void A_bake_far_off_is_named_and_the_answer_is_given_without_it_too()
    {
        var bakes = Bakes(30);
        Score[] scores = [.. Panel(bakes, "crumb", 0.2).Select(score => score.BakeId == "B7" ? score with { Value = 1 } : score)];
        var answer = Answer(ScoreAnswers.Of(bakes, scores, [Crumb]), "crumb_score.hydration");
        Assert.Equal(["B7"], answer.OddBakes.Select(odd => odd.Bake.Id));
        Assert.InRange(answer.WithoutOddBakes!.Value, 0.5, 0.7);
    }

    [Fact]
    public void A_journal_without_scores_has_no_answers()
    {
        var found = ScoreAnswers.Of(Bakes(10), [], [Crumb]);
        Assert.Empty(found.Attributes);
        Assert.Empty(found.Answers);
        Assert.Empty(found.Open);
    }

    [Fact]
    public void Scores_of_other_bakes_than_those_asked_about_do_not_count()
    {
        var bakes = Bakes(30);
        var scores = Panel(bakes, "crumb", 0.2);
        Bake[] some = [.. bakes.Take(20)];
        var few = ScoreAnswers.Of(some, scores, [Crumb]);
        Assert.Equal(20, few.Attributes[0].Bakes);
        Assert.Equal(ScoreAnswers.Of(some, [.. scores.Take(60)], [Crumb]).Answers.Select(one => one.Effect), few.Answers.Select(one => one.Effect));
    }

    // Three judges of their own severity; scores that no cause explains, in a rhythm of their own.
    private static Score[] Panel(IReadOnlyList<Bake> bakes, string attribute, double perPercent, double at = 6) =>
    [
        .. bakes.SelectMany((bake, index) => Enumerable.Range(0, 3).Select(judge => Score(
            bake,
            $"Judge {judge + 1}",
            attribute,
            at + (perPercent * (Measures.Hydration.Of(bake)!.Value - 66)) + Unexplained(index) + (0.5 * (judge - 1)) + (0.1 * ((index * (judge + 2) % 5) - 2))))),
    ];

    private static double Unexplained(int index) => 0.12 * ((index * 17 % 9) - 4);

    private static Finding Answer(ScoreAnswers answers, string name) => answers.Answers.Single(answer => answer.Name == name);
}
