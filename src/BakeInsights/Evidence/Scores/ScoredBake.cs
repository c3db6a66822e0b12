namespace BakeInsights;

/// <summary>A bake with all scores of one attribute.</summary>
/// <param name="Bake">The bake.</param>
/// <param name="Scores">The scores as given, with their judges; a judge may be unnamed.</param>
internal sealed record ScoredBake(Bake Bake, IReadOnlyList<(string? Judge, double Score)> Scores)
{
    // No judge can be named so.
    private const char Between = '\n';

    /// <summary>Each judge's score, the mean over the loaves: loaves of one bake are not bakes of their own.</summary>
    public IReadOnlyList<(string? Judge, double Score)> ByJudge { get; } =
    [
        .. Scores.GroupBy(score => score.Judge, score => score.Score)
            .Select(given => (given.Key, given.Average()))
            .OrderBy(given => given.Key, StringComparer.Ordinal),
    ];

    /// <summary>The bake's rating: the mean over its judges.</summary>
    public double Rating => ByJudge.Average(given => given.Score);

    /// <summary>Who judged it: ratings by the same judges are comparable whatever the judges' severity.</summary>
    public string Panel => string.Join(Between, ByJudge.Select(given => given.Judge));

    /// <summary>A judge's score, or null.</summary>
    public double? By(string judge)
    {
        foreach (var given in ByJudge)
        {
            if (given.Judge == judge)
            {
                return given.Score;
            }
        }

        return null;
    }
}
