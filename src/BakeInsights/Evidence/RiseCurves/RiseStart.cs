namespace BakeInsights;

/// <summary>Where the search for a rise curve begins, found from the readings.</summary>
internal static class RiseStart
{
    /// <summary>
    /// Ceilings to begin with, in highest rises seen: a rise that has ended, and one that has half its way to go.
    /// Common practice, no source.
    /// </summary>
    private static readonly double[] Ceilings = [1.02, 2];

    /// <summary>Starts in the order of the model's parameters, for sizes that are more than 0 and have risen.</summary>
    /// <remarks>
    /// The first reading is the start, the steepest chord over two steps the steepest rise, and the lag is where that
    /// chord's tangent leaves the start.
    /// </remarks>
    public static IEnumerable<double[]> Of(IReadOnlyList<double> minutes, IReadOnlyList<double> sizes)
    {
        var first = sizes[0];
        double Rise(int i) => (sizes[i] / first) - 1;
        var chords = Enumerable.Range(0, minutes.Count - 2)
            .Where(i => minutes[i + 2] > minutes[i])
            .Select(i => (
                Slope: (Rise(i + 2) - Rise(i)) / (minutes[i + 2] - minutes[i]),
                Minute: (minutes[i] + minutes[i + 2]) / 2,
                Rise: (Rise(i) + Rise(i + 2)) / 2));
        var (slope, minute, rise) = chords.MaxBy(chord => chord.Slope);
        var lag = minute - (rise / slope);
        return Ceilings.Select(share => new[] { first, Math.Log(share * (sizes.Max() / first - 1)), Math.Log(slope), lag });
    }
}
