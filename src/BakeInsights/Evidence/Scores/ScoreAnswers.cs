namespace BakeInsights;

/// <summary>
/// What moved the scores of crumb, crust, flavour and whatever else judges scored: first how far the judges agree, then,
/// where the scores deserve it, the causes. The bake is the unit; docs/scores.md gives the rules.
/// </summary>
public sealed class ScoreAnswers
{
    private ScoreAnswers(IReadOnlyList<AttributeScores> attributes, IReadOnlyList<Finding> answers, IReadOnlyList<OpenQuestion> open)
    {
        Attributes = attributes;
        Answers = answers;
        Open = open;
    }

    /// <summary>The attributes that were scored: crumb, crust, flavour, then the others by name.</summary>
    public IReadOnlyList<AttributeScores> Attributes { get; }

    /// <summary>
    /// The answers, not yet judged (<see cref="FindingFamily.Judge"/>), effects in points of the score. Of an attribute
    /// that is best in the middle they say what moves it up or down its scale, not what is better.
    /// </summary>
    public IReadOnlyList<Finding> Answers { get; }

    /// <summary>The questions about scored attributes that the journal can't answer.</summary>
    public IReadOnlyList<OpenQuestion> Open { get; }

    /// <summary>The answers of a whole journal.</summary>
    public static ScoreAnswers Of(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return Of(journal.Bakes, journal.Scores, journal.Attributes);
    }

    /// <summary>The answers of some bakes.</summary>
    /// <param name="bakes">The bakes, such as those of one month.</param>
    /// <param name="scores">The judges' scores; those of other bakes don't count.</param>
    /// <param name="attributes">The scales.</param>
    public static ScoreAnswers Of(IReadOnlyList<Bake> bakes, IReadOnlyList<Score> scores, IReadOnlyList<ScoredAttribute> attributes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(scores);
        ArgumentNullException.ThrowIfNull(attributes);
        List<AttributeScores> found = [];
        List<Finding> answers = [];
        List<OpenQuestion> open = [];
        foreach (var table in ScoreTables.Of(bakes, scores, attributes).Where(table => table.Rows.Count > 0))
        {
            var agreement = AgreementOfJudges.Of(table);
            found.Add(new AttributeScores(
                table.Name, table.Noun, table.Kind, table.Scale?.Low, table.Scale?.High, table.Measure, table.Rows.Count, table.IsJudged, agreement));
            var (answered, left) = new ScoreQuestions(table, agreement, bakes).Ask();
            answers.AddRange(answered);
            open.AddRange(left);
        }

        return new ScoreAnswers(found, answers, open);
    }
}
