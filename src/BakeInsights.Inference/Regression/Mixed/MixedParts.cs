namespace BakeInsights.Inference;

/// <summary>What a mixed fit is made from.</summary>
/// <param name="Columns">The design's columns made orthonormal.</param>
/// <param name="Reduction">The reduced rows.</param>
/// <param name="Grouping">The rows by group.</param>
/// <param name="Line">The column with a slope by group; null if there is none.</param>
/// <param name="Deviance">The deviance.</param>
/// <param name="Minimum">Where it is least.</param>
internal sealed record MixedParts(
    OrthonormalColumns Columns,
    GroupReduction Reduction,
    Grouping Grouping,
    CentredColumn? Line,
    MixedDeviance Deviance,
    (RelativeFactor Factor, DevianceDerivatives At, MixedBoundary Boundary) Minimum)
{
    /// <summary>The residual variance.</summary>
    public double Variance => Minimum.At.ResidualSum / Deviance.Divisor;

    /// <summary>The variances in the units of response and column.</summary>
    public MixedVariances Variances()
    {
        var (p, q, s) = Minimum.Factor.Covariance;
        double Form(double[] a, double[] b) =>
            Variance * ((a[0] * b[0] * p) + (((a[0] * b[1]) + (a[1] * b[0])) * q) + (a[1] * b[1] * s));
        return Line is null
            ? new MixedVariances(Variance, Variance * p, null, null)
            : new MixedVariances(
                Variance,
                Form(Line.Intercept, Line.Intercept),
                Form(Line.Slope, Line.Slope),
                Form(Line.Intercept, Line.Slope));
    }

    /// <summary>The predictions of all groups.</summary>
    public GroupEffect[] Effects(SatterthwaiteDegrees degrees)
    {
        var prediction = new GroupPrediction(Reduction, Minimum.Factor, Minimum.At, Variance, degrees);
        return
        [
            .. Grouping.Names.Select((name, g) => new GroupEffect(
                name,
                Grouping.Rows[g].Length,
                prediction.Of(g, Line?.Intercept ?? [1]),
                Line is null ? null : prediction.Of(g, Line.Slope))),
        ];
    }

    /// <summary>The fitted values by row, the groups' effects included.</summary>
    /// <param name="leastSquares">The fitted values of the start.</param>
    /// <param name="effects">The groups' effects.</param>
    public double[] Fitted(IReadOnlyList<double> leastSquares, GroupEffect[] effects)
    {
        var fitted = leastSquares.ToArray();
        for (var j = 0; j < Columns.Q.Length; j++)
        {
            var (column, shift) = (Columns.Q[j], Minimum.At.Coordinates[j]);
            for (var i = 0; i < fitted.Length; i++)
            {
                fitted[i] += shift * column[i];
            }
        }

        for (var i = 0; i < fitted.Length; i++)
        {
            var effect = effects[Grouping.GroupOfRow[i]];
            fitted[i] += effect.Intercept.Value
                + (Line is null ? 0 : effect.Slope!.Value * (Line.Mean + (Line.Values[i] * Line.Spread)));
        }

        return fitted;
    }
}
