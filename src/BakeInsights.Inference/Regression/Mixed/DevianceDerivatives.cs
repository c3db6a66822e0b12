namespace BakeInsights.Inference;

/// <summary>
/// The parts of a mixed model's deviance at one relative covariance, and their first and second derivatives by its
/// elements: the intercept's, the product's, the slope's (or the intercept's alone).
/// </summary>
/// <param name="Coordinates">The generalized least-squares coefficients along the orthonormal columns.</param>
/// <param name="Inverse">The inverse of X'V^-1 X along them, by rows.</param>
/// <param name="ColumnChange">The derivatives of X'V^-1 X, one table an element.</param>
/// <param name="ResidualSum">The weighted residual sum of squares.</param>
/// <param name="ResidualChange">Its first derivatives.</param>
/// <param name="ResidualBend">Its second derivatives.</param>
/// <param name="LogDeterminant">log |V|, with log |X'V^-1 X| added under the restricted criterion.</param>
/// <param name="LogChange">Its first derivatives.</param>
/// <param name="LogBend">Its second derivatives.</param>
internal sealed record DevianceDerivatives(
    double[] Coordinates,
    double[] Inverse,
    double[][] ColumnChange,
    double ResidualSum,
    double[] ResidualChange,
    double[,] ResidualBend,
    double LogDeterminant,
    double[] LogChange,
    double[,] LogBend);
