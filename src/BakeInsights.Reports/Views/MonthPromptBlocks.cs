using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>What a month's control charts ask one to look at.</summary>
internal static class MonthPromptBlocks
{
    /// <summary>The prompts, and that they are no findings.</summary>
    public static IEnumerable<ViewBlock> Of(MonthReview review)
    {
        yield return new ViewHeading("Prompts to look");
        yield return new ViewParagraph(
            "These come from the control charts and are no findings: a kitchen in which nothing changes gives one about every 92 bakes on "
            + "each chart. Look at what was different that day.");
        yield return new ViewList(
        [
            .. Items("Dough temperature", review.DoughTemperatureChart),
            .. Items("Rise time against what the model expects", review.RiseTimeChart),
        ]);
    }

    private static IEnumerable<string> Items(string title, Attempt<MonthChart> chart) => chart.Match<IEnumerable<string>>(
        drawn => Items(title, drawn), problem => [$"{title}: no chart. {problem.Message} {problem.Remedy}"]);

    private static IEnumerable<string> Items(string title, MonthChart chart)
    {
        var rough = chart.Bakes.Count < MonthChart.BakesForLimits
            ? $" The limits rest on {JournalView.Count(chart.Bakes.Count, "bake")} and are rough."
            : "";
        if (chart.Signals.Count == 0)
        {
            yield return $"{title}: no signal in {JournalView.Count(chart.Bakes.Count, "bake")}.{rough}";
        }

        foreach (var signal in chart.Signals)
        {
            yield return $"{title}, {Range(chart, signal)}: {Words(signal.Rule, chart.IsAgainstPrediction ? "what is expected" : "the middle")}.{rough}";
        }
    }

    private static string Range(MonthChart chart, RunSignal signal) => signal.First == signal.Last
        ? chart.Bakes[signal.First].Id
        : $"{chart.Bakes[signal.First].Id} to {chart.Bakes[signal.Last].Id}";

    private static string Words(RunRule rule, string middle) => rule switch
    {
        RunRule.OneBeyondThree => $"beyond the limits, three standard deviations from {middle}",
        RunRule.TwoOfThreeBeyondTwo => "two of three bakes beyond two standard deviations, on one side",
        RunRule.FourOfFiveBeyondOne => "four of five bakes beyond one standard deviation, on one side",
        RunRule.EightOnOneSide => $"eight bakes or more in a row on one side of {middle}",
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "The month's charts don't use this rule."),
    };
}
