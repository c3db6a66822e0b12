namespace BakeInsights.Inference;

/// <summary>The partial F test of two fits, one of which has all columns of the other and more.</summary>
/// <remarks>Method: Draper and Smith (1998), Applied Regression Analysis, 3rd ed., chapter 6.</remarks>
/// <param name="ExtraSumOfSquares">What the added columns take off the residual sum of squares.</param>
/// <param name="ExtraDegreesOfFreedom">The number of added columns.</param>
/// <param name="ResidualDegreesOfFreedom">The residual degrees of freedom of the larger fit.</param>
/// <param name="FValue">
/// The extra mean square over the larger fit's residual mean square; null if the larger fit is perfect.
/// </param>
/// <param name="PValue">The probability of so large an F if the added coefficients are all zero; null with F.</param>
public sealed record NestedComparison(
    double ExtraSumOfSquares,
    int ExtraDegreesOfFreedom,
    int ResidualDegreesOfFreedom,
    double? FValue,
    double? PValue)
{
    /// <summary>Compares two fits; see <see cref="LeastSquares.Compare"/>.</summary>
    internal static NestedComparison Of(LeastSquaresFit smaller, LeastSquaresFit larger)
    {
        if (!smaller.Response.SequenceEqual(larger.Response)
            || !(smaller.Weights ?? []).SequenceEqual(larger.Weights ?? []))
        {
            throw new ArgumentException("The fits are not of the same response in the same rows.", nameof(larger));
        }

        foreach (var column in smaller.Design.Columns)
        {
            if (!larger.Design.Names.Contains(column.Name))
            {
                throw new ArgumentException($"The larger fit lacks column {column.Name}.", nameof(larger));
            }

            if (!column.Span.SequenceEqual(larger.Design.Columns[larger.Design.IndexOf(column.Name)].Span))
            {
                throw new ArgumentException($"Column {column.Name} differs between the fits.", nameof(larger));
            }
        }

        var extra = larger.Terms.Count - smaller.Terms.Count;
        if (extra == 0)
        {
            throw new ArgumentException("The fits have the same columns.", nameof(larger));
        }

        // The squared distance between the fitted values: by Pythagoras the difference of the residual sums of
        // squares, without the cancellation of subtracting them. Residuals keep the digits that a large level costs.
        double[] apart = [.. smaller.Residuals.Zip(larger.Residuals, (a, b) => a - b)];
        var sumOfSquares = DoubledSums.SquaredDistances(apart, 0, larger.WorkRows.Weights).High;
        var df = larger.ResidualDegreesOfFreedom;
        double? f = larger.ResidualSumOfSquares > 0
            ? sumOfSquares / extra / (larger.ResidualSumOfSquares / df)
            : null;
        double? p = f is { } value ? Tails.FisherUpper(value, extra, df) : null;
        return new NestedComparison(sumOfSquares, extra, df, f, p);
    }
}
