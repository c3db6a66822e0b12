using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>Where a fitted second-order surface in several factors is level, and what it has there.</summary>
/// <remarks>
/// Box and Draper (2007), Response Surfaces, Mixtures, and Ridge Analyses, 2nd ed., chapters 10 and 11.
/// </remarks>
public sealed class StationaryPoint
{
    private readonly LeastSquaresFit _fit;
    private readonly SurfaceWeights _weights;

    private StationaryPoint(
        LeastSquaresFit fit, SurfaceWeights weights, IReadOnlyList<string> factors, double[] location, double level)
    {
        (_fit, _weights) = (fit, weights);
        Factors = [.. factors];
        Location = Array.AsReadOnly(location);
        var coefficients = fit.Terms.Select(term => term.Estimate).ToArray();
        Height = weights.Linear(coefficients) * Vector<double>.Build.Dense(location) / 2;
        Directions = Array.AsReadOnly(FindDirections(coefficients));
        Kind = KindOf(Directions.Select(d => Math.Sign(d.Bend.Estimate)));
        ShownKind = KindOf(Directions.Select(d => d.Bend.Interval(level).Contains(0) ? 0 : Math.Sign(d.Bend.Estimate)));
        var data = new DataRegion([.. Factors.Select(f => fit.Design.Columns[fit.Design.IndexOf(f)])]);
        FactorsBeyondData = [.. Factors.Where((_, j) => !data.Range(j).Contains(location[j]))];
        IsOutsideData = FactorsBeyondData.Count > 0 || !data.Holds(location);
    }

    /// <summary>The factors' names.</summary>
    public IReadOnlyList<string> Factors { get; }

    /// <summary>The place, one number a factor in the factor's unit.</summary>
    public IReadOnlyList<double> Location { get; }

    /// <summary>How far the surface at the place lies above that at 0 of all factors.</summary>
    public double Height { get; }

    /// <summary>The principal directions, the one of the largest bend first.</summary>
    public IReadOnlyList<PrincipalDirection> Directions { get; }

    /// <summary>What the estimates have there, by the signs of the bends.</summary>
    public SurfaceKind Kind { get; }

    /// <summary>
    /// What the data show at the level asked for: bends that can't be told from 0 are taken for level, so this is
    /// <see cref="SurfaceKind.Ridge"/> more often.
    /// </summary>
    public SurfaceKind ShownKind { get; }

    /// <summary>The factors whose place is beyond the least or the largest value of the data.</summary>
    public IReadOnlyList<string> FactorsBeyondData { get; }

    /// <summary>
    /// Whether the place is outside the data, so that the surface there is a guess: beyond the range of a factor, or
    /// outside the smallest ellipsoid about the data's middle that holds all rows. Montgomery, Peck and Vining (2012),
    /// Introduction to Linear Regression Analysis, 5th ed., section 3.8.
    /// </summary>
    public bool IsOutsideData { get; }

