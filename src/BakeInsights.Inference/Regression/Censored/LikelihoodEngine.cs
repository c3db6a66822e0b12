namespace BakeInsights.Inference;

/// <summary>Maximum likelihood on the logarithms of the bounds.</summary>
internal sealed class LikelihoodEngine : ICensoredEngine
{
    private readonly CensoredLikelihood _likelihood;
    private readonly double[] _point;
    private readonly double _maximum;
    private readonly double[,] _covariance;

    /// <summary>Keeps the maximum, in coefficients and the logarithm of the spread.</summary>
    public LikelihoodEngine(CensoredLikelihood likelihood, NewtonMaximum found, Information factor)
    {
        _likelihood = likelihood;
        _point = found.Point;
        _maximum = found.At.Value;
        _covariance = Covariances(found.Point, factor.Inverse());
        LogSpread = new Term("ln spread", -Math.Log(_point[^1]), Math.Sqrt(_covariance[Size, Size]), N - Size);
    }

    public Term? LogSpread { get; }

    private int Size => _point.Length - 1;

    private int N => _likelihood.Low.Length;

    private double Spread => 1 / _point[^1];

    public double Estimate(IReadOnlyList<double> weights) =>
        Enumerable.Range(0, Size).Sum(j => weights[j] * _point[j] * Spread);

    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        Enumerable.Range(0, Size).Sum(i => Enumerable.Range(0, Size).Sum(
            j => first[i] * _covariance[i, j] * second[j]));

    public ProfileInterval Interval(Term combination, IReadOnlyList<double> weights, double level)
    {
        var freedom = N - Size;
        var pivot = Enumerable.Range(0, Size).MaxBy(
            j => Math.Abs(weights[j]) / _likelihood.Columns[j].Max(Math.Abs));
        var (estimate, error) = (combination.Estimate, combination.StandardError);
        double[] near = [.. _point.Where((_, j) => j != pivot)];

        // The distance in t: twice the fall of the log-likelihood is n ln(1 + t t / v).
        double? Distance(double value)
        {
            var held = _likelihood.Holding(weights, value, pivot);
            var start = held.At(near) is null ? held.Start() : near;
            var found = NewtonMaximum.Find(held.At, start, concave: true);
            if (!found.Converged)
            {
                return null;
            }

            near = found.Point;
            return Math.Sqrt(freedom * (Math.Exp(Math.Max(2 * (_maximum - found.At.Value), 0) / N) - 1));
        }

        return ProfileEnds.Find(Distance, estimate, error, Tails.StudentQuantile(level, freedom));
    }

    public Term Prediction(Term mean)
    {
        var variance = (mean.StandardError * mean.StandardError) + (Spread * Spread);
        return mean with { StandardError = Math.Sqrt(variance * N / (N - Size)) };
    }

    public FitSummary Summary(CensoredValue[] values)
    {
        // A known value's density is that of the value, not of its logarithm.
        var logLikelihood = _maximum - values.Where(v => v.IsExact).Sum(v => Math.Log(v.Low!.Value));
        return new FitSummary(
            "log-normal regression by maximum likelihood",
            N,
            N - Size,
            Spread,
            null,
            logLikelihood,
            AkaikeCriterion.Of(logLikelihood, N, Size + 1));
    }

    public FitRow Row(int row, CensoredValue value, double median)
    {
        var observed = value.IsExact ? value.Low : null;
        return new FitRow(row, observed, median, observed - median, null, null);
    }

    /// <summary>From b / s and 1 / s to b and ln s: at the maximum by the chain rule alone.</summary>
    private static double[,] Covariances(double[] point, double[,] inverse)
    {
        var last = point.Length - 1;
        var spread = 1 / point[last];
        var covariance = new double[point.Length, point.Length];

        // b = g s, so db = s dg - b s da; ln s = -ln a, so d ln s = -s da.
        double Along(int i, Func<int, double> by) => i == last
            ? -spread * by(last)
            : (spread * by(i)) - (point[i] * spread * spread * by(last));
        for (var i = 0; i <= last; i++)
        {
            for (var j = 0; j <= last; j++)
            {
                covariance[i, j] = Along(i, k => Along(j, l => inverse[k, l]));
            }
        }

        return covariance;
    }
}
