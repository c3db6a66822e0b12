namespace BakeInsights.Inference;

/// <summary>
/// Predicts the groups' intercepts and slopes, with the variance of the prediction and its derivatives.
/// </summary>
/// <remarks>
/// With P the relative covariance, N = R'B R and T = R'B Q'X of the group and C = (X'V^-1 X)^-1, the prediction is
/// P R'B (Q'y - Q'X b), its variance over the residual variance is P - P N P given the coefficients, and
/// P - P N P + (P T) C (P T)' with these estimated: Henderson (1975), Biometrics 31, 423-447.
/// </remarks>
internal sealed class GroupPrediction(
    GroupReduction reduction,
    RelativeFactor factor,
    DevianceDerivatives at,
    double variance,
    SatterthwaiteDegrees degrees)
{
    private readonly int _size = reduction.HasSlope ? 2 : 1;
    private readonly int _columns = reduction.Width - 1;

    /// <summary>The prediction of one combination of each group's intercept and slope.</summary>
    /// <param name="group">The group's place.</param>
    /// <param name="weights">The weight of the intercept and, in a model with slopes, of the slope.</param>
    public PredictedEffect Of(int group, double[] weights)
    {
        var w = GroupWeights.Of(reduction.Triangles.AsSpan(3 * group, 3), factor);
        var (p00, p01, p11) = factor.Covariance;
        var (first, second) = (weights[0], _size == 2 ? weights[1] : 0);

        // a = P weights; c = (I - N P) weights, taken as (I + R'R P)^-1 weights, which cancels nothing where the spread
        // between groups is large.
        var (a0, a1) = ((p00 * first) + (p01 * second), (p01 * first) + (p11 * second));
        var (r00, r01, r11) = (reduction.Triangles[3 * group], reduction.Triangles[(3 * group) + 1],
            reduction.Triangles[(3 * group) + 2]);
        var (w00, w01, w11) = (r00 * r00, r00 * r01, (r01 * r01) + (r11 * r11));
        var determinant = Math.Exp(w.LogDeterminant);
        var (c0, c1) = (
            (((1 + (w01 * p01) + (w11 * p11)) * first) - (((w00 * p01) + (w01 * p11)) * second)) / determinant,
            (((1 + (w00 * p00) + (w01 * p01)) * second) - (((w01 * p00) + (w11 * p01)) * first)) / determinant);
        var between = reduction.Between.AsSpan(2 * group * reduction.Width, 2 * reduction.Width);
        var t0 = new double[reduction.Width];
        var t1 = new double[reduction.Width];
        var u = new double[reduction.Width];
        for (var j = 0; j < t0.Length; j++)
        {
            var (x0, x1) = (between[j], between[reduction.Width + j]);
            t0[j] = (w.Rb00 * x0) + (w.Rb01 * x1);
            t1[j] = (w.Rb10 * x0) + (w.Rb11 * x1);
            u[j] = (a0 * t0[j]) + (a1 * t1[j]);
        }

        var columns = u.AsSpan(0, _columns);
        var value = u[_columns] - OrthonormalColumns.Dot(columns, at.Coordinates);
        var conditional = Math.Max((a0 * c0) + (a1 * c1), 0);
        var solved = SmallMatrix.Times(at.Inverse, columns);
        var whole = conditional + OrthonormalColumns.Dot(columns, solved);
        var deviation = Math.Sqrt(variance * conditional);
        if (!(whole > 0))
        {
            return new PredictedEffect(value, deviation, null, null);
        }

        // By an element with table E: d(P - P N P) = c'E c, d(weights'P T) = c'E T, dC = -C dS C.
        var (s0, s1) = (OrthonormalColumns.Dot(t0.AsSpan(0, _columns), solved),
            OrthonormalColumns.Dot(t1.AsSpan(0, _columns), solved));
        double[] change = [(c0 * c0) + (2 * c0 * s0)];
        if (_size == 2)
        {
            change =
            [
                change[0],
                (2 * c0 * c1) + (2 * ((c0 * s1) + (c1 * s0))),
                (c1 * c1) + (2 * c1 * s1),
            ];
        }

        for (var k = 0; k < change.Length; k++)
        {
            change[k] -= SmallMatrix.Quadratic(at.ColumnChange[k], solved, solved);
        }

        return new PredictedEffect(value, deviation, Math.Sqrt(variance * whole), degrees.Of(whole, change));
    }
}
