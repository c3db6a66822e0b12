namespace BakeInsights.Inference;

/// <summary>The chance that a t test finds a difference, and the rows that it takes.</summary>
/// <remarks>Cohen (1988), Statistical Power Analysis for the Behavioral Sciences, 2nd ed., chapter 2.</remarks>
public sealed record PowerOfT
{
    /// <summary>States the test.</summary>
    /// <param name="layout">What is compared.</param>
    /// <param name="standardDeviation">The spread of a row, or of the differences of pairs, above 0.</param>
    /// <param name="significance">The p value at which a difference is called found, between 0 and 1.</param>
    /// <param name="isTwoSided">Whether differences to both sides are looked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">Spread or significance is out of range.</exception>
    public PowerOfT(TTestLayout layout, double standardDeviation, double significance, bool isTwoSided)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardDeviation);
        PowerSearch.RefuseShare(significance, nameof(significance));
        (Layout, StandardDeviation, Significance, IsTwoSided) = (layout, standardDeviation, significance, isTwoSided);
    }

    /// <summary>What is compared.</summary>
    public TTestLayout Layout { get; }

    /// <summary>The spread of a row, or of the differences of pairs.</summary>
    public double StandardDeviation { get; }

    /// <summary>The p value at which a difference is called found.</summary>
    public double Significance { get; }

    /// <summary>Whether differences to both sides are looked for.</summary>
    public bool IsTwoSided { get; }

    /// <summary>
    /// Whether a difference found to the wrong side counts as found too, in a two-sided test; it matters only where the
    /// power is next to the significance.
    /// </summary>
    public bool CountsWrongSide { get; init; }

    /// <summary>The chance of finding a true difference.</summary>
    /// <param name="rows">The rows (of one group, or pairs), above 1; a fraction is taken as such.</param>
    /// <param name="difference">The true difference, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">Rows or difference is out of range.</exception>
    public double Power(double rows, double difference)
    {
        if (!(rows > 1))
        {
            throw new ArgumentOutOfRangeException(nameof(rows), rows, "A t test needs more than one row.");
        }

        ArgumentOutOfRangeException.ThrowIfNegative(difference);
        var samples = Layout == TTestLayout.TwoGroups ? 2 : 1;
        var df = (rows - 1) * samples;
        var effect = Math.Sqrt(rows / samples) * difference / StandardDeviation;
        var critical = Tails.StudentQuantile(1 - (IsTwoSided ? Significance : 2 * Significance), df);
        var right = 1 - NoncentralTails.StudentBelow(critical, df, effect);
        return IsTwoSided && CountsWrongSide ? right + NoncentralTails.StudentBelow(-critical, df, effect) : right;
    }

    /// <summary>The rows that a power takes, as a fraction; round up.</summary>
    /// <param name="power">The power, between the significance and 1.</param>
    /// <param name="difference">The true difference, above 0.</param>
    /// <returns>The rows, or the problem that more than a billion would be needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Power or difference is out of range.</exception>
    public Attempt<double> RowsNeeded(double power, double difference)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(difference);
        PowerSearch.RefuseShare(power, nameof(power));
        return PowerSearch.Rows(rows => Power(rows, difference), power);
    }

    /// <summary>The difference that is found with a power.</summary>
    /// <param name="rows">The rows (of one group, or pairs), above 1.</param>
    /// <param name="power">The power, between the significance and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Rows or power is out of range.</exception>
    public double DifferenceFound(double rows, double power)
    {
        PowerSearch.RefuseShare(power, nameof(power));
        return Power(rows, 0) >= power ? 0 : PowerSearch.Solve(d => Power(rows, d), power, 0, StandardDeviation);
    }
}
