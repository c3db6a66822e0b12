using System.Globalization;

namespace BakeInsights;

/// <summary>The levels of a column among some bakes: its numbers in order, or its texts whatever their letter case.</summary>
internal sealed class ColumnLevels
{
    private readonly ColumnCells _cells;
    private readonly bool _isNumeric;
    private readonly Dictionary<string, string> _names;
    private readonly Dictionary<string, int> _counts;

    private ColumnLevels(IReadOnlyList<Bake> bakes, ColumnCells cells)
    {
        _cells = cells;
        _isNumeric = bakes.All(bake => cells.Number(bake) is not null);
        var spellings = bakes.GroupBy(KeyOf).Select(same => (same.Key, Name: same.Select(SpellingOf).Order(StringComparer.Ordinal).First(), Count: same.Count()));
        var levels = spellings.ToList();
        _names = levels.ToDictionary(level => level.Key, level => level.Name);
        _counts = levels.ToDictionary(level => level.Name, level => level.Count);
        Names = _isNumeric
            ? [.. _counts.Keys.OrderBy(name => double.Parse(name, CultureInfo.InvariantCulture))]
            : [.. _counts.Keys.Order(StringComparer.Ordinal)];
    }

    /// <summary>The levels' names, numbers in order of size and texts in ordinal order.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Finds the levels. Bakes without a cell have to be left out before.</summary>
    public static ColumnLevels Of(IReadOnlyList<Bake> bakes, ColumnCells cells) => new(bakes, cells);

    /// <summary>The level of a bake.</summary>
    public string NameOf(Bake bake) => _names[KeyOf(bake)];

    /// <summary>A level as a number; null where levels are texts.</summary>
    public double? NumberOf(int level) => _isNumeric ? double.Parse(Names[level], CultureInfo.InvariantCulture) : null;

    /// <summary>How many of the bakes have a level.</summary>
    public int Count(int level) => _counts[Names[level]];

    private string KeyOf(Bake bake) => SpellingOf(bake).ToUpperInvariant();

    private string SpellingOf(Bake bake) => _isNumeric
        ? (_cells.Number(bake)!.Value + 0.0).ToString("R", CultureInfo.InvariantCulture)
        : _cells.Text(bake)!;
}
