using System.Text.Json.Nodes;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class JudgesChartTests
{
    [Fact]
    public void Every_score_that_can_be_compared_is_in_a_mark_and_larger_marks_hold_more()
    {
        var openness = Attribute("openness_score");
        var traces = Traces(JudgesChart.Of(openness));
        Assert.Equal(["full agreement", "&lt;i&gt;Cy&lt;/i&gt;", "Ash", "Bo"], traces.Select(trace => (string?)trace!["name"]));
        Assert.Equal([1.0, 9.0], Numbers(traces[0]!["x"]!));
        var bakesInMarks = traces.Skip(1).Sum(trace => Numbers(trace!["marker"]!["size"]!).Sum(size => Math.Round(size * size / 49)));
        Assert.Equal(openness.Agreement.Value.Points.Count, bakesInMarks);
        Assert.Equal(60, openness.Agreement.Value.Points.Count);
    }

    [Fact]
    public void More_judges_than_colours_share_one_and_are_named_beside_the_pointer()
    {
        var scores = Scored.Journal.Scores.Concat(Scored.Journal.Scores.Where(score => score.Judge == "Bo").Select(score => score with { Judge = "Di" }));
        var attribute = ScoreAnswers.Of(Scored.Journal.Bakes, [.. scores], Scored.Journal.Attributes).Attributes.Single(one => one.Name == "openness_score");
        var traces = Traces(JudgesChart.Of(attribute));
        Assert.Equal(["full agreement", "a judge"], traces.Select(trace => (string?)trace!["name"]));
        Assert.Contains(traces[1]!["text"]!.AsArray(), words => ((string?)words)!.Contains("Di: K", StringComparison.Ordinal));
    }

    [Fact]
    public void An_attribute_without_judges_can_not_be_drawn() =>
        Assert.Throws<ArgumentException>(() => JudgesChart.Of(Attribute("crust_score")));

    private static AttributeScores Attribute(string name) => Scored.Answers.Attributes.Single(attribute => attribute.Name == name);

    private static JsonArray Traces(GenericChart chart) => JsonNode.Parse(GenericChart.toFigureJson(chart))!["data"]!.AsArray();

    private static double[] Numbers(JsonNode node) => [.. node.AsArray().Select(value => (double)value!)];
}
