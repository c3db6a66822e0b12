using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>How far two raters agree beyond chance on ordered categories.</summary>
/// <remarks>
/// Cohen (1968), Weighted kappa, Psychological Bulletin 70, 213-220; standard errors for large samples of Fleiss, Cohen
/// and Everitt (1969), Psychological Bulletin 72, 323-327. Assumes that the rated things are independent.
/// </remarks>
/// <param name="Estimate">Kappa: 1 for full agreement, 0 for what chance brings, and less for worse.</param>
/// <param name="StandardError">The standard error of kappa.</param>
/// <param name="ChanceStandardError">The standard error of kappa if the raters agree by chance only.</param>
/// <param name="ObservedAgreement">The weighted share of agreement.</param>
/// <param name="ChanceAgreement">The weighted share of agreement that chance brings.</param>
/// <param name="Count">How many things were rated.</param>
/// <param name="Caveats">What has to be said with it, one sentence each; none if all is well.</param>
public sealed record Kappa(
    double Estimate,
    double StandardError,
    double ChanceStandardError,
    double ObservedAgreement,
    double ChanceAgreement,
    int Count,
    IReadOnlyList<string> Caveats)
{
    /// <summary>
    /// Rated things that large-sample standard errors need: twice the squared number of categories, after Cicchetti and
    /// Fleiss (1977), Applied Psychological Measurement 1, 195-201.
    /// </summary>
    private const int CountPerCell = 2;

    /// <summary>The two-sided p value against agreement by chance only; null if that has no spread.</summary>
    public double? PValue => ChanceStandardError > 0
        ? 2 * Normal.CDF(0, 1, -Math.Abs(Estimate / ChanceStandardError))
        : null;

    /// <summary>The confidence interval from the normal distribution, not above 1.</summary>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval Interval(double level)
    {
        Tails.RequireLevel(level);

        var half = Normal.InvCDF(0, 1, (1 + level) / 2) * StandardError;
        return new Interval(Math.Max(Estimate - half, -1), Math.Min(Estimate + half, 1));
    }

    /// <summary>Kappa of a table of counts.</summary>
    /// <param name="counts">The counts: a row for each category of one rater, a column for each of the other.</param>
    /// <param name="weighting">How disagreements count.</param>
    /// <returns>Kappa, or a problem: fewer than two things rated, or both raters use one category.</returns>
    /// <exception cref="ArgumentException">The table is not square, or a count is negative.</exception>
    public static Attempt<Kappa> Of(int[,] counts, KappaWeighting weighting)
    {
        ArgumentNullException.ThrowIfNull(counts);
        var size = counts.GetLength(0);
        if (size < 2 || counts.GetLength(1) != size || counts.Cast<int>().Any(c => c < 0))
        {
            throw new ArgumentException("Kappa needs a square table of counts, 2 by 2 or larger.", nameof(counts));
        }

        var n = counts.Cast<int>().Sum();
        if (n < 2)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows, ["ratings"],
                $"There are ratings of {n} things, and at least 2 are needed.",
                "Add rated things.");
        }

        return new KappaTable(counts, n, weighting).Solve() is { } parts
            ? new Kappa(
                parts.Kappa, parts.Error, parts.ChanceError, parts.Observed, parts.Chance, n,
                n >= CountPerCell * size * size ? [] :
                [
                    $"There are {n} rated things; with {size} categories the interval needs "
                        + $"{CountPerCell * size * size} or more to be trusted.",
                ])
            : new FitProblem(
                FitProblemKind.NoSpread, ["ratings"],
                "Both raters use one and the same category throughout, so agreement can't be told from chance.",
                "Add things that are rated differently.");
    }

    /// <summary>Kappa of two lists of ratings.</summary>
    /// <param name="first">One rater's categories, from 0.</param>
    /// <param name="second">The other's, of the same things in the same order.</param>
    /// <param name="categories">How many categories there are.</param>
    /// <param name="weighting">How disagreements count.</param>
    /// <inheritdoc cref="Of(int[,], KappaWeighting)"/>
    /// <exception cref="ArgumentException">The lists differ in length, or a category is out of range.</exception>
    public static Attempt<Kappa> Of(
        IReadOnlyList<int> first, IReadOnlyList<int> second, int categories, KappaWeighting weighting)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Count != second.Count || first.Concat(second).Any(c => c < 0 || c >= categories))
        {
            throw new ArgumentException(
                $"The raters need as many ratings as each other, each from 0 to {categories - 1}.", nameof(second));
        }

        var counts = new int[categories, categories];
        foreach (var (row, column) in first.Zip(second))
        {
            counts[row, column]++;
        }

        return Of(counts, weighting);
    }
}
