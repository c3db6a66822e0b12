using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>One scored attribute: its scale, and how far its judges agree.</summary>
/// <param name="Name">Its name for programs, such as <c>crumb_score</c>.</param>
/// <param name="Noun">What was scored, in words.</param>
/// <param name="Kind">Which score is best; null where the journal doesn't say.</param>
/// <param name="Low">The lowest score of the scale; null where the journal doesn't give it.</param>
/// <param name="High">The highest score of the scale; null where the journal doesn't give it.</param>
/// <param name="Rating">The rating of a bake: the mean over its judges of their mean over its loaves.</param>
/// <param name="Bakes">How many bakes have one.</param>
/// <param name="IsJudged">Whether the scores are judges', from <c>scores.csv</c>.</param>
/// <param name="Agreement">How far the judges agree, or why that isn't known.</param>
public sealed record AttributeScores(
    string Name,
    string Noun,
    AttributeKind? Kind,
    double? Low,
    double? High,
    Measure Rating,
    int Bakes,
    bool IsJudged,
    Attempt<JudgesAgreement> Agreement)
{
    /// <summary>Whether the scores deserve a model.</summary>
    public AgreementVerdict Verdict => Agreement.Match(judges => judges.Verdict, _ => AgreementVerdict.Unknown);
}
