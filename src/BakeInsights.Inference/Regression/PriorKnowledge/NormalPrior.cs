namespace BakeInsights.Inference;

/// <summary>
/// What is known of one coefficient before the data: a normal distribution in the coefficient's own unit.
/// </summary>
public sealed record NormalPrior
{
    /// <summary>States a prior.</summary>
    /// <param name="column">The column of the design whose coefficient it is.</param>
    /// <param name="mean">The best guess, in response units per unit of the column.</param>
    /// <param name="standardDeviation">How sure it is: two thirds of the belief lie within this of the mean.</param>
    /// <exception cref="ArgumentException">
    /// The name is blank, the mean isn't finite, or the standard deviation isn't finite and more than 0.
    /// </exception>
    public NormalPrior(string column, double mean, double standardDeviation)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(column);
        if (!double.IsFinite(mean) || !double.IsFinite(standardDeviation) || standardDeviation <= 0)
        {
            throw new ArgumentException(
                $"The prior of {column} needs a finite mean and a finite standard deviation above 0.", nameof(mean));
        }

        (Column, Mean, StandardDeviation) = (column, mean, standardDeviation);
    }

    /// <summary>The column of the design whose coefficient it is.</summary>
    public string Column { get; }

    /// <summary>The best guess.</summary>
    public double Mean { get; }

    /// <summary>The standard deviation about it.</summary>
    public double StandardDeviation { get; }
}
