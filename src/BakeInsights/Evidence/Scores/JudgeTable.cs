namespace BakeInsights;

/// <summary>The judges who can be compared, and the bakes that all of them scored.</summary>
/// <param name="Judges">The judges.</param>
/// <param name="Rows">The bakes.</param>
/// <param name="Points">Each named judge's scores beside the others'.</param>
internal sealed record JudgeTable(IReadOnlyList<string> Judges, IReadOnlyList<ScoredBake> Rows, IReadOnlyList<JudgePoint> Points)
{
    // Our own choice: on fewer bakes an interval of agreement spans nearly all there is.
    public const int LeastBakes = 5;

    public IReadOnlyList<Bake> Bakes => [.. Rows.Select(row => row.Bake)];

    public IReadOnlyList<JudgeStanding> Standings =>
    [
        .. Points.GroupBy(point => point.Judge)
            .Select(own => new JudgeStanding(own.Key, own.Count(), own.Average(point => point.Own - point.Others)))
            .OrderBy(standing => standing.Judge, StringComparer.Ordinal),
    ];

    /// <summary>
    /// The judges and bakes that make the largest full table, taking judges by how many bakes they scored; null when
    /// there are no two judges with bakes enough in common.
    /// </summary>
    public static JudgeTable? Of(ScoreTable table)
    {
        string[] judges =
        [
            .. table.Rows.SelectMany(row => row.ByJudge).Where(given => given.Judge is not null)
                .CountBy(given => given.Judge!)
                .OrderByDescending(count => count.Value)
                .ThenBy(count => count.Key, StringComparer.Ordinal)
                .Select(count => count.Key),
        ];
        JudgeTable? best = null;
        for (var count = 2; count <= judges.Length; count++)
        {
            var these = judges[..count];
            ScoredBake[] rows = [.. table.Rows.Where(row => Array.TrueForAll(these, judge => row.By(judge) is not null))];
            if (rows.Length >= LeastBakes && rows.Length * count > (best is null ? 0 : best.Rows.Count * best.Judges.Count))
            {
                best = new JudgeTable([.. these.Order(StringComparer.Ordinal)], rows, []);
            }
        }

        return best is null ? null : best with { Points = [.. table.Rows.SelectMany(PointsOf)] };
    }

    public double[,] Ratings()
    {
        var ratings = new double[Rows.Count, Judges.Count];
        for (var i = 0; i < Rows.Count; i++)
        {
            for (var j = 0; j < Judges.Count; j++)
            {
                ratings[i, j] = Rows[i].By(Judges[j])!.Value;
            }
        }

        return ratings;
    }

    private static IEnumerable<JudgePoint> PointsOf(ScoredBake row)
    {
        (string? Judge, double Score)[] named = [.. row.ByJudge.Where(given => given.Judge is not null)];
        return named.Length < 2
            ? []
            : named.Select(own => new JudgePoint(
                own.Judge!, row.Bake, own.Score, named.Where(other => other.Judge != own.Judge).Average(other => other.Score)));
    }
}
