namespace BakeInsights.Inference;

/// <summary>Solves for what gives a power.</summary>
internal static class PowerSearch
{
    /// <summary>Rows beyond which no experiment goes. Common practice, no source.</summary>
    private const double MostRows = 1e9;

    /// <summary>The fewest rows tried: just above the one that leaves nothing over.</summary>
    private const double FewestRows = 1 + 1e-6;

    /// <summary>The rows at which a rising power passes a target.</summary>
    public static Attempt<double> Rows(Func<double, double> power, double target)
    {
        // From two rows on the power rises; below, it is not of use to anyone.
        if (power(2) >= target)
        {
            return power(FewestRows) >= target ? 2 : Solve(power, target, FewestRows, 1);
        }

        var high = 4.0;
        while (power(high) < target)
        {
            high *= 2;
            if (high > MostRows)
            {
                return new FitProblem(
                    FitProblemKind.TooFewRows,
                    ["rows"],
                    "More than a billion rows would be needed.",
                    "Look for a larger difference, ask for less power, or measure with less spread.");
            }
        }

        return Solve(power, target, high / 2, high / 2);
    }

    /// <summary>
    /// Where a rising function passes a target: doubled past it, then halved down to neighbouring doubles.
    /// </summary>
    public static double Solve(Func<double, double> rising, double target, double low, double step)
    {
        var high = low + step;
        while (rising(high) < target)
        {
            (low, high) = (high, low + (2 * (high - low)));
        }

        for (var middle = (low + high) / 2;
            low < middle && middle < high && high - low > 1e-13 * high;
            middle = (low + high) / 2)
        {
            (low, high) = rising(middle) < target ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>Refuses what is not between 0 and 1.</summary>
    public static void RefuseShare(double share, string name)
    {
        if (!(share > 0 && share < 1))
        {
            throw new ArgumentOutOfRangeException(name, share, "It lies between 0 and 1, such as 0.05 or 0.8.");
        }
    }
}
