namespace BakeInsights.Inference;

/// <summary>The share of the ratings' variance that is due to the rated things.</summary>
/// <remarks>
/// Shrout and Fleiss (1979), Intraclass correlations: uses in assessing rater reliability, Psychological Bulletin 86,
/// 420-428; McGraw and Wong (1996), Forming inferences about some intraclass correlation coefficients, Psychological
/// Methods 1, 30-46. Assumes normal ratings of equal spread.
/// </remarks>
public sealed class IntraclassCorrelation
{
    private readonly IntraclassMeanSquares _squares;

    private IntraclassCorrelation(AgreementKind kind, IntraclassMeanSquares squares)
    {
        (Kind, _squares) = (kind, squares);
        Single = squares.Correlation(kind);
        Mean = squares.OfMean(Single);
    }

    /// <summary>What counts as agreement.</summary>
    public AgreementKind Kind { get; }

    /// <summary>The correlation of one judge's ratings; it can be negative, down to -1 / (judges - 1).</summary>
    public double Single { get; }

    /// <summary>
    /// The correlation of the judges' mean ratings; null if the single one is too far below 0 for it.
    /// </summary>
    public double? Mean { get; }

    /// <summary>The mean square between things.</summary>
    public double BetweenThings => _squares.Things;

    /// <summary>The mean square between judges.</summary>
    public double BetweenJudges => _squares.Judges;

    /// <summary>The mean square that things and judges leave over.</summary>
    public double Residual => _squares.Residual;

    /// <summary>The mean square within things.</summary>
    public double WithinThings => _squares.Within;

    /// <summary>Finds the correlation.</summary>
    /// <param name="ratings">The ratings.</param>
    /// <param name="kind">What counts as agreement.</param>
    /// <returns>The correlation, or the problem that all ratings are the same or repeat without any spread.</returns>
    public static Attempt<IntraclassCorrelation> Of(RatingTable ratings, AgreementKind kind)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        var squares = IntraclassMeanSquares.Of(ratings);
        var error = kind == AgreementKind.OneWay ? squares.Within : squares.Residual;
        return error > 0
            ? new IntraclassCorrelation(kind, squares)
            : new FitProblem(
                FitProblemKind.NoSpread,
                ["ratings"],
                "The judges' ratings differ nowhere, or by the same amount throughout, so there is no spread to "
                    + "compare the things with.",
                "Add things or judges, or rate on a finer scale.");
    }

    /// <summary>The confidence interval of one judge's correlation.</summary>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval SingleInterval(double level)
    {
        Tails.RequireLevel(level);

        return _squares.Interval(Kind, Single, (1 - level) / 2);
    }

    /// <summary>
    /// The confidence interval of the mean's correlation; null if the single one's reaches too far down.
    /// </summary>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval? MeanInterval(double level)
    {
        var single = SingleInterval(level);
        return _squares.OfMean(single.Low) is { } low && _squares.OfMean(single.High) is { } high
            ? new Interval(low, high)
            : null;
    }
}
