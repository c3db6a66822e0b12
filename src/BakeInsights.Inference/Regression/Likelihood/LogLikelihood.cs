namespace BakeInsights.Inference;

/// <summary>A log-likelihood at a point, with what Newton's method needs.</summary>
/// <param name="Value">The log-likelihood.</param>
/// <param name="Gradient">Its first derivatives.</param>
/// <param name="Curvature">The observed information: minus its second derivatives; symmetric.</param>
internal sealed record LogLikelihood(double Value, double[] Gradient, double[,] Curvature)
{
    /// <summary>The log-likelihood of no rows.</summary>
    public static LogLikelihood Zero(int size) => new(0, new double[size], new double[size, size]);
}
