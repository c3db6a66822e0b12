using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>One series of a <see cref="LessonChart"/>: marks, marks with intervals, or a line.</summary>
public sealed record LessonSeries
{
    private LessonSeries(string name, bool isLine, IReadOnlyList<double> x, IReadOnlyList<double> y, IReadOnlyList<Interval> spans)
    {
        if (x.Count != y.Count || (spans.Count > 0 && spans.Count != x.Count))
        {
            throw new ArgumentException($"The series '{name}' has {x.Count} values across, {y.Count} up and {spans.Count} intervals.", nameof(y));
        }

        Name = name;
        IsLine = isLine;
        X = x;
        Y = y;
        Spans = spans;
    }

    /// <summary>What the legend calls it.</summary>
    public string Name { get; }

    /// <summary>Whether a line goes through the values, in their order.</summary>
    public bool IsLine { get; }

    /// <summary>The values across.</summary>
    public IReadOnlyList<double> X { get; }

    /// <summary>The values up.</summary>
    public IReadOnlyList<double> Y { get; }

    /// <summary>The interval of each value up; empty without.</summary>
    public IReadOnlyList<Interval> Spans { get; }

    /// <summary>A mark for each value.</summary>
    /// <exception cref="ArgumentException">The lists differ in length.</exception>
    public static LessonSeries Marks(string name, IEnumerable<double> x, IEnumerable<double> y) => new(name, false, [.. x], [.. y], []);

    /// <summary>A line through the values.</summary>
    /// <exception cref="ArgumentException">The lists differ in length.</exception>
    public static LessonSeries Line(string name, IEnumerable<double> x, IEnumerable<double> y) => new(name, true, [.. x], [.. y], []);

    /// <summary>A mark for each value, with its interval as a stroke.</summary>
    /// <exception cref="ArgumentException">The lists differ in length.</exception>
    public static LessonSeries Intervals(string name, IEnumerable<double> x, IEnumerable<double> y, IEnumerable<Interval> spans) =>
        new(name, false, [.. x], [.. y], [.. spans]);
}
