using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>Finds the factor of least deviance by Newton's method from the best point of a coarse grid.</summary>
/// <remarks>
/// Directions in which the deviance doesn't bend up are taken with the bend's size, and a step is halved until the
/// deviance falls: Nocedal and Wright (2006), Numerical Optimization, 2nd ed., section 3.4.
/// </remarks>
internal static class FactorSearch
{
    /// <summary>Newton steps; 5 to 15 are usual. Common practice, no source.</summary>
    private const int MostSteps = 200;

    /// <summary>
    /// A fall of the deviance that ends the search, for the step that promised it is taken still, and Newton's error is
    /// squared by it. Common practice, no source.
    /// </summary>
    private const double NegligibleFall = 1e-9;

    /// <summary>A fall of the deviance from which on the edge is looked at. Common practice, no source.</summary>
    private const double NearEnough = 1e-3;

    /// <summary>
    /// The least bend, beside 1, that a step trusts: the root of double precision's spacing. Below it a gradient of
    /// rounding would make a long step, as in the direction that turns B into C where A is 0. Common practice, no source.
    /// </summary>
    private const double LeastBend = 1.5e-8;

    /// <summary>What an edge may cost in deviance and still be taken for the minimum: its rounding.</summary>
    private const double EdgeAllowance = 1e-9;

    /// <summary>The ratios of spread between groups to spread within that are tried first.</summary>
    private static readonly double[] Grid = [0.02, 0.1, 0.3, 1, 3, 10, 100], SlopeGrid = [0.2, 1, 5];

    /// <summary>The factor and whether it lies on the edge; null if the steps didn't come to rest.</summary>
    public static (RelativeFactor Factor, DevianceDerivatives At, MixedBoundary Boundary)? Find(MixedDeviance deviance)
    {
        if (Descend(deviance) is not var (factor, at))
        {
            return null;
        }

        var least = deviance.Value(at);
        var edges = factor.Edges(deviance.Size);
        for (var e = 0; e < edges.Length; e++)
        {
            var edge = deviance.At(edges[e]);
            if (deviance.Value(edge) <= least + EdgeAllowance)
            {
                return (edges[e], edge, e == 0 ? MixedBoundary.NoVariance : MixedBoundary.OneDirectionOnly);
            }
        }

        return (factor, at, MixedBoundary.Inside);
    }

    private static (RelativeFactor Factor, DevianceDerivatives At)? Descend(MixedDeviance deviance)
    {
        var (factor, at, value) = Start(deviance);
        for (var count = 0; count < MostSteps; count++)
        {
            var (gradient, bend) = deviance.Slope(at, factor);
            var step = Step(gradient, bend);
            var fall = -gradient.Zip(step, (g, s) => g * s).Sum();
            if (fall < NearEnough && ToEdge(deviance, factor, value) is { } edge)
            {
                (factor, at, value) = edge;
                continue;
            }

            if (fall < NegligibleFall)
            {
                var last = factor.Moved(step, 1);
                var atLast = deviance.At(last);
                return deviance.Value(atLast) <= value + NegligibleFall ? (last, atLast) : (factor, at);
            }

            var share = 1.0;
            var (moved, atMoved, valueMoved) = (factor, at, double.PositiveInfinity);
            while (share > LeastSquares.Epsilon && !(valueMoved <= value - (1e-4 * share * fall)))
            {
                moved = factor.Moved(step, share);
                atMoved = deviance.At(moved);
                valueMoved = deviance.Value(atMoved);
                share /= 2;
            }

            if (!(valueMoved < value))
            {
                // The deviance is flat to its rounding.
                return (factor, at);
            }

            (factor, at, value) = (moved, atMoved, valueMoved);
        }

        return null;
    }

    /// <summary>
    /// The nearest factor of one direction, if the deviance is no higher there. Near it, where A is next to 0, turning B
    /// into C changes next to nothing, and steps would follow the circle for long.
    /// </summary>
    private static (RelativeFactor Factor, DevianceDerivatives At, double Value)? ToEdge(
        MixedDeviance deviance, RelativeFactor factor, double value)
    {
        if (factor.C == 0)
        {
            return null;
        }

        var edge = factor.Edges(deviance.Size)[1];
        var at = deviance.At(edge);
        var atEdge = deviance.Value(at);

        // Off the edge the deviance must rise, or the lowest point is not on it.
        return atEdge <= value && deviance.Slope(at, edge).Bend[2, 2] >= 0 ? (edge, at, atEdge) : null;
    }

    private static (RelativeFactor Factor, DevianceDerivatives At, double Value) Start(MixedDeviance deviance)
    {
        var starts = deviance.Size == 1
            ? Grid.Select(a => new RelativeFactor(a, 0, 0))
            : SlopeGrid.SelectMany(a => SlopeGrid.Select(c => new RelativeFactor(a, 0, c)));
        return starts.Select(factor => (factor, at: deviance.At(factor)))
            .Select(pair => (pair.factor, pair.at, value: deviance.Value(pair.at)))
            .MinBy(triple => triple.value);
    }

    /// <summary>
    /// The step that leads downhill, along the principal axes of the bend in units in which each number bends by 1.
    /// </summary>
    private static double[] Step(double[] gradient, double[,] bend)
    {
        var size = gradient.Length;
        var units = Vector<double>.Build.Dense(size, i => bend[i, i] == 0 ? 1 : 1 / Math.Sqrt(Math.Abs(bend[i, i])));
        var scaled = Matrix<double>.Build.Dense(size, size, (i, j) => bend[i, j] * units[i] * units[j]);
        var axes = scaled.Evd(Symmetricity.Symmetric);
        var lengths = axes.EigenValues.Real();
        var along = axes.EigenVectors.TransposeThisAndMultiply(
            Vector<double>.Build.Dense(gradient).PointwiseMultiply(units));
        return axes.EigenVectors
            .Multiply(Vector<double>.Build.Dense(
                size, i => -along[i] / Math.Max(Math.Abs(lengths[i]), LeastBend)))
            .PointwiseMultiply(units)
            .ToArray();
    }
}
