namespace BakeInsights.Reports;

/// <summary>Answers about scores as tables and sentences.</summary>
internal static class ScoreAnswerBlocks
{
    private const int Decimals = 2;
    private const string Chance = "Chance alone: how many times chance would bring so clear a change, were there none.";

    /// <summary>Every question with its interval.</summary>
    public static ViewTable Table(IReadOnlyList<Finding> answers, bool isMiddle, Figures figures) => new(
        isMiddle
            ? "Which way it lay off the middle, and what one step did, the others held still. Up is not better: the middle is. " + Chance
            : "What one step did to the score, the others held still. " + Chance,
        [
            new ViewColumn("One step", false),
            new ViewColumn("Score changes by", true),
            new ViewColumn("95 % interval", true),
            new ViewColumn("Chance alone", true),
            new ViewColumn("Strength", false),
        ],
        [
            .. answers.Select(answer => new[]
            {
                Step(answer, figures),
                Figures.Rounded(answer.Effect.Value, Decimals),
                Figures.Range(answer.Effect.Low, answer.Effect.High, Decimals),
                Figures.Chance(answer.PValue),
                FindingWords.Of(answer.Strength),
            }),
        ]);

    /// <summary>What to bear in mind and what to do, each said once.</summary>
    public static IEnumerable<string> Sentences(IReadOnlyList<Finding> answers)
    {
        foreach (var same in answers.GroupBy(answer => (answer.Bakes.Count, LeftOut(answer))))
        {
            yield return $"{Questions(same, answers.Count)} on {JournalView.Count(same.Key.Count, "bake")}.{same.Key.Item2}";
        }

        foreach (var same in answers.SelectMany(answer => answer.Caveats.Select(caveat => (Caveat: caveat, Answer: answer))).GroupBy(pair => pair.Caveat))
        {
            yield return same.Key;
        }

        foreach (var same in answers.SelectMany(answer => answer.OddBakes).DistinctBy(odd => (odd.Bake.Id, odd.What)))
        {
            yield return $"Odd: {same.Bake.Id}, {same.What}.";
        }

        foreach (var answer in answers)
        {
            if (answer.WithoutOddBakes is { } without)
            {
                yield return $"{answer.Question} Without the odd bakes: {Figures.Rounded(without.Value, Decimals)} points "
                    + $"({Figures.Range(without.Low, without.High, Decimals)}).";
            }
        }

        // Of questions that nothing was seen in, the one that came nearest is enough to go on with.
        Finding[] seen = [.. answers.Where(answer => answer.Strength > Strength.Open)];
        foreach (var next in (seen.Length > 0 ? seen : [answers.MinBy(answer => answer.PValue)!]).Select(answer => answer.NextStep).Distinct())
        {
            yield return $"Next: {next}";
        }
    }

    private static string Questions(IEnumerable<Finding> some, int all) =>
        (some.Count() == all ? "" : string.Join(" ", some.Select(answer => answer.Question)) + " ")
        + (some.Count() == 1 ? "This answer rests" : "These answers rest");

    private static string LeftOut(Finding answer) => answer.LeftOut.Count == 0 ? "" : " Left out: " + string.Join("; ", answer.LeftOut
        .Select(left => $"{left.Count} with {left.Reason}")) + ".";

    private static string Step(Finding answer, Figures figures)
    {
        if (answer.Contrast.Cause is not { } cause)
        {
            return Figures.Sentence(answer.Contrast.Words);
        }

        // Percent of percent would be another thing.
        var unit = figures.UnitOf(cause.Dimension);
        return $"{cause.Title} up by {Figures.Shortest(unit.Difference(answer.Contrast.Change))} {(cause.Dimension == Dimension.Percent ? "points" : unit.Label)}";
    }
}
