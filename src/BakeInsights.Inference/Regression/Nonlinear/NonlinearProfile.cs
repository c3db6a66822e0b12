namespace BakeInsights.Inference;

/// <summary>The least sum of squares with one parameter held.</summary>
internal static class NonlinearProfile
{
    /// <summary>Little damping: the start is a neighbouring solution.</summary>
    private const double FirstDamping = 1e-4;

    /// <summary>The best point with the parameter held; null if there is none.</summary>
    /// <param name="rows">The model on its data.</param>
    /// <param name="near">A neighbouring solution.</param>
    /// <param name="place">The parameter that is held.</param>
    /// <param name="value">Its value.</param>
    public static LevenbergMarquardt.Place? Least(NonlinearRows rows, double[] near, int place, double value)
    {
        double[] start = [.. near];
        start[place] = value;
        var held = rows.Holding(place);
        if (rows.Residuals(start) is not { } residuals)
        {
            return null;
        }

        if (start.Length == 1)
        {
            return new LevenbergMarquardt.Place(start, Norm.Squared(residuals), true);
        }

        var found = LevenbergMarquardt.Run(held, start, FirstDamping, keepsScale: true);
        return found.Converged ? found : null;
    }
}
