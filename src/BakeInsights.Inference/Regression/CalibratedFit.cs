namespace BakeInsights.Inference;

/// <summary>A fit on readings, corrected for their error by regression calibration.</summary>
public sealed class CalibratedFit : IFit
{
    private readonly int _place;
    private readonly double _errorDeviation;

    internal CalibratedFit(
        LeastSquaresFit uncorrected, int place, double errorDeviation, double reliability, int spreadDf,
        LeastSquaresFit? onOthers)
    {
        (Uncorrected, _place, _errorDeviation) = (uncorrected, place, errorDeviation);

        // The variance of a sample variance of normal values is 2 / df of its square.
        Reliability = new Term(
            "reliability", reliability, (1 - reliability) * Math.Sqrt(2.0 / spreadDf),
            uncorrected.ResidualDegreesOfFreedom);
        Terms = Array.AsReadOnly(uncorrected.Terms.Select((_, j) => Corrected(j, onOthers)).ToArray());
    }

    /// <summary>The fit on the readings as they are.</summary>
    public LeastSquaresFit Uncorrected { get; }

    /// <summary>
    /// The share of the readings' variance, beside the other columns, that is the true values': the slope on readings
    /// is this share of the slope on true values.
    /// </summary>
    public Term Reliability { get; }

    /// <summary>
    /// The coefficients for true values. Standard errors by the delta method, with the reliability's own uncertainty;
    /// for an interval of the corrected slope use <see cref="SlopeInterval"/>, which is truer with few rows.
    /// </summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>
    /// The fit as a whole; the residual spread is what is left once the readings' error is taken out.
    /// </summary>
    public FitSummary Summary => Uncorrected.Summary with
    {
        Method = "regression calibration",
        ResidualStandardDeviation = ResidualStandardDeviation,
        RSquared = null,
        LogLikelihood = null,
        CorrectedAic = null,
    };

    /// <summary>The rows with the fitted values for their readings, which are those of the uncorrected fit.</summary>
    public IReadOnlyList<FitRow> Rows => Uncorrected.Rows;

    /// <summary>
    /// The spread of the response about the line of true values, in the response's unit; null if the readings' error
    /// would explain more than all of the residual spread.
    /// </summary>
    public double? ResidualStandardDeviation
    {
        get
        {
            var carried = Terms[_place].Estimate * _errorDeviation;
            var left = Math.Pow(Uncorrected.ResidualStandardDeviation, 2) - (carried * carried * Reliability.Estimate);
            return left >= 0 ? Math.Sqrt(left) : null;
        }
    }

    /// <summary>
    /// The confidence set of the corrected slope: the slope on readings over the reliability, by Fieller's theorem. It
    /// is unbounded if the readings can't be told from pure error.
    /// </summary>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The level is not between 0 and 1.</exception>
    public RatioInterval SlopeInterval(double level) =>
        RatioInterval.Fieller(Uncorrected.Terms[_place], Reliability, 0, level);

    /// <summary>
    /// The expected true value is reliability times reading plus the rest times what the other columns say, so the
    /// coefficient of another column has taken up a part of the slope, in proportion to its own on the readings.
    /// </summary>
    private Term Corrected(int j, LeastSquaresFit? onOthers)
    {
        var (slope, share) = (Uncorrected.Terms[_place], Reliability.Estimate);
        var uncertainty = Reliability.StandardError / (share * share);
        if (j == _place)
        {
            return slope with
            {
                Estimate = slope.Estimate / share,
                StandardError = double.Hypot(slope.StandardError / share, slope.Estimate * uncertainty),
            };
        }

        var own = Uncorrected.Terms[j];
        var onReadings = onOthers!.Terms[j < _place ? j : j - 1];
        var lost = (1 - share) / share;
        var weights = new double[Uncorrected.Terms.Count];
        (weights[j], weights[_place]) = (1, -lost * onReadings.Estimate);
        var given = Uncorrected.Combination(weights, own.Name);
        return given with
        {
            StandardError = double.Hypot(
                double.Hypot(given.StandardError, slope.Estimate * onReadings.Estimate * uncertainty),
                slope.Estimate * lost * onReadings.StandardError),
        };
    }
}
