namespace BakeInsights;

/// <summary>Makes one question of a family from the comparison of groups.</summary>
internal static class GroupFindings
{
    // With fewer than five groups the spread between them has an interval that reaches over several times itself: common
    // practice, as the tables in docs/coverage show.
    private const int FewGroups = 5;

    public static Finding Of(GroupAnswer answer)
    {
        var column = ColumnFindings.Of(answer.FixedFit, answer.Largest);
        return column with
        {
            Name = GroupQuestion.NameOf(answer.Result, answer.Column),
            Question = GroupQuestion.Words(answer.FixedFit.Rows.Question, answer.Column),
            Contrast = Contrast.Between(answer.Spread is null
                ? $"{answer.ColumnTitle}: {answer.Largest.To} against {answer.Largest.From}"
                : $"the two of {answer.Counts.Count} that lie farthest apart, {answer.Largest.To} against {answer.Largest.From}"),
            Caveats = [.. ColumnFindings.NotHeldStill(answer.FixedFit), .. answer.Caveats],
            NextStep = answer.Counts.Any(count => count < 3)
                ? $"Let every {answer.ColumnTitle} bake the same dough three times or more."
                : $"Let two of them bake the same dough on the same day, and look at how each measures and judges readiness.",
        };
    }

    /// <summary>What to bear in mind.</summary>
    public static IEnumerable<string> Caveats(GroupAnswer answer)
    {
        if (answer.Counts.Count < GroupQuestion.FewestForSpread)
        {
            yield return "Two groups show their difference, but not how far such groups lie apart in general.";
        }
        else if (answer.Counts.Count < FewGroups)
        {
            yield return $"{answer.Counts.Count} groups say little of how far such groups lie apart in general; the intervals count that.";
        }

        if (answer.Spread is { High: null })
        {
            yield return "The groups lie closer together than chance alone would set them; look whether results were copied from one to another.";
        }

        yield return "A group's difference is all that went with it: its hands, its tools, its place and its days. It ranks nobody.";
    }
}
