namespace BakeInsights.Inference;

/// <summary>One row of a fit. What a method doesn't define is null.</summary>
/// <param name="Row">The row, counted from 0.</param>
/// <param name="Observed">The response; null where only an interval of it is known.</param>
/// <param name="Fitted">What the fit expects, on the response's scale.</param>
/// <param name="Residual">Observed less fitted.</param>
/// <param name="Leverage">The weight of the row's response in its own fitted value, 0 to 1.</param>
/// <param name="Weight">How much the method let the row count, against 1 for a row in full.</param>
public sealed record FitRow(int Row, double? Observed, double Fitted, double? Residual, double? Leverage, double? Weight);
