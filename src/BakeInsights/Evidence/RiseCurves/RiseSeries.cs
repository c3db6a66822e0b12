using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>The sizes of one rising dough by minute, as they go into a fit.</summary>
/// <param name="Minutes">Minutes since the stage began, in order, of the readings kept.</param>
/// <param name="Sizes">Their heights in mm or volumes in mL, all in one of the two, more than 0.</param>
/// <param name="IsHeight">Whether the sizes are heights: then the vessel counts as straight-sided.</param>
/// <param name="CollapsedCount">How many readings after the highest were cut off, because the dough collapsed.</param>
/// <param name="UnsizedCount">How many readings were left out because they don't have the size that the others have.</param>
public sealed record RiseSeries(
    ImmutableArray<double> Minutes, ImmutableArray<double> Sizes, bool IsHeight, int CollapsedCount, int UnsizedCount)
{
    /// <summary>Minutes of the readings that were cut off after a collapse, in order.</summary>
    public ImmutableArray<double> CutMinutes { get; private init; } = [];

    /// <summary>Their sizes.</summary>
    public ImmutableArray<double> CutSizes { get; private init; } = [];

    /// <summary>
    /// The readings of one bake and stage. Where some have heights and some volumes, the size that more of them have is
    /// taken, volumes when both are as many.
    /// </summary>
    public static RiseSeries Of(IReadOnlyList<RiseReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var isHeight = readings.Count(r => r.HeightMm is not null) > readings.Count(r => r.VolumeMl is not null);
        var sized = readings
            .Select(r => (r.Minutes, Size: isHeight ? r.HeightMm : r.VolumeMl))
            .Where(r => r.Size is > 0)
            .Select(r => (r.Minutes, r.Size!.Value))
            .ToList();
        return Cut(sized, isHeight, readings.Count - sized.Count);
    }

    /// <summary>Sizes in any one unit, as they were read.</summary>
    /// <param name="minutes">Minutes since the stage began, finite, in any order.</param>
    /// <param name="sizes">As many sizes, finite and more than 0.</param>
    /// <param name="isHeight">Whether they are heights.</param>
    /// <exception cref="ArgumentException">There aren't as many sizes as minutes, or one of them can't be.</exception>
    public static RiseSeries Of(IReadOnlyList<double> minutes, IReadOnlyList<double> sizes, bool isHeight)
    {
        ArgumentNullException.ThrowIfNull(minutes);
        ArgumentNullException.ThrowIfNull(sizes);
        if (minutes.Count != sizes.Count)
        {
            throw new ArgumentException($"There are {minutes.Count} minutes and {sizes.Count} sizes.", nameof(sizes));
        }

        if (!minutes.All(double.IsFinite) || !sizes.All(size => double.IsFinite(size) && size > 0))
        {
            throw new ArgumentException("Minutes are finite numbers, and sizes are more than 0.", nameof(sizes));
        }

        return Cut([.. minutes.Zip(sizes)], isHeight, 0);
    }

    private static RiseSeries Cut(IReadOnlyList<(double Minutes, double Size)> readings, bool isHeight, int unsized)
    {
        // A stable order: two readings of one minute stay as they were written.
        var ordered = readings.OrderBy(reading => reading.Minutes).ToList();
        var kept = RiseCollapse.Kept([.. ordered.Select(reading => reading.Size)]);
        return new RiseSeries(
            [.. ordered.Take(kept).Select(reading => reading.Minutes)],
            [.. ordered.Take(kept).Select(reading => reading.Size)],
            isHeight,
            ordered.Count - kept,
            unsized)
        {
            CutMinutes = [.. ordered.Skip(kept).Select(reading => reading.Minutes)],
            CutSizes = [.. ordered.Skip(kept).Select(reading => reading.Size)],
        };
    }
}
