using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The bakes of two ways.</summary>
/// <param name="Cells">The column that tells them apart.</param>
/// <param name="First">The first way as the journal spells it.</param>
/// <param name="Second">The second way.</param>
/// <param name="OfFirst">Bakes of the first way.</param>
/// <param name="OfSecond">Bakes of the second way.</param>
/// <param name="Both">Bakes of either, in the journal's order.</param>
internal sealed record WaysSplit(
    ColumnCells Cells, string First, string Second, IReadOnlyList<Bake> OfFirst, IReadOnlyList<Bake> OfSecond, IReadOnlyList<Bake> Both)
{
    // A sentence holds so many names.
    private const int MostNamed = 8;

    private static readonly string[] BlockColumns =
        [BakeColumns.BakedOn.Name, BakeColumns.Group.Name, BakeColumns.Baker.Name, BakeColumns.FlourKind.Name];

    // As for the groups that a model lets differ by a level of their own.
    private const int MostGroups = 12;

    /// <summary>Whether the ways are formulas.</summary>
    public bool IsOfFormulas => Cells.Name == BakeColumns.Formula.Name;

    public static Attempt<WaysSplit> Of(IReadOnlyList<Bake> bakes, WaysWish wish)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(wish.First);
        ArgumentException.ThrowIfNullOrWhiteSpace(wish.Second);
        if (IsSame(wish.First, wish.Second))
        {
            throw new ArgumentException("The two ways are one.", nameof(wish));
        }

        if (!ColumnCells.In(bakes, wish.Column).TryGet(out var cells, out var problem))
        {
            return problem;
        }

        IReadOnlyList<Bake> With(string way) => [.. bakes.Where(bake => cells.Text(bake) is { } text && IsSame(text, way))];
        var (first, second) = (With(wish.First), With(wish.Second));
        foreach (var (way, found) in new[] { (wish.First, first), (wish.Second, second) })
        {
            if (found.Count == 0)
            {
                return NotThere(bakes, cells, way);
            }
        }

        return new WaysSplit(
            cells, cells.Text(first[0])!, cells.Text(second[0])!, first, second, [.. bakes.Where(bake => first.Contains(bake) || second.Contains(bake))]);
    }

    /// <summary>The columns within which the two can be compared, the most important first.</summary>
    public IReadOnlyList<string> Blocks(IReadOnlyList<Bake> able) => [.. BlockColumns.Where(name => name != Cells.Name && CanBlock(able, name))];

    /// <summary>How many values of a column had bakes of both ways, and how many had any; null where a bake lacks it.</summary>
    public (int Shared, int All)? Shared(IReadOnlyList<Bake> able, string column)
    {
        var block = ColumnCells.Named(column);
        if (able.Count == 0 || able.Any(bake => block.Text(bake) is null))
        {
            return null;
        }

        var groups = able.GroupBy(block.Text).ToList();
        return (groups.Count(group => group.Any(IsFirst) && !group.All(IsFirst)), groups.Count);
    }

    /// <summary>Whether a bake is of the first way.</summary>
    public bool IsFirst(Bake bake) => IsSame(Cells.Text(bake)!, First);

    // Days: only where every day had both, for a day with one of them would drop out. Others: two with both, none alone.
    private bool CanBlock(IReadOnlyList<Bake> able, string name)
    {
        if (Shared(able, name) is not var (shared, all) || shared < 2)
        {
            return false;
        }

        var cells = ColumnCells.Named(name);
        return name == BakeColumns.BakedOn.Name
            ? shared == all
            : all <= MostGroups && able.GroupBy(cells.Text).All(group => group.Count() > 1);
    }

    private static bool IsSame(string one, string other) => one.Trim().Equals(other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static FitProblem NotThere(IReadOnlyList<Bake> bakes, ColumnCells cells, string way)
    {
        var there = bakes.Select(cells.Text).OfType<string>().GroupBy(text => text, StringComparer.OrdinalIgnoreCase)
            .OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).Select(group => group.Key).ToList();
        var named = string.Join(", ", there.Take(MostNamed)) + (there.Count > MostNamed ? $" and {there.Count - MostNamed} more" : "");
        return new FitProblem(
            FitProblemKind.TooFewGroups,
            [cells.Name],
            $"No bake has {way} in column {cells.Name}.",
            there.Count == 1 ? $"All that say anything have {named}." : $"Name two of these: {named}.");
    }
}