    /// <summary>Finds the stationary point.</summary>
    /// <param name="fit">
    /// A fit that holds the columns of <see cref="SurfaceColumns"/>; others are taken as held.
    /// </param>
    /// <param name="factors">The factors' names, in the order in which the columns were made.</param>
    /// <param name="level">The confidence level of <see cref="ShownKind"/>, between 0 and 1.</param>
    /// <returns>The point, or the problem that the surface has no bend in some direction.</returns>
    /// <exception cref="ArgumentException">A column is missing, or the level is not between 0 and 1.</exception>
    public static Attempt<StationaryPoint> Of(LeastSquaresFit fit, IReadOnlyList<string> factors, double level)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var weights = Weights(fit.Design, factors);
        return weights.Solve([.. fit.Terms.Select(term => term.Estimate)]) is { } location
            ? new StationaryPoint(fit, weights, factors, location, level)
            : new FitProblem(
                FitProblemKind.NoCurvature,
                [.. factors],
                $"The surface has no bend in some direction of {string.Join(", ", factors)}, so it is level nowhere, "
                    + "or along a whole line.",
                "Leave a factor's square and products out, or add rows that differ more in the factors.");
    }

    /// <summary>The distribution of each factor's place over resampled data.</summary>
    /// <param name="refits">Refits of a fit that holds the columns of <see cref="SurfaceColumns"/>.</param>
    /// <param name="factors">The factors' names, in the order in which the columns were made.</param>
    /// <returns>For each factor the distribution, or the problem that stood in its way.</returns>
    /// <exception cref="ArgumentException">A column is missing.</exception>
    public static IReadOnlyList<Attempt<BootstrapDistribution>> Resampled(
        BootstrapRefits refits, IReadOnlyList<string> factors)
    {
        ArgumentNullException.ThrowIfNull(refits);
        var weights = Weights(refits.Fit.Design, factors);
        return [.. factors.Select((name, j) => refits.Of(name, coefficients => weights.Solve(coefficients)?[j]))];
    }

    /// <summary>
    /// Whether a place is in the confidence region of the stationary point: whether all slopes there may be 0. The
    /// coverage is exact for normal errors, and the region can be unbounded.
    /// </summary>
    /// <remarks>
    /// Box and Hunter (1954), A confidence region for the solution of a set of simultaneous equations with an
    /// application to experimental design, Biometrika 41, 190-199.
    /// </remarks>
    /// <param name="place">One number a factor.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <exception cref="ArgumentException">
    /// There is another number of factors, or the level is out of range.
    /// </exception>
    public bool RegionHolds(IReadOnlyList<double> place, double level)
    {
        Tails.RequireLevel(level);
        return RegionPValue(place) >= 1 - level;
    }

    /// <summary>
    /// How often data would speak as much against a place as these do, if all slopes there were 0: a place is in the region
    /// of a level as long as this is at least 1 less the level. From 0 to 1.
    /// </summary>
    /// <param name="place">One number a factor.</param>
    /// <exception cref="ArgumentException">There is another number of factors.</exception>
    public double RegionPValue(IReadOnlyList<double> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        if (place.Count != Factors.Count)
        {
            throw new ArgumentException($"There are {place.Count} numbers for {Factors.Count} factors.", nameof(place));
        }

        var weights = Factors.Select((_, j) => _weights.Slope(j, place)).ToArray();
        var slopes = Vector<double>.Build.DenseOfEnumerable(weights.Select(w => _fit.Combination(w).Estimate));
        if (_fit.ResidualSumOfSquares == 0)
        {
            return slopes.All(s => s == 0) ? 1 : 0;
        }

        // In units of the slopes' own standard errors, so that factors' units don't matter.
        var errors = weights.Select(w => Math.Sqrt(_fit.Covariance(w, w))).ToArray();
        var correlation = Matrix<double>.Build.Dense(
            Factors.Count, Factors.Count, (i, j) => _fit.Covariance(weights[i], weights[j]) / errors[i] / errors[j]);
        var scaled = Vector<double>.Build.Dense(Factors.Count, j => slopes[j] / errors[j]);
        var f = scaled * correlation.Cholesky().Solve(scaled) / Factors.Count;
        return Tails.FisherUpper(f, Factors.Count, _fit.ResidualDegreesOfFreedom);
    }

    private static SurfaceWeights Weights(Design design, IReadOnlyList<string> factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        return factors.Count > 0
            ? new SurfaceWeights(design, factors)
            : throw new ArgumentException("A surface needs at least one factor.", nameof(factors));
    }

    private static SurfaceKind KindOf(IEnumerable<int> signs)
    {
        var set = signs.ToHashSet();
        return set.Contains(1) && set.Contains(-1) ? SurfaceKind.Saddle
            : set.Contains(0) ? SurfaceKind.Ridge
            : set.Contains(1) ? SurfaceKind.Minimum : SurfaceKind.Maximum;
    }

    private PrincipalDirection[] FindDirections(double[] coefficients)
    {
        var axes = _weights.Second(coefficients).Evd(Symmetricity.Symmetric);
        return
        [
            .. Enumerable.Range(0, Factors.Count)
                .OrderByDescending(j => axes.EigenValues[j].Real)
                .Select(j => axes.EigenVectors.Column(j))
                .Select(u => u[u.AbsoluteMaximumIndex()] < 0 ? -u : u)
                .Select((u, place) => new PrincipalDirection(
                    _fit.Combination(_weights.Bend(u), $"bend {place + 1}"), Array.AsReadOnly(u.ToArray()))),
        ];
    }
}
