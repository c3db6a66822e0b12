namespace BakeInsights.Inference;

/// <summary>The chance that an F test finds differences among groups, and the rows that it takes.</summary>
/// <remarks>Cohen (1988), Statistical Power Analysis for the Behavioral Sciences, 2nd ed., chapter 8.</remarks>
public static class PowerOfF
{
    /// <summary>The chance that a partial F test finds effects.</summary>
    /// <param name="extraDegreesOfFreedom">The tested columns, above 0.</param>
    /// <param name="residualDegreesOfFreedom">What the rows leave over, above 0.</param>
    /// <param name="noncentrality">
    /// The tested columns' true sum of squares over the residual variance, not negative.
    /// </param>
    /// <param name="significance">The p value at which effects are called found, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static double Power(
        double extraDegreesOfFreedom, double residualDegreesOfFreedom, double noncentrality, double significance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(extraDegreesOfFreedom);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(residualDegreesOfFreedom);
        ArgumentOutOfRangeException.ThrowIfNegative(noncentrality);
        PowerSearch.RefuseShare(significance, nameof(significance));
        var critical = FisherQuantile.Of(significance, extraDegreesOfFreedom, residualDegreesOfFreedom);
        return NoncentralTails.FisherAbove(critical, extraDegreesOfFreedom, residualDegreesOfFreedom, noncentrality);
    }

    /// <summary>The chance of finding that groups of equal size differ in their means.</summary>
    /// <param name="groups">The number of groups, at least 2.</param>
    /// <param name="rows">The rows of one group, above 1; a fraction is taken as such.</param>
    /// <param name="betweenVariance">The variance of the true means (divisor groups - 1), not negative.</param>
    /// <param name="withinVariance">The variance of a row about its mean, above 0.</param>
    /// <param name="significance">The p value at which differences are called found, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static double OfGroups(
        int groups, double rows, double betweenVariance, double withinVariance, double significance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(groups, 2);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(withinVariance);
        if (!(rows > 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(rows), rows, "An F test of groups needs more than one row in each.");
        }

        return Power(
            groups - 1, groups * (rows - 1), (groups - 1) * rows * betweenVariance / withinVariance, significance);
    }

    /// <summary>The rows of one group that a power takes, as a fraction; round up.</summary>
    /// <param name="groups">The number of groups, at least 2.</param>
    /// <param name="power">The power, between the significance and 1.</param>
    /// <param name="betweenVariance">The variance of the true means (divisor groups - 1), above 0.</param>
    /// <param name="withinVariance">The variance of a row about its mean, above 0.</param>
    /// <param name="significance">The p value at which differences are called found, between 0 and 1.</param>
    /// <returns>The rows, or the problem that more than a billion would be needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Attempt<double> RowsNeeded(
        int groups, double power, double betweenVariance, double withinVariance, double significance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(betweenVariance);
        PowerSearch.RefuseShare(power, nameof(power));
        return PowerSearch.Rows(
            rows => OfGroups(groups, rows, betweenVariance, withinVariance, significance), power);
    }
}
