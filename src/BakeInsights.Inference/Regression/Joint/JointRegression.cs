namespace BakeInsights.Inference;

/// <summary>
/// Several linear regressions whose residuals may go together, each with priors of some of its coefficients: draws of
/// what is believed of all coefficients and of the residuals' spread.
/// </summary>
/// <remarks>
/// Seemingly unrelated regressions (Zellner 1962, Journal of the American Statistical Association 57, 348-368), by a Gibbs
/// sampler (Percy 1992, Journal of the Royal Statistical Society B 54, 243-252): coefficients given the residuals'
/// covariance are normal, the covariance given the coefficients is inverse Wishart, and the residual of a response that a
/// unit lacks is drawn given its others. The covariance's prior is the one that leaves a single response without priors
/// what least squares says: residual variance from its scaled inverse chi-square with rows less columns degrees of
/// freedom, coefficients normal given it. Assumes what least squares assumes, residuals of one unit jointly normal, and
/// that a response is missing for reasons that have nothing to do with it.
/// </remarks>
public static class JointRegression
{
    // The chain starts at least squares and forgets a start within a few steps. Our own choice.
    private const int StepsUnused = 100;

    /// <summary>Draws from what is believed.</summary>
    /// <param name="responses">The responses, at least one.</param>
    /// <param name="draws">How many draws, at least one.</param>
    /// <param name="seed">The seed; the same one gives the same draws.</param>
    /// <returns>The draws, or the first problem of a response by itself; a fit without residuals is one.</returns>
    /// <exception cref="ArgumentException">There is no response, no draw, or a prior or varying column is of no column.</exception>
    public static Attempt<JointDraws> Draw(IReadOnlyList<JointResponse> responses, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(responses);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        if (responses.Count == 0)
        {
            throw new ArgumentException("There is no response.", nameof(responses));
        }

        List<LeastSquaresFit> starts = [];
        foreach (var response in responses)
        {
            if (!LeastSquares.Fit(response.Design, response.Values).TryGet(out var start, out var problem))
            {
                return problem;
            }

            if (start.ResidualSumOfSquares == 0)
            {
                return new FitProblem(
                    FitProblemKind.ZeroSpread,
                    [response.Name],
                    $"The columns meet the {response.Name} of every row, so there is no spread to judge by.",
                    "Add rows, or leave columns out.");
            }

            starts.Add(start);
        }

        var random = new Random(seed);
        var sampler = new JointSampler([.. responses.Zip(starts, (response, start) => new JointPart(response, start))], random);
        for (var step = 0; step < StepsUnused; step++)
        {
            sampler.Step();
        }

        var drawn = new JointDraw[draws];
        for (var draw = 0; draw < draws; draw++)
        {
            sampler.Step();
            drawn[draw] = sampler.Draw();
        }

        return new JointDraws(responses, drawn);
    }
}
