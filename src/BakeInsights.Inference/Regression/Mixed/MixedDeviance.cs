namespace BakeInsights.Inference;

/// <summary>
/// The deviance of a mixed model (minus twice its log-likelihood) as a function of the relative covariance.
/// </summary>
/// <remarks>
/// The residual variance and the coefficients are profiled out: Bates et al. (2015), Journal of Statistical Software
/// 67(1), section 3.4. The derivatives are exact, by d(V^-1) = -V^-1 dV V^-1 and d log |V| = tr(V^-1 dV).
/// </remarks>
internal sealed class MixedDeviance
{
    private readonly GroupReduction _reduction;
    private readonly int _rows;
    private readonly double _logDeterminantOfR;
    private readonly bool _restricted;

    /// <summary>Makes the function.</summary>
    /// <param name="reduction">The data along orthonormal columns.</param>
    /// <param name="rows">The number of rows.</param>
    /// <param name="logDeterminantOfR">log |R| of the given columns X = Q R.</param>
    /// <param name="restricted">Whether the criterion is the restricted one.</param>
    public MixedDeviance(GroupReduction reduction, int rows, double logDeterminantOfR, bool restricted) =>
        (_reduction, _rows, _logDeterminantOfR, _restricted) = (reduction, rows, logDeterminantOfR, restricted);

    /// <summary>The number of free elements: 1, or 3 with slopes.</summary>
    public int Size => _reduction.HasSlope ? 3 : 1;

    /// <summary>
    /// The divisor of the residual sum of squares: rows, less columns under the restricted criterion.
    /// </summary>
    public int Divisor => _restricted ? _rows - (_reduction.Width - 1) : _rows;

    /// <summary>The profiled deviance, constants included.</summary>
    public double Value(DevianceDerivatives at) =>
        (Divisor * (1 + Math.Log(2 * Math.PI * at.ResidualSum / Divisor))) + at.LogDeterminant
            + (_restricted ? 2 * _logDeterminantOfR : 0);

    /// <summary>The gradient and second derivatives of the profiled deviance by the factor's numbers.</summary>
    public (double[] Gradient, double[,] Bend) Slope(DevianceDerivatives at, RelativeFactor factor)
    {
        var gradient = new double[Size];
        var bend = new double[Size, Size];
        for (var k = 0; k < Size; k++)
        {
            var share = at.ResidualChange[k] / at.ResidualSum;
            gradient[k] = (Divisor * share) + at.LogChange[k];
            for (var l = 0; l < Size; l++)
            {
                bend[k, l] = at.LogBend[k, l] + (Divisor *
                    ((at.ResidualBend[k, l] / at.ResidualSum) - (share * at.ResidualChange[l] / at.ResidualSum)));
            }
        }

        return factor.Chain(gradient, bend);
    }

    /// <summary>The parts at a factor.</summary>
    public DevianceDerivatives At(RelativeFactor factor)
    {
        var sums = new MixedSums(_reduction, factor);
        return sums.Derivatives(_restricted);
    }
}
