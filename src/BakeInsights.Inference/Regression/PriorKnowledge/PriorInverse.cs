using MathNet.Numerics;

namespace BakeInsights.Inference;

/// <summary>The value of a column at which the mean response is a given number, as far as priors and data tell.</summary>
/// <remarks>
/// An end of the interval is the value at which the mean response is believed, with the interval's tail probability, to
/// lie beyond the wanted one: the interval of the mean turned round, as calibration by a line is (Fieller 1954, Journal
/// of the Royal Statistical Society B 16, 175-185), with the posterior distribution in place of Student's t. As long as
/// the slope's sign is beyond doubt these are the quantiles of the unknown value's own posterior. An end is null where no
/// value within <see cref="Reach"/> is ruled out, which is when the slope can hardly be told from zero.
/// </remarks>
/// <param name="Estimate">
/// The value at which the mean response is as likely above the wanted one as below; null if there is none within
/// <see cref="Reach"/>.
/// </param>
/// <param name="Low">The lower end of the interval, or null.</param>
/// <param name="High">The upper end of the interval, or null.</param>
public sealed record PriorInverse(double? Estimate, double? Low, double? High)
{
    /// <summary>How far from the start values are looked for, in the column's unit. Our own choice: further is no value to use.</summary>
    public const double Reach = 1_000;

    private const int Halvings = 60;

    /// <summary>Turns the mean response round.</summary>
    internal static PriorInverse Find(
        GivenSpread[] parts, int column, IReadOnlyList<double> row, double response, double level)
    {
        Tails.RequireLevel(level);

        var lines = Array.ConvertAll(parts, part => new Line(part, column, row));
        var rises = lines.Sum(line => line.Weight * line.Slope) > 0;

        // The probability that the mean response at a value is beyond the wanted one: it goes from 0 to 1 as the value grows.
        double Passed(double value) => lines.Sum(line => line.Weight * line.Above(value, response, rises));

        double? Where(double probability)
        {
            var (low, high) = (row[column] - Reach, row[column] + Reach);
            if (Passed(low) > probability || Passed(high) < probability)
            {
                return null;
            }

            for (var step = 0; step < Halvings; step++)
            {
                var middle = (low + high) / 2;
                (low, high) = Passed(middle) < probability ? (middle, high) : (low, middle);
            }

            return (low + high) / 2;
        }

        var tail = (1 - level) / 2;
        return new PriorInverse(Where(0.5), Where(tail), Where(1 - tail));
    }

    /// <summary>The mean response along the column, at one residual spread.</summary>
    private sealed class Line
    {
        private readonly double _start;
        private readonly double _level;
        private readonly double _levelVariance;
        private readonly double _covariance;
        private readonly double _slopeVariance;

        public Line(GivenSpread part, int column, IReadOnlyList<double> row)
        {
            double[] along = [.. row.Select((_, j) => j == column ? 1.0 : 0)];
            Weight = part.Weight;
            Slope = part.Mean[column];
            _start = row[column];
            _level = part.Mean.Zip(row, (mean, x) => mean * x).Sum();
            _levelVariance = part.Between(row, row);
            _covariance = part.Between(row, along);
            _slopeVariance = part.Covariance[column, column];
        }

        public double Weight { get; }

        public double Slope { get; }

        public double Above(double value, double response, bool rises)
        {
            var step = value - _start;
            var variance = _levelVariance + (2 * step * _covariance) + (step * step * _slopeVariance);
            var miss = (rises ? 1 : -1) * (_level + (step * Slope) - response);
            return SpecialFunctions.Erfc(-miss / Math.Sqrt(2 * Math.Max(variance, double.Epsilon))) / 2;
        }
    }
}
