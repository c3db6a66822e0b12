using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>How far judges agree, in words.</summary>
internal static class AgreementWords
{
    private const int MostNames = 4;

    /// <summary>One paragraph about an attribute.</summary>
    public static string Of(AttributeScores attribute) => attribute.Agreement.Match(
        judges => Of(attribute, judges),
        problem => $"{problem.Message} {problem.Remedy}");

    private static string Of(AttributeScores attribute, JudgesAgreement judges)
    {
        var names = judges.Judges.Count <= MostNames
            ? $"{string.Join(", ", judges.Judges.SkipLast(1))} and {judges.Judges[^1]}"
            : $"{judges.Judges.Count.ToString(CultureInfo.InvariantCulture)} judges";
        var who = $"{names} scored the same {JournalView.Count(judges.Bakes.Count, "bake")}.";
        var verdict = judges.Verdict switch
        {
            AgreementVerdict.Enough => "They agree well enough for their mean to be explained.",
            AgreementVerdict.Unsettled => "They seem to agree well enough for their mean to be explained, but that is not settled.",
            _ => $"They agree too little about the {attribute.Noun}: what moved it is not asked.",
        };
        var ranking = judges.Concordance is { } w ? $", and their rankings have a concordance (Kendall's W) of {Figures.Rounded(w, 2)}" : "";
        return $"{who} {verdict} Of the differences between bakes in their mean score {Share(judges.AllJudges)} is shared; "
            + $"of one judge's {Share(judges.OneJudge)}, or {Share(judges.SameScore)} where a stricter judge counts as disagreeing{ranking}.";
    }

    private static string Share(Estimate? share) => share switch
    {
        null => "an unknown part",
        { Low: { } low, High: { } high } => $"{Percent(share.Value)} ({Percent(low)} to {Percent(high)})",
        _ => Percent(share.Value),
    };

    // A correlation below nothing means that judges differ by more than bakes do.
    private static string Percent(double share) => share <= 0 ? "nothing" : Figures.Rounded(100 * share, 0) + " %";
}
