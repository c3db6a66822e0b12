namespace BakeInsights.Inference;

/// <summary>The mean squares of ratings, and the correlations and their limits that follow from them.</summary>
/// <param name="ThingCount">The number of things.</param>
/// <param name="JudgeCount">The number of judges.</param>
/// <param name="Things">The mean square between things.</param>
/// <param name="Judges">The mean square between judges.</param>
/// <param name="Residual">The mean square that both leave over.</param>
/// <param name="Within">The mean square within things.</param>
internal sealed record IntraclassMeanSquares(
    int ThingCount, int JudgeCount, double Things, double Judges, double Residual, double Within)
{
    /// <summary>The analysis of variance of a table.</summary>
    public static IntraclassMeanSquares Of(RatingTable ratings)
    {
        var (n, k) = (ratings.ThingCount, ratings.JudgeCount);
        double[] things = [.. Enumerable.Range(0, n).Select(i => ratings.Thing(i).Average())];
        double[] judges = [.. Enumerable.Range(0, k).Select(j => ratings.Judge(j).Average())];
        var mean = things.Average();
        var cells = from i in Enumerable.Range(0, n) from j in Enumerable.Range(0, k) select (i, j);
        var (within, residual) = (0.0, 0.0);
        foreach (var (i, j) in cells)
        {
            within += Square(ratings[i, j] - things[i]);
            residual += Square(ratings[i, j] - things[i] - judges[j] + mean);
        }

        // Sums this small beside the ratings are rounding.
        var scale = Enumerable.Range(0, n).Max(i => ratings.Thing(i).Max(Math.Abs));
        var rounding = n * k * Square(4 * LeastSquares.Epsilon * scale);
        return new IntraclassMeanSquares(
            n, k,
            k * things.Sum(m => Square(m - mean)) / (n - 1),
            n * judges.Sum(m => Square(m - mean)) / (k - 1),
            residual > rounding ? residual / ((n - 1) * (k - 1)) : 0,
            within > rounding ? within / (n * (k - 1)) : 0);
    }

    /// <summary>The correlation of one judge's ratings.</summary>
    public double Correlation(AgreementKind kind) => kind switch
    {
        AgreementKind.OneWay => (Things - Within) / (Things + ((JudgeCount - 1) * Within)),
        AgreementKind.Absolute => (Things - Residual)
            / (Things + ((JudgeCount - 1) * Residual) + ((double)JudgeCount * (Judges - Residual) / ThingCount)),
        _ => (Things - Residual) / (Things + ((JudgeCount - 1) * Residual)),
    };

    /// <summary>The correlation of the mean of all judges (Spearman and Brown's formula).</summary>
    public double? OfMean(double single)
    {
        var denominator = 1 + ((JudgeCount - 1) * single);
        return denominator > 1e-12 ? JudgeCount * single / denominator : null;
    }

    /// <summary>The limits of one judge's correlation, each tail left out.</summary>
    public Interval Interval(AgreementKind kind, double single, double tail)
    {
        var (n, k) = ((double)ThingCount, (double)JudgeCount);
        if (kind == AgreementKind.Absolute)
        {
            return Absolute(single, tail);
        }

        var error = kind == AgreementKind.OneWay ? Within : Residual;
        var df = kind == AgreementKind.OneWay ? n * (k - 1) : (n - 1) * (k - 1);
        var ratio = Things / error;
        var low = ratio / FisherQuantile.Of(tail, n - 1, df);
        var high = ratio * FisherQuantile.Of(tail, df, n - 1);
        return new Interval((low - 1) / (low + k - 1), (high - 1) / (high + k - 1));
    }

    /// <summary>
    /// The judges' and the residual mean square together have Satterthwaite's degrees of freedom: McGraw and Wong
    /// (1996), table 7.
    /// </summary>
    private Interval Absolute(double single, double tail)
    {
        var (n, k) = ((double)ThingCount, (double)JudgeCount);

        // A negative correlation would weigh the mean squares against each other, and the degrees of freedom of such a
        // difference can be next to none: the ends of the interval would change places. It counts as 0 here.
        var weight = Math.Max(0, single) / (n * (1 - single));
        var a = k * weight;
        var b = 1 + (k * weight * (n - 1));
        var df = Square((a * Judges) + (b * Residual))
            / ((Square(a * Judges) / (k - 1)) + (Square(b * Residual) / ((n - 1) * (k - 1))));
        var others = (k * Judges) + (((k * n) - k - n) * Residual);
        var below = FisherQuantile.Of(tail, n - 1, df);
        var above = FisherQuantile.Of(tail, df, n - 1);
        return new Interval(
            n * (Things - (below * Residual)) / ((below * others) + (n * Things)),
            n * ((above * Things) - Residual) / (others + (n * above * Things)));
    }

    private static double Square(double x) => x * x;
}
