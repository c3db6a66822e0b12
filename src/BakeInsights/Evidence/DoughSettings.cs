namespace BakeInsights;

/// <summary>What a baker sets when making a dough, by measure; what is not given is not known.</summary>
public sealed class DoughSettings
{
    internal static readonly IReadOnlyList<Measure> Settable =
        [Measures.DoughTemperature, Measures.Hydration, Measures.Yeast, Measures.Salt, Measures.Sugar, Measures.ProofTime];

    private readonly IReadOnlyDictionary<Measure, double> _values;

    private DoughSettings(IReadOnlyDictionary<Measure, double> values) => _values = values;

    /// <summary>The settings that are known.</summary>
    public IReadOnlyCollection<Measure> Known => [.. Settable.Where(_values.ContainsKey)];

    /// <summary>The value of a setting in its canonical unit, or null when it is not known.</summary>
    public double? this[Measure measure] => _values.TryGetValue(measure, out var value) ? value : null;

    /// <summary>The median of each setting over the bakes that have it.</summary>
    public static DoughSettings MedianOf(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        return MiddleOf(SettingRange.Of(bakes));
    }

    /// <summary>The middle of each range.</summary>
    internal static DoughSettings MiddleOf(IEnumerable<SettingRange> ranges) =>
        new(ranges.ToDictionary(range => range.Measure, range => range.Middle));

    /// <summary>The same dough with one setting changed.</summary>
    public DoughSettings With(Measure measure, double value) =>
        new(new Dictionary<Measure, double>(_values) { [measure] = value });
}
