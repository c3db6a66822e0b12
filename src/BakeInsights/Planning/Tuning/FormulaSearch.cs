namespace BakeInsights;

/// <summary>Looks for the formula with the best chance among the doughs baked, within limits.</summary>
/// <param name="region">The doughs baked.</param>
/// <param name="low">The least of each setting.</param>
/// <param name="high">The most of each setting.</param>
internal sealed class FormulaSearch(BakedRegion region, double[] low, double[] high)
{
    // How finely settings are tried at first, the more important ones finer, and how often the steps are halved after.
    // Our own choice: what is left between them is within a degree, a point, a tenth of a percent of yeast.
    private const int Halvings = 4;

    private const double Rounding = 1e-9;

    /// <summary>The chance that a formula may lose for being nearer to the house formula. Our own choice.</summary>
    private const double Indifference = 0.01;

    private readonly double[] _house = region.Anchor;

    /// <summary>All formulas that are tried at first.</summary>
    public IEnumerable<double[]> Candidates() => Grid(0, [.. low]).Select(region.Pull).Where(IsAllowed);

    /// <summary>Whether a formula keeps to the limits.</summary>
    public bool IsAllowed(double[] place) => place.Index().All(value =>
        value.Item >= low[value.Index] - Rounding && value.Item <= high[value.Index] + Rounding);

    /// <summary>The formula of the most, by any measure of it; null if no dough that was baked keeps to the limits.</summary>
    public double[]? Best(Func<double[], double> worth)
    {
        double[]? best = null;
        var most = double.NegativeInfinity;
        foreach (var place in Candidates().Prepend(_house).Where(IsAllowed))
        {
            Try(place);
        }

        if (best is null)
        {
            return null;
        }

        for (var halving = 1; halving <= Halvings; halving++)
        {
            for (var axis = 0; axis < low.Length; axis++)
            {
                var step = (high[axis] - low[axis]) / (LevelsOf(axis) - 1) / Math.Pow(2, halving);
                foreach (var sign in new[] { -1, 1 })
                {
                    double[] moved = [.. best];
                    moved[axis] = Math.Clamp(moved[axis] + (sign * step), low[axis], high[axis]);
                    Try(region.Pull(moved));
                }
            }
        }

        return best;

        void Try(double[] place)
        {
            if (IsAllowed(place) && worth(place) is var value && value > most)
            {
                (best, most) = (place, value);
            }
        }
    }

    /// <summary>
    /// A formula hardly worse that is nearer to the house formula: what doesn't matter is left as it was.
    /// </summary>
    public double[] Nearer(double[] best, Func<double[], double> chance)
    {
        var enough = chance(best) - Indifference;
        for (var axis = best.Length - 1; axis >= 0; axis--)
        {
            double[] back = [.. best];
            back[axis] = _house[axis];
            if (region.Holds(back) && IsAllowed(back) && chance(back) >= enough)
            {
                best = back;
            }
        }

        return IsAllowed(_house) ? Nearest(best, chance, enough) : best;
    }

    /// <summary>The first formula on the way from the house formula to another that has a chance.</summary>
    public double[] Nearest(double[] place, Func<double[], double> chance, double enough)
    {
        const int steps = 20;
        for (var step = 0; step < steps; step++)
        {
            var nearer = BakedRegion.Along(_house, place, step / (double)steps);
            if (chance(nearer) >= enough)
            {
                return nearer;
            }
        }

        return place;
    }

    private IEnumerable<double[]> Grid(int axis, double[] place)
    {
        if (axis == low.Length)
        {
            yield return [.. place];
            yield break;
        }

        var levels = low[axis] == high[axis] ? 1 : LevelsOf(axis);
        for (var level = 0; level < levels; level++)
        {
            place[axis] = low[axis] + (level * (high[axis] - low[axis]) / Math.Max(1, levels - 1));
            foreach (var whole in Grid(axis + 1, place))
            {
                yield return whole;
            }
        }
    }

    private static int LevelsOf(int axis) => axis switch { 0 or 1 => 7, 2 => 5, _ => 3 };
}
