using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class ScoresViewTests
{
    [Theory]
    [InlineData(UnitSystem.Metric, "metric")]
    [InlineData(UnitSystem.Us, "us")]
    public void Scores_of_three_judges_read_as_approved(UnitSystem units, string name) => Approved.Matches(
        $"tests/BakeInsights.Reports.Tests/Approved/scores/judges-{name}.txt", ScoresView.Of(Scored.Answers, null, units).ToText());

    [Fact]
    public void No_line_is_longer_than_a_terminal() => Assert.All(
        ScoresView.Of(Scored.Answers, null, UnitSystem.Metric).ToText().Split('\n'), line => Assert.True(line.Length <= 80, line));

    [Fact]
    public void Text_is_the_same_in_every_culture() => Assert.Equal(
        ScoresView.Of(Scored.Answers, null, UnitSystem.Metric).ToText(),
        Demo.Under("tr-TR", () => ScoresView.Of(ScoreAnswers.Of(Scored.Journal), null, UnitSystem.Metric).ToText()));

    [Fact]
    public void A_judge_named_by_a_tag_is_encoded_on_a_page()
    {
        var html = ScoresView.Of(Scored.Answers, null, UnitSystem.Metric).ToHtml();
        Assert.Contains("&lt;i&gt;Cy&lt;/i&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<i>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Strength_counts_the_other_questions_of_a_family()
    {
        var alone = ScoresView.Of(Scored.Answers, null, UnitSystem.Metric).ToText();
        Assert.Contains(" firm", alone, StringComparison.Ordinal);

        // 0.004 among 33 questions is 0.13 by Holm's rule.
        var unclear = Scored.Answers.Answers.Select(answer => answer with { PValue = Math.Max(answer.PValue, 0.004) });
        var nothings = Enumerable.Range(0, 20).Select(i => Scored.Answers.Answers[0] with
        {
            Name = $"moon.{i}", Contrast = Contrast.Between("a full moon against a new one"), PValue = 0.2,
        });
        var crowded = FindingFamily.Judge([.. unclear, .. nothings], Scored.Answers.Open);
        var text = ScoresView.Of(Scored.Answers, crowded, UnitSystem.Metric).ToText();
        Assert.DoesNotContain(" firm", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" borne out", text, StringComparison.Ordinal);
        Assert.DoesNotContain("moon", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_journal_without_scores_says_what_to_log() => Assert.Contains(
        "No bake was scored.", ScoresView.Of(ScoreAnswers.Of(Demo.Journal.Bakes.Take(0).ToList(), [], []), null, UnitSystem.Metric).ToText(), StringComparison.Ordinal);
}
