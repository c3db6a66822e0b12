namespace BakeInsights.Inference;

/// <summary>A fit that is linear in its coefficients, whether its rows were kept or only their sums.</summary>
public interface ILinearFit : IFit
{
    /// <summary>The number of rows.</summary>
    int N { get; }

    /// <summary>Rows minus coefficients, at least 1.</summary>
    int ResidualDegreesOfFreedom { get; }

    /// <summary>The square root of the residual mean square, in the response's unit.</summary>
    double ResidualStandardDeviation { get; }

    /// <summary>The share of the response's variation that the columns account for.</summary>
    double RSquared { get; }

    /// <summary>The estimate of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column.</param>
    /// <param name="name">What to call it.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    Term Combination(IReadOnlyList<double> weights, string name = "combination");

    /// <summary>The covariance of two linear combinations of the coefficients.</summary>
    /// <param name="first">A weight for each column.</param>
    /// <param name="second">A weight for each column.</param>
    /// <exception cref="ArgumentException">The number of weights is not the number of columns.</exception>
    double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second);

    /// <summary>The confidence interval of the mean response at a row of column values.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    Interval MeanInterval(IReadOnlyList<double> row, double level) => Combination(row).Interval(level);

    /// <summary>The interval that a single new response of weight 1 at a row of column values falls in.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <param name="level">The probability, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values or the level doesn't fit.</exception>
    Interval PredictionInterval(IReadOnlyList<double> row, double level)
    {
        var mean = Combination(row);
        var spread = double.Hypot(mean.StandardError, ResidualStandardDeviation);
        return (mean with { StandardError = spread }).Interval(level);
    }
}
