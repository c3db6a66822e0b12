namespace BakeInsights;

/// <summary>How cups of one ingredient scatter about the weight that is taken for them.</summary>
/// <remarks>
/// The error is of the Berkson kind: a cup is written down at its nominal weight, and what is really in it scatters
/// about that. One part is shared by all cups of a bake (the person's hand, the way of filling), one is each cup's own
/// and averages out over several.
/// </remarks>
/// <param name="SharedRelativeSd">The shared part's standard deviation, as a share of the weight: 0.04 is 4 %.</param>
/// <param name="OwnRelativeSd">The standard deviation of a cup about the others of its bake, as a share of the weight.</param>
public sealed record CupSpread(double SharedRelativeSd, double OwnRelativeSd)
{
    /// <summary>The relative standard deviation of what a number of cups weighs together.</summary>
    /// <param name="cups">How many, more than none; parts of a cup count as parts.</param>
    public double RelativeSd(double cups)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cups);
        return Math.Sqrt((SharedRelativeSd * SharedRelativeSd) + (OwnRelativeSd * OwnRelativeSd / cups));
    }
}
