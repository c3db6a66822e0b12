namespace BakeInsights.Inference;

/// <summary>Whether data and prior can both be right.</summary>
/// <param name="PValue">
/// The probability, before the data, of estimates at least as far from what the prior leads to expect as these are.
/// </param>
public sealed record PriorConflict(double PValue)
{
    /// <summary>Common practice, no source: the probability below which data and prior are said to disagree.</summary>
    public const double Level = 0.05;

    /// <summary>Whether data and prior disagree: the result of both together then suits neither.</summary>
    public bool IsConflict => PValue < Level;
}
