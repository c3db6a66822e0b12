namespace BakeInsights.Inference;

/// <summary>What is known of the residual spread before the data: its logarithm has a normal distribution.</summary>
public sealed record SpreadPrior
{
    /// <summary>States a prior.</summary>
    /// <param name="median">The best guess of the residual standard deviation, in the response's unit.</param>
    /// <param name="factor">
    /// How sure it is: two thirds of the belief lie between the median divided by this and the median times this.
    /// </param>
    /// <exception cref="ArgumentException">The median isn't finite and above 0, or the factor isn't finite and above 1.</exception>
    public SpreadPrior(double median, double factor)
    {
        if (!double.IsFinite(median) || median <= 0 || !double.IsFinite(factor) || factor <= 1)
        {
            throw new ArgumentException("A spread needs a finite median above 0 and a finite factor above 1.", nameof(median));
        }

        (Median, Factor) = (median, factor);
    }

    /// <summary>The best guess.</summary>
    public double Median { get; }

    /// <summary>The factor to either side of it that two thirds of the belief lie within.</summary>
    public double Factor { get; }

    /// <summary>The logarithm of the density of ln spread, up to a constant.</summary>
    internal double LogDensity(double logSpread)
    {
        var z = (logSpread - Math.Log(Median)) / Math.Log(Factor);
        return -z * z / 2;
    }

    /// <summary>The range of ln spread that is looked at: beyond eight standard deviations nothing is believed.</summary>
    internal Interval Range()
    {
        const double reach = 8;
        return Interval.Around(Math.Log(Median), reach * Math.Log(Factor));
    }
}
