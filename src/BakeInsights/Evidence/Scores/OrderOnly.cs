using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// Looks at the scores as an order only, by the cumulative logit with judges as random shifts, to see whether equal
/// steps of the scale matter to an answer.
/// </summary>
internal static class OrderOnly
{
    /// <summary>
    /// Whether the scores as an order lean the other way than the answer. Only the direction is used: the model takes
    /// each score as independent given its judge, and those of one bake are not.
    /// </summary>
    public static bool LeansOtherWay(FittedModel model, ScoreCause cause, ScoreTable table, double effect)
    {
        (Bake Bake, string Judge, double Score)[] rows =
        [
            .. from bake in model.Selection.Bakes
               from given in table.RowOf(bake)!.Scores
               select (bake, given.Judge ?? "", given.Score),
        ];
        var design = new Design([.. model.Selection.Terms.Select(term => new DesignColumn(
            term.Name, [.. rows.Select(row => term.ValueOf(row.Bake)!.Value)]))]);
        double[] scores = [.. rows.Select(row => row.Score)];
        string[] judges = [.. rows.Select(row => row.Judge)];
        var fit = judges.Distinct().Skip(1).Any()
            ? CumulativeLogit.Fit(design, scores, judges)
            : CumulativeLogit.Fit(design, scores);
        return fit.Match(
            found => Math.Sign(found.Terms.Single(term => term.Name == cause.Name).Estimate) == -Math.Sign(effect),
            _ => false);
    }
}
