namespace BakeInsights;

/// <summary>Gathers the range of one setting, value by value.</summary>
internal sealed class RunningRange(Measure measure)
{
    private double _least = double.PositiveInfinity;
    private double _most = double.NegativeInfinity;
    private double _sum;
    private long _count;

    public void Add(double value)
    {
        _least = Math.Min(_least, value);
        _most = Math.Max(_most, value);
        _sum += value;
        _count++;
    }

    /// <summary>The range, or null without a value.</summary>
    public SettingRange? Range => _count == 0 ? null : new(measure, _least, _sum / _count, _most);
}
