using System.Numerics;
using System.Runtime.InteropServices;

namespace BakeInsights.Inference;

/// <summary>What coefficients leave of a response, summed in doubled precision.</summary>
internal static class Remainders
{
    /// <summary>Rows at a time, so that both parts of a block stay within a processor's nearest memory.</summary>
    private const int Block = 1024;

    /// <summary>The residuals: response less fitted value by row, rounded only at the end.</summary>
    public static double[] Of(WorkRows rows, Doubled[] coefficients)
    {
        var residuals = new double[rows.Count];
        Parts.ForEach(rows.Count, (_, from, to) => InBlocks(from, to, (start, high, low) =>
        {
            Fill(rows, coefficients, start, high, low);
            for (var i = 0; i < high.Length; i++)
            {
                residuals[start + i] = high[i] + low[i];
            }
        }));
        return residuals;
    }

    /// <summary>The inner products of the columns with the weighted residuals, all zero at the solution.</summary>
    public static Doubled[] Gradient(WorkRows rows, Doubled[] coefficients)
    {
        var parts = new Doubled[Parts.CountFor(rows.Count)][];
        Parts.ForEach(rows.Count, (part, from, to) =>
        {
            var sums = parts[part] = new Doubled[rows.Predictors];
            InBlocks(from, to, (start, high, low) =>
            {
                Fill(rows, coefficients, start, high, low);
                Weigh(rows.Weights, start, high, low);
                for (var j = 0; j < sums.Length; j++)
                {
                    sums[j] += Inner(Slice(rows.Column(j).Span, start, high), high, low)
                        + Inner(Slice(rows.Column(j).LowSpan, start, high), high, []);
                }
            });
        });
        return [.. Enumerable.Range(0, rows.Predictors).Select(j => parts.Aggregate((Doubled)0, (sum, p) => sum + p[j]))];
    }

    private delegate void BlockAction(int start, Span<double> high, Span<double> low);

    private static void InBlocks(int from, int to, BlockAction action)
    {
        Span<double> high = stackalloc double[Block], low = stackalloc double[Block];
        for (var start = from; start < to; start += Block)
        {
            var count = Math.Min(Block, to - start);
            action(start, high[..count], low[..count]);
        }
    }

    private static ReadOnlySpan<double> Slice(ReadOnlySpan<double> column, int start, Span<double> block) =>
        column.IsEmpty ? column : column.Slice(start, block.Length);

    private static void Fill(
        WorkRows rows, Doubled[] coefficients, int start, Span<double> high, Span<double> low)
    {
        Slice(rows.Response.Span, start, high).CopyTo(high);
        low.Clear();
        for (var j = 0; j < coefficients.Length; j++)
        {
            Subtract(high, low, coefficients[j], Slice(rows.Column(j).Span, start, high));
            var rest = Slice(rows.Column(j).LowSpan, start, high);
            for (var i = 0; i < rest.Length; i++)
            {
                low[i] -= coefficients[j].High * rest[i];
            }
        }
    }

    private static void Subtract(Span<double> high, Span<double> low, Doubled factor, ReadOnlySpan<double> column)
    {
        var highs = MemoryMarshal.Cast<double, Vector<double>>(high);
        var lows = MemoryMarshal.Cast<double, Vector<double>>(low);
        var columns = MemoryMarshal.Cast<double, Vector<double>>(column);
        var factors = new Vector<double>(-factor.High);
        var factorLows = new Vector<double>(-factor.Low);
        for (var k = 0; k < columns.Length; k++)
        {
            var product = columns[k] * factors;
            var error = Vector.FusedMultiplyAdd(columns[k], factors, -product);
            var sum = highs[k] + product;
            var second = sum - highs[k];
            var rest = (highs[k] - (sum - second)) + (product - second);
            highs[k] = sum;
            lows[k] += rest + Vector.FusedMultiplyAdd(columns[k], factorLows, error);
        }

        for (var i = columns.Length * Vector<double>.Count; i < column.Length; i++)
        {
            var product = Doubled.Product(column[i], -factor.High);
            var sum = Doubled.Sum(high[i], product.High);
            high[i] = sum.High;
            low[i] += sum.Low + (product.Low - (column[i] * factor.Low));
        }
    }

    private static void Weigh(double[]? weights, int start, Span<double> high, Span<double> low)
    {
        for (var i = 0; i < high.Length && weights is not null; i++)
        {
            var product = Doubled.Product(high[i], weights[start + i]);
            (high[i], low[i]) = (product.High, product.Low + (low[i] * weights[start + i]));
        }
    }

    /// <summary>The inner product of a column with a block in two parts; an empty column counts as zeros.</summary>
    private static Doubled Inner(ReadOnlySpan<double> column, ReadOnlySpan<double> high, ReadOnlySpan<double> low)
    {
        var columns = MemoryMarshal.Cast<double, Vector<double>>(column);
        var highs = MemoryMarshal.Cast<double, Vector<double>>(high);
        var lows = MemoryMarshal.Cast<double, Vector<double>>(low);
        var (sums, rests) = (Vector<double>.Zero, Vector<double>.Zero);
        for (var k = 0; k < columns.Length; k++)
        {
            var product = columns[k] * highs[k];
            var error = Vector.FusedMultiplyAdd(columns[k], highs[k], -product);
            var sum = sums + product;
            var second = sum - sums;
            rests += (sums - (sum - second)) + (product - second) + error;
            rests += lows.IsEmpty ? Vector<double>.Zero : columns[k] * lows[k];
            sums = sum;
        }

        Doubled total = 0;
        for (var lane = 0; lane < Vector<double>.Count; lane++)
        {
            total += Doubled.Sum(sums[lane], rests[lane]);
        }

        for (var i = columns.Length * Vector<double>.Count; i < column.Length; i++)
        {
            total += Doubled.Product(column[i], high[i]) + (low.IsEmpty ? 0 : column[i] * low[i]);
        }

        return total;
    }
}
