namespace BakeInsights.Inference;

/// <summary>
/// The log-likelihood of the cumulative logit model with a normal shift a rater, in thresholds, coefficients and the
/// standard deviation of shifts (last), by adaptive Gauss-Hermite quadrature over each rater's standardized shift u.
/// </summary>
/// <remarks>
/// With u given, the standard deviation is the coefficient of a column that holds u. So the derivatives are averages
/// of those of the plain model over u given the scores: Louis (1982), Finding the observed information matrix when
/// using the EM algorithm, Journal of the Royal Statistical Society B 44, 226-233.
/// </remarks>
internal sealed class RaterLikelihood
{
    private const int Nodes = 25;

    /// <summary>
    /// Common practice, no source: from the middle of a concave function Newton takes fewer than ten.
    /// </summary>
    private const int MostModeSteps = 50;

    private static readonly IReadOnlyList<(double Node, double LogWeight)> Rule = HermiteRule.Of(Nodes);

    private readonly OrdinalData _data;
    private readonly double[] _shift;
    private readonly int[][] _rows;

    /// <summary>Takes the rows of each rater.</summary>
    public RaterLikelihood(OrdinalData data, int[][] rows)
    {
        _shift = new double[data.N];
        _data = data with { Columns = [.. data.Columns, _shift] };
        _rows = rows;
    }

    /// <summary>The log-likelihood; null where thresholds are out of order.</summary>
    public LogLikelihood? At(double[] point)
    {
        var sum = LogLikelihood.Zero(point.Length);
        var value = 0.0;
        foreach (var rows in _rows)
        {
            if (Posterior(rows, point) is not { } posterior)
            {
                return null;
            }

            value += posterior.LogIntegral;
            AddRater(rows, point, posterior, sum);
        }

        return double.IsFinite(value) ? sum with { Value = value } : null;
    }

    /// <summary>The mean and the standard deviation of a rater's u given the scores.</summary>
    public (double Mean, double Deviation) Shift(int[] rows, double[] point)
    {
        var posterior = Posterior(rows, point)
            ?? throw new ArgumentException("The point is outside the domain.", nameof(point));
        var mean = posterior.Nodes.Sum(n => n.Weight * n.U);
        return (mean, Math.Sqrt(posterior.Nodes.Sum(n => n.Weight * (n.U - mean) * (n.U - mean))));
    }

    private void AddRater(int[] rows, double[] point, RaterPosterior posterior, LogLikelihood sum)
    {
        var size = point.Length;
        var mean = new double[size];
        var gradients = new double[Nodes][];
        var curvature = new double[size, size];
        for (var q = 0; q < Nodes; q++)
        {
            var (u, weight) = posterior.Nodes[q];
            gradients[q] = new double[size];
            var at = new double[size, size];
            foreach (var i in rows)
            {
                _shift[i] = u;
                _data.Add(i, _data.Row(i, point), gradients[q], at);
            }

            for (var a = 0; a < size; a++)
            {
                mean[a] += weight * gradients[q][a];
                for (var b = 0; b <= a; b++)
                {
                    curvature[a, b] += weight * at[a, b];
                }
            }
        }

        for (var a = 0; a < size; a++)
        {
            sum.Gradient[a] += mean[a];
            for (var b = 0; b <= a; b++)
            {
                var covariance = 0.0;
                for (var q = 0; q < Nodes; q++)
                {
                    covariance += posterior.Nodes[q].Weight * (gradients[q][a] - mean[a]) * (gradients[q][b] - mean[b]);
                }

                sum.Curvature[a, b] += curvature[a, b] - covariance;
            }
        }
    }

    /// <summary>The distribution of a rater's u given the scores, at nodes about its mode.</summary>
    private RaterPosterior? Posterior(int[] rows, double[] point)
    {
        if (Mode(rows, point) is not var (mode, width))
        {
            return null;
        }

        var logs = new double[Nodes];
        var nodes = new (double U, double Weight)[Nodes];
        for (var q = 0; q < Nodes; q++)
        {
            var (x, logWeight) = Rule[q];
            nodes[q].U = mode + (Math.Sqrt(2) * width * x);
            logs[q] = logWeight + (x * x) + Joint(rows, point, nodes[q].U).Value;
        }

        var highest = logs.Max();
        var total = logs.Sum(l => Math.Exp(l - highest));
        for (var q = 0; q < Nodes; q++)
        {
            nodes[q].Weight = Math.Exp(logs[q] - highest) / total;
        }

        // The integral of the joint density over u, of which sqrt(2) width dx is du.
        var logIntegral = highest + Math.Log(total * Math.Sqrt(2) * width) - (Math.Log(2 * Math.PI) / 2);
        return new RaterPosterior(nodes, logIntegral);
    }

    private (double Mode, double Width)? Mode(int[] rows, double[] point)
    {
        var u = 0.0;
        for (var k = 0; k < MostModeSteps; k++)
        {
            var (value, slope, curvature) = Joint(rows, point, u);
            if (!double.IsFinite(value))
            {
                return null;
            }

            // The curvature is at least 1, the normal's own, and the slope of a logistic term is bounded; so halving
            // the step until the value doesn't fall is all the care it takes.
            var step = slope / curvature;
            for (var halving = 0; halving < MostModeSteps && Joint(rows, point, u + step).Value < value; halving++)
            {
                step /= 2;
            }

            u += step;
            if (Math.Abs(step) <= 1e-10 * (1 + Math.Abs(u)))
            {
                break;
            }
        }

        return (u, 1 / Math.Sqrt(Joint(rows, point, u).Curvature));
    }

    /// <summary>The logarithm of the density of scores and u without the normal's constant, by u.</summary>
    private (double Value, double Slope, double Curvature) Joint(int[] rows, double[] point, double u)
    {
        var (value, slope, curvature, spread) = (-u * u / 2, -u, 1.0, point[^1]);
        foreach (var i in rows)
        {
            _shift[i] = u;
            var row = _data.Row(i, point);
            value += row.Value;
            slope += spread * row.ByShift;
            curvature -= spread * spread * row.ByShiftTwice;
        }

        return (value, slope, curvature);
    }

    private sealed record RaterPosterior((double U, double Weight)[] Nodes, double LogIntegral);
}
