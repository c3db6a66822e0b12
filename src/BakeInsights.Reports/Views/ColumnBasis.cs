namespace BakeInsights.Reports;

/// <summary>What an answer about a column or about groups rests on.</summary>
internal static class ColumnBasis
{
    /// <summary>Bakes used and left out, and causes held still or not.</summary>
    public static ViewParagraph Of(
        int bakes, int used, IReadOnlyList<LeftOutBakes> leftOut, IReadOnlyList<string> heldStill, IReadOnlyList<LeftOutTerm> notHeld)
    {
        List<string> sentences = [$"This rests on {used} of {JournalView.Count(bakes, "bake")}."];
        if (leftOut.Count > 0)
        {
            sentences.Add($"Left out: {string.Join("; ", leftOut.GroupBy(left => left.Reason).Select(Said))}.");
        }

        if (heldStill.Count > 0)
        {
            sentences.Add($"Held still: {string.Join(", ", heldStill.Select(Words))}.");
        }

        sentences.AddRange(notHeld.GroupBy(term => term.Reason)
            .Select(terms => $"Not held still: {string.Join(", ", terms.Select(term => Words(term.Name)))} ({char.ToLowerInvariant(terms.Key[0])}{terms.Key[1..].TrimEnd('.')})."));
        return new ViewParagraph(string.Join(" ", sentences));
    }

    private static string Said(IGrouping<string, LeftOutBakes> left) =>
        $"{Figures.Rounded(left.Sum(each => each.Count), 0)} with {left.Key}";

    private static string Words(string term) => term.Replace('_', ' ');
}
