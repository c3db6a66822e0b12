namespace BakeInsights;

/// <summary>Sorts a journal's scores by attribute.</summary>
internal static class ScoreTables
{
    private static readonly QuantityColumn[] OwnColumns = [BakeColumns.CrumbScore, BakeColumns.CrustScore, BakeColumns.FlavourScore];

    /// <summary>
    /// The tables: crumb, crust and flavour first, then the other attributes by name. A column of the bakes counts where
    /// no judge scored that attribute.
    /// </summary>
    public static IReadOnlyList<ScoreTable> Of(
        IReadOnlyList<Bake> bakes, IReadOnlyList<Score> scores, IReadOnlyList<ScoredAttribute> attributes)
    {
        var known = bakes.Select(bake => bake.Id).ToHashSet(StringComparer.Ordinal);
        var judged = scores.Where(score => known.Contains(score.BakeId))
            .GroupBy(score => ScoreTable.NameOf(score.Attribute), StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.ToLookup(score => score.BakeId, StringComparer.Ordinal), StringComparer.Ordinal);
        var scales = attributes.GroupBy(attribute => ScoreTable.NameOf(attribute.Name), StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);

        List<ScoreTable> tables = [];
        foreach (var column in OwnColumns)
        {
            tables.Add(judged.Remove(column.Name, out var given)
                ? Judged(column.Name, given, bakes, scales)
                : AsLogged(column, bakes, scales));
        }

        tables.AddRange(judged.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => Judged(pair.Key, pair.Value, bakes, scales)));
        return tables;
    }

    private static ScoreTable Judged(
        string name, ILookup<string, Score> given, IReadOnlyList<Bake> bakes, Dictionary<string, ScoredAttribute> scales)
    {
        var scale = scales.GetValueOrDefault(name);
        return new ScoreTable(name, scale, scale?.Kind, true,
        [
            .. bakes.Where(bake => given.Contains(bake.Id))
                .Select(bake => new ScoredBake(bake, [.. given[bake.Id].Select(score => (score.Judge, score.Value))])),
        ]);
    }

    private static ScoreTable AsLogged(QuantityColumn column, IReadOnlyList<Bake> bakes, Dictionary<string, ScoredAttribute> scales)
    {
        // A mark in the journal of bakes is a mark: more is better, unless attributes.csv says otherwise.
        var scale = scales.GetValueOrDefault(column.Name);
        return new ScoreTable(column.Name, scale, scale?.Kind ?? AttributeKind.MoreIsBetter, false,
        [
            .. bakes.Where(bake => bake[column] is not null)
                .Select(bake => new ScoredBake(bake, [((string?)null, bake[column]!.Value)])),
        ]);
    }
}
