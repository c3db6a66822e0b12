namespace BakeInsights;

/// <summary>Collects the names of bakers and judges while rows go by, and gives each its label.</summary>
internal sealed class NameCollector
{
    // A journal of one file may have its judge in a column of its own.
    private const string JudgeColumn = "judge";

    private readonly Dictionary<string, string> _labels = new(StringComparer.OrdinalIgnoreCase);
    private int _bakers;
    private int _judges;

    /// <summary>Takes the names that a row has.</summary>
    public void Add(RowValues row)
    {
        AddBaker(row.Texts[BakeColumns.Baker.Index]);
        foreach (var (column, text) in row.OwnColumns)
        {
            if (column.Equals(JudgeColumn, StringComparison.OrdinalIgnoreCase))
            {
                AddJudge(text);
            }
        }
    }

    /// <summary>Takes the name of somebody who bakes.</summary>
    public void AddBaker(string? name)
    {
        if (name is not null && _labels.TryAdd(name, "baker " + Letters(_bakers)))
        {
            _bakers++;
        }
    }

    /// <summary>Takes the name of somebody who judges; a baker who judges stays a baker.</summary>
    public void AddJudge(string? name)
    {
        if (name is not null && _labels.TryAdd(name, "judge " + Letters(_judges)))
        {
            _judges++;
        }
    }

    /// <summary>The labels of all names so far.</summary>
    public HiddenNames Finish() => new(_labels);

    // A to Z, then AA, AB and so on.
    private static string Letters(int place) =>
        (place >= 26 ? Letters((place / 26) - 1) : "") + (char)('A' + (place % 26));
}
