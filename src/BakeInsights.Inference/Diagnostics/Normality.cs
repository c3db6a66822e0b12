using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>Checks whether residuals are spread like the normal curve.</summary>
public static class Normality
{
    /// <summary>The rows that the approximation of the p value was made for.</summary>
    private const int FewestRows = 3, MostRows = 5000;

    /// <summary>
    /// The test of Shapiro and Wilk on the residuals: the squared correlation, near enough, of the ordered residuals
    /// with what a normal sample would have. Residuals are taken for independent, which is near the truth only if rows
    /// are several times as many as columns.
    /// </summary>
    /// <remarks>
    /// Shapiro and Wilk (1965), Biometrika 52, 591-611; weights and p value: Royston (1995), Remark AS R94, Applied
    /// Statistics 44, 547-551.
    /// </remarks>
    /// <returns>The check, or a problem: the fit is perfect, or the rows are not 3 to 5,000.</returns>
    public static Attempt<Diagnostic> ShapiroWilk(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (Diagnostic.PerfectFit(fit) is { } problem)
        {
            return problem;
        }

        if (fit.N is < FewestRows or > MostRows)
        {
            return new FitProblem(
                fit.N < FewestRows ? FitProblemKind.TooFewRows : FitProblemKind.OutOfRange,
                [LeastSquares.ResponseName],
                $"There are {fit.N} rows, and the test is made for {FewestRows} to {MostRows}.",
                fit.N < FewestRows ? "Add rows." : "With so many rows, look at the residuals' quantiles instead.");
        }

        double[] ordered = [.. fit.Residuals.Select((r, i) => r * Math.Sqrt(fit.Weights?[i] ?? 1)).Order()];
        var w = Statistic(ordered);
        return Diagnostic.Test(
            "Shapiro-Wilk", w, "Royston's normalised distribution", PValue(w, ordered.Length),
            "The residuals are not spread like the normal curve", "The residuals can pass for normal");
    }

    private static double Statistic(double[] ordered)
    {
        var weights = Weights(ordered.Length);
        var mean = ordered.Average();
        var numerator = ordered.Select((value, i) => weights[i] * (value - mean)).Sum();
        return Math.Min(1, numerator * numerator / ordered.Sum(value => (value - mean) * (value - mean)));
    }

    /// <summary>Royston's weights: expected normal order statistics, the outermost one or two by polynomials.</summary>
    private static double[] Weights(int n)
    {
        if (n == 3)
        {
            return [-Math.Sqrt(0.5), 0, Math.Sqrt(0.5)];
        }

        double[] scores = [.. Enumerable.Range(1, n).Select(i => Normal.InvCDF(0, 1, (i - 0.375) / (n + 0.25)))];
        var squares = scores.Sum(m => m * m);
        var u = 1 / Math.Sqrt(n);
        var last = Polynomial(u, scores[^1] / Math.Sqrt(squares), 0.221157, -0.147981, -2.071190, 4.434685, -2.706056);
        var next = Polynomial(u, scores[^2] / Math.Sqrt(squares), 0.042981, -0.293762, -1.752461, 5.682633, -3.582633);
        double[] outer = n > 5 ? [last, next] : [last];
        var rest = squares - (2 * outer.Select((_, k) => Math.Pow(scores[^(k + 1)], 2)).Sum());
        var scale = Math.Sqrt(rest / (1 - (2 * outer.Sum(a => a * a))));
        double[] weights = [.. scores.Select(m => m / scale)];
        for (var k = 0; k < outer.Length; k++)
        {
            (weights[k], weights[^(k + 1)]) = (-outer[k], outer[k]);
        }

        return weights;
    }

    private static double PValue(double w, int n)
    {
        if (n == 3)
        {
            return Math.Clamp(6 / Math.PI * (Math.Asin(Math.Sqrt(w)) - Math.Asin(Math.Sqrt(0.75))), 0, 1);
        }

        var y = Math.Log(1 - w);
        var x = Math.Log(n);
        if (n > 11)
        {
            var mean = Polynomial(x, -1.5861, -0.31082, -0.083751, 0.0038915);
            return UpperNormal((y - mean) / Math.Exp(Polynomial(x, -0.4803, -0.082676, 0.0030302)));
        }

        var bound = Polynomial(n, -2.273, 0.459);
        var centre = Polynomial(n, 0.5440, -0.39978, 0.025054, -0.0006714);
        var width = Math.Exp(Polynomial(n, 1.3822, -0.77857, 0.062767, -0.0020322));
        return y >= bound ? 0 : UpperNormal((-Math.Log(bound - y) - centre) / width);
    }

    private static double UpperNormal(double z) => MathNet.Numerics.SpecialFunctions.Erfc(z / Math.Sqrt(2)) / 2;

    private static double Polynomial(double x, params double[] coefficients) =>
        coefficients.Reverse().Aggregate(0.0, (sum, c) => (sum * x) + c);
}
