using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>Draws of what is believed of several regressions at once.</summary>
public sealed class JointDraws
{
    private readonly JointDraw[] _draws;
    private readonly double[][] _shares;

    internal JointDraws(IReadOnlyList<JointResponse> responses, JointDraw[] draws)
    {
        Responses = [.. responses];
        _draws = draws;

        // Shares of a new unit's luck, spread evenly over the draws, the same at every row that is asked of: what differs
        // between two rows is then the rows' doing.
        _shares = [.. responses.Select((_, k) => Enumerable.Range(0, draws.Length).Select(d => Even(d, k)).ToArray())];
    }

    /// <summary>The responses.</summary>
    public IReadOnlyList<JointResponse> Responses { get; }

    /// <summary>How many draws there are.</summary>
    public int Count => _draws.Length;

    /// <summary>The mean, over the draws, of a coefficient.</summary>
    /// <param name="response">The response, from 0.</param>
    /// <param name="column">The column, from 0.</param>
    public double MeanOf(int response, int column) => _draws.Average(draw => draw.Coefficients[response][column]);

    /// <summary>The residual standard deviation of a response by draw.</summary>
    /// <param name="response">The response, from 0.</param>
    public IReadOnlyList<double> SpreadsOf(int response) =>
        [.. _draws.Select(draw => Math.Sqrt(Enumerable.Range(0, response + 1).Sum(j => draw.Root[response, j] * draw.Root[response, j])))];

    /// <summary>The correlation of the residuals of two responses by draw.</summary>
    /// <param name="first">A response, from 0.</param>
    /// <param name="second">Another.</param>
    public IReadOnlyList<double> CorrelationsOf(int first, int second)
    {
        var (one, other) = (SpreadsOf(first), SpreadsOf(second));
        return [.. _draws.Select((draw, d) =>
            Enumerable.Range(0, Math.Min(first, second) + 1).Sum(j => draw.Root[first, j] * draw.Root[second, j]) / (one[d] * other[d]))];
    }

    /// <summary>
    /// The probability, by draw, that every response of one new unit lies within its bounds. The mean over the draws is the
    /// chance, all uncertainty counted; how the draws differ is what better knowledge of the coefficients could make of it.
    /// </summary>
    /// <remarks>
    /// Responses one after the other, each given what was drawn of those before within their bounds: Geweke (1991),
    /// Hajivassiliou and Ruud (1994), Handbook of Econometrics 4, 2383-2441.
    /// </remarks>
    /// <param name="rows">A row of column values for each response; columns that happen are not read.</param>
    /// <param name="within">The bounds of each response; an infinite one is none.</param>
    /// <exception cref="ArgumentException">The numbers of rows, bounds or columns don't fit.</exception>
    public double[] Probabilities(IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<Interval> within)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(within);
        if (rows.Count != Responses.Count || within.Count != Responses.Count
            || rows.Zip(Responses, (row, response) => row.Count != response.Design.Columns.Count).Any(wrong => wrong))
        {
            throw new ArgumentException("Each response takes a row, with a value for each column, and bounds.", nameof(rows));
        }

        var set = rows.Select((row, k) => Set(row, Responses[k])).ToArray();
        var probabilities = new double[Count];
        for (var d = 0; d < Count; d++)
        {
            probabilities[d] = Probability(_draws[d], d, set, within);
        }

        return probabilities;
    }

    private double Probability(JointDraw draw, int d, double[][] rows, IReadOnlyList<Interval> within)
    {
        Span<double> luck = stackalloc double[rows.Length];
        var probability = 1.0;
        for (var k = 0; k < rows.Length; k++)
        {
            var mean = draw.Added[k];
            for (var j = 0; j < rows[k].Length; j++)
            {
                mean += rows[k][j] * draw.Coefficients[k][j];
            }

            for (var j = 0; j < k; j++)
            {
                mean += draw.Root[k, j] * luck[j];
            }

            var below = Below((within[k].Low - mean) / draw.Root[k, k]);
            var share = Math.Max(0, Below((within[k].High - mean) / draw.Root[k, k]) - below);
            probability *= share;
            if (probability == 0)
            {
                return 0;
            }

            if (k < rows.Length - 1)
            {
                luck[k] = Normal.InvCDF(0, 1, Math.Clamp(below + (share * _shares[k][d]), double.Epsilon, 1 - LeastSquares.Epsilon));
            }
        }

        return probability;
    }

    private static double Below(double z) => double.IsInfinity(z) ? (z > 0 ? 1 : 0) : MathNet.Numerics.SpecialFunctions.Erfc(-z / Math.Sqrt(2)) / 2;

    private static double[] Set(IReadOnlyList<double> row, JointResponse response)
    {
        double[] set = [.. row];
        foreach (var column in response.Varying)
        {
            set[response.Design.IndexOf(column)] = 0;
        }

        return set;
    }

    // Additive recurrences of irrational steps fill the interval evenly (Weyl 1916): roots of the first primes.
    private static double Even(int draw, int response)
    {
        double[] steps = [Math.Sqrt(2), Math.Sqrt(3), Math.Sqrt(5), Math.Sqrt(7), Math.Sqrt(11), Math.Sqrt(13)];
        var value = (draw + 0.5) * steps[response % steps.Length];
        return value - Math.Floor(value);
    }
}
