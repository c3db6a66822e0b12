namespace BakeInsights.Inference;

/// <summary>A robust linear fit: coefficients, their uncertainty, and how much each row was let count.</summary>
public sealed class RobustFit : IFit
{
    private readonly Coefficients _coefficients;
    private readonly string _method;

    internal RobustFit(
        RobustRows rows, Doubled[] coefficients, double[] residuals, double scale, RobustLoss loss, string method)
    {
        (Design, Response, Coefficients, Scale, _method) = (rows.Design, rows.Response, coefficients, scale, method);
        _coefficients = new Coefficients(
            Design.Names, rows.Triangle(), coefficients, Variance(residuals, scale, loss, rows.Predictors),
            rows.Count - rows.Predictors);
        Terms = Array.AsReadOnly(_coefficients.Terms());
        Rows = Array.AsReadOnly(residuals.Select((r, i) =>
            new FitRow(i, Response[i], Response[i] - r, r, null, loss.Weight(r / scale))).ToArray());
    }

    /// <summary>The design that was fitted.</summary>
    public Design Design { get; }

    /// <summary>The response that was fitted, by row.</summary>
    public IReadOnlyList<double> Response { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Term> Terms { get; }

    /// <inheritdoc/>
    public FitSummary Summary => new(_method, Rows.Count, Rows.Count - Terms.Count, Scale, null, null, null);

    /// <inheritdoc/>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>
    /// The robust scale of the residuals, in the response's unit: a standard deviation for normal errors.
    /// </summary>
    public double Scale { get; }

    /// <summary>The rows that count for less than <see cref="Thresholds.RobustWeight"/>, the lightest first.</summary>
    public IReadOnlyList<FitRow> WeighedDown =>
        [.. Rows.Where(row => row.Weight < Thresholds.RobustWeight.Value).OrderBy(row => row.Weight)];

    /// <summary>The coefficients, for a fit that starts from them.</summary>
    internal Doubled[] Coefficients { get; }

    /// <inheritdoc cref="LeastSquaresFit.Combination"/>
    public Term Combination(IReadOnlyList<double> weights, string name = "combination") =>
        _coefficients.Combination(weights, name);

    /// <inheritdoc cref="LeastSquaresFit.Covariance(IReadOnlyList{double}, IReadOnlyList{double})"/>
    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        _coefficients.Covariance(first, second);

    /// <summary>
    /// What stands for the residual variance in the coefficients' covariance. Huber (1981), Robust Statistics, section
    /// 7.6: the mean squared influence over the squared mean slope, and his correction K for few rows squared.
    /// </summary>
    private static double Variance(double[] residuals, double scale, RobustLoss loss, int predictors)
    {
        double n = residuals.Length;
        var influence = residuals.Sum(r => Math.Pow(r * loss.Weight(r / scale), 2)) / (n - predictors);
        double[] slopes = Array.ConvertAll(residuals, r => loss.InfluenceSlope(r / scale));
        var mean = slopes.Average();
        var spread = slopes.Sum(slope => (slope - mean) * (slope - mean)) / (n - 1);
        var correction = 1 + (predictors * spread / (n * mean * mean));
        return influence * Math.Pow(correction / mean, 2);
    }
}
