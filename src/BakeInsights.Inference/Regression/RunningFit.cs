namespace BakeInsights.Inference;

/// <summary>A least-squares fit from <see cref="RunningSums"/>: everything but the single rows.</summary>
public sealed class RunningFit : ILinearFit
{
    private readonly Coefficients _coefficients;

    internal RunningFit(
        IReadOnlyList<string> columns, Triangle triangle, Doubled[] coefficients, long rows, int blocks,
        double residualSumOfSquares, double totalSumOfSquares)
    {
        (N, BlockCount, ResidualSumOfSquares) = (checked((int)rows), blocks, residualSumOfSquares);
        ResidualDegreesOfFreedom = N - columns.Count - blocks;
        var variance = residualSumOfSquares / ResidualDegreesOfFreedom;
        ResidualStandardDeviation = Math.Sqrt(variance);
        RSquared = 1 - (residualSumOfSquares / totalSumOfSquares);
        _coefficients = new Coefficients(columns, triangle, coefficients, variance, ResidualDegreesOfFreedom);
        Terms = Array.AsReadOnly(_coefficients.Terms());
    }

    /// <inheritdoc/>
    public IReadOnlyList<Term> Terms { get; }

    /// <inheritdoc/>
    public FitSummary Summary
    {
        get
        {
            var likelihood = LeastSquaresSummary.LogLikelihood(ResidualSumOfSquares, N);
            return new FitSummary(
                "least squares from running sums", N, ResidualDegreesOfFreedom, ResidualStandardDeviation, RSquared,
                likelihood, LeastSquaresSummary.CorrectedAic(likelihood, N, Terms.Count + BlockCount + 1));
        }
    }

    /// <summary>None: the rows are not kept.</summary>
    public IReadOnlyList<FitRow> Rows => [];

    /// <summary>The number of rows.</summary>
    public int N { get; }

    /// <summary>The number of blocks whose levels were left out; 0 if rows came without.</summary>
    public int BlockCount { get; }

    /// <summary>Rows minus columns minus blocks, at least 1.</summary>
    public int ResidualDegreesOfFreedom { get; }

    /// <summary>The sum of the squared residuals, in the response's unit squared.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>The square root of the residual mean square, in the response's unit.</summary>
    public double ResidualStandardDeviation { get; }

    /// <summary>
    /// The share of the response's sum of squares that the columns account for: about the blocks' means if there are
    /// blocks, about the mean if a column is constant, otherwise about zero.
    /// </summary>
    public double RSquared { get; }

    /// <inheritdoc cref="LeastSquaresFit.Combination"/>
    public Term Combination(IReadOnlyList<double> weights, string name = "combination") =>
        _coefficients.Combination(weights, name);

    /// <inheritdoc cref="LeastSquaresFit.Covariance(IReadOnlyList{double}, IReadOnlyList{double})"/>
    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        _coefficients.Covariance(first, second);
}
