using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What the planned bakes may be expected to bring, by results made up from what the journal says so far.</summary>
/// <remarks>
/// Coefficients and scatter are drawn from what the fit of the earlier bakes leaves open (normal and chi-square, as least
/// squares has them with nothing known before: Box and Tiao 1973, Bayesian Inference in Statistical Analysis, section
/// 2.7), results of the planned bakes from those, and the question is asked again of old and new bakes together.
/// </remarks>
internal sealed class NextForecast
{
    /// <summary>Made-up outcomes: a median is then good to a few percent of the spread. Our own choice.</summary>
    public const int Outcomes = 400;

    /// <summary>Bakes beyond which nobody plans. Our own choice.</summary>
    public const int MostBakes = 200;

    private readonly NextModel _model;
    private readonly SettingLimits _hydration;
    private readonly double[][] _rows;
    private readonly double[,] _root;
    private readonly RunningSums _earlier;
    private readonly int _seed;

    public NextForecast(NextModel model, IReadOnlyList<DoughSettings> doughs, SettingLimits hydration, int seed)
    {
        (_model, _hydration, _seed) = (model, hydration, seed);
        _rows = [.. doughs.Select(model.Row)];
        _root = CovarianceRoot(model.Fit!);
        _earlier = new RunningSums(model.Names);
        for (var row = 0; row < model.Bakes.Count; row++)
        {
            _earlier.Add([.. model.Fit!.Design.Row(row)], model.Fit.Response[row]);
        }
    }

    /// <summary>The intervals after so many bakes, the planned doughs over and over, from the narrowest on.</summary>
    public IReadOnlyList<AnswerInterval> After(int bakes)
    {
        var intervals = new AnswerInterval[Outcomes];
        Parallel.For(0, Outcomes, outcome => intervals[outcome] = One(outcome, bakes));
        return [.. intervals.OrderBy(interval => interval.Half)];
    }

    /// <summary>The fewest bakes after which half of the outcomes are at most this wide; null if more than <see cref="MostBakes"/>.</summary>
    public int? BakesUntil(double half)
    {
        bool IsEnough(int bakes) => After(bakes)[Outcomes / 2].Half <= half;
        var (low, high) = (0, Math.Max(1, _rows.Length));
        while (!IsEnough(high))
        {
            if (high == MostBakes)
            {
                return null;
            }

            (low, high) = (high, Math.Min(2 * high, MostBakes));
        }

        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = IsEnough(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }

    private AnswerInterval One(int outcome, int bakes)
    {
        var draws = new Draws(_seed, Draws.Purpose.Plans, outcome);
        var fit = _model.Fit!;
        var square = 0.0;
        for (var i = 0; i < fit.ResidualDegreesOfFreedom; i++)
        {
            var normal = draws.Normal();
            square += normal * normal;
        }

        var stretch = Math.Sqrt(fit.ResidualDegreesOfFreedom / square);
        double[] normals = [.. fit.Terms.Select(_ => draws.Normal())];
        double[] truth = [.. fit.Terms.Select((term, i) => term.Estimate + (stretch * Enumerable.Range(0, i + 1).Sum(j => _root[i, j] * normals[j])))];
        var sums = new RunningSums(_model.Names);
        for (var bake = 0; bake < bakes; bake++)
        {
            var row = _rows[bake % _rows.Length];
            sums.Add(row, row.Zip(truth, (value, coefficient) => value * coefficient).Sum() + (stretch * fit.ResidualStandardDeviation * draws.Normal()));
        }

        return AnswerInterval.Of(_model.Question, _earlier.Join(sums).Fit().Value, _hydration);
    }

    // The lower triangle whose product with its transpose is the covariance of the coefficients (Cholesky).
    private static double[,] CovarianceRoot(LeastSquaresFit fit)
    {
        var size = fit.Terms.Count;
        var root = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var rest = fit.Covariance(i, j) - Enumerable.Range(0, j).Sum(k => root[i, k] * root[j, k]);
                root[i, j] = i == j ? Math.Sqrt(Math.Max(rest, 0)) : root[j, j] > 0 ? rest / root[j, j] : 0;
            }
        }

        return root;
    }
}
