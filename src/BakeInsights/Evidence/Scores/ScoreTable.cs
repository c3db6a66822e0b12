using System.Globalization;

namespace BakeInsights;

/// <summary>All scores of one attribute, by bake.</summary>
internal sealed class ScoreTable
{
    private const string Ending = "_score";

    private readonly Dictionary<string, ScoredBake> _byId;

    public ScoreTable(string name, ScoredAttribute? scale, AttributeKind? kind, bool isJudged, IReadOnlyList<ScoredBake> rows)
    {
        (Name, Scale, Kind, IsJudged, Rows) = (name, scale, kind, isJudged, rows);
        _byId = rows.ToDictionary(row => row.Bake.Id, StringComparer.Ordinal);
        Noun = name[..^Ending.Length].Replace('_', ' ') is { Length: > 0 } words ? words : "loaf";
        var title = char.ToUpper(Noun[0], CultureInfo.InvariantCulture) + Noun[1..] + " score";
        Measure = new Measure(
            name, title, Dimension.Number, isJudged ? "mean over judges of their mean over loaves" : name, "as logged",
            bake => RowOf(bake)?.Rating);
        double[] values = [.. rows.SelectMany(row => row.Scores).Select(score => score.Score).Distinct().Order()];
        Step = values.Length < 2 ? 0 : values.Zip(values.Skip(1), (low, high) => high - low).Min();
    }

    /// <summary>The attribute's name for programs, such as <c>crumb_score</c>.</summary>
    public string Name { get; }

    /// <summary>What was scored, in words.</summary>
    public string Noun { get; }

    /// <summary>The scale; null where the journal doesn't give it.</summary>
    public ScoredAttribute? Scale { get; }

    /// <summary>Which score is best; null where the journal doesn't say.</summary>
    public AttributeKind? Kind { get; }

    /// <summary>Whether the scores are from <c>scores.csv</c> rather than from a column of the bakes.</summary>
    public bool IsJudged { get; }

    /// <summary>The bakes that have scores, in the order of the journal.</summary>
    public IReadOnlyList<ScoredBake> Rows { get; }

    /// <summary>The rating of a bake.</summary>
    public Measure Measure { get; }

    /// <summary>The smallest difference between two scores that were given; 0 when all are one.</summary>
    public double Step { get; }

    /// <summary>
    /// The least standard deviation of a rating that can be believed: a score given in steps is off by up to half a
    /// step, evenly, which is a standard deviation of step / sqrt(12) (Sheppard 1898, Proceedings of the London
    /// Mathematical Society 29, 353-380); a mean of scores is off by less.
    /// </summary>
    public double RoundingSd => Rows.Count == 0 ? 0 : Step / Math.Sqrt(12.0 * Rows.Min(row => row.Scores.Count));

    /// <summary>The scores of a bake, or null.</summary>
    public ScoredBake? RowOf(Bake bake) => _byId.GetValueOrDefault(bake.Id);

    /// <summary>The name for programs of an attribute as a journal writes it: "Crumb" is <c>crumb_score</c>.</summary>
    public static string NameOf(string attribute)
    {
        var plain = string.Concat(attribute.Trim().ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : '_'));
        return plain.EndsWith(Ending, StringComparison.Ordinal) ? plain : plain + Ending;
    }
}
