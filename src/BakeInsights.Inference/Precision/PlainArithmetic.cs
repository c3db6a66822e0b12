using System.Numerics;
using System.Runtime.InteropServices;

namespace BakeInsights.Inference;

/// <summary>Double precision, as many numbers at a time as the processor takes.</summary>
internal readonly struct PlainArithmetic : IArithmetic<double>
{
    public static double Of(double high, double low) => high + low;

    public static Doubled Widened(double value) => value;

    public static double Root(double value) => Math.Sqrt(value);

    public static double Inner(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        var firstPacks = MemoryMarshal.Cast<double, Vector<double>>(first);
        var secondPacks = MemoryMarshal.Cast<double, Vector<double>>(second);
        var (even, odd) = (Vector<double>.Zero, Vector<double>.Zero);
        var k = 0;
        for (; k + 1 < firstPacks.Length; k += 2)
        {
            even = Vector.FusedMultiplyAdd(firstPacks[k], secondPacks[k], even);
            odd = Vector.FusedMultiplyAdd(firstPacks[k + 1], secondPacks[k + 1], odd);
        }

        if (k < firstPacks.Length)
        {
            even = Vector.FusedMultiplyAdd(firstPacks[k], secondPacks[k], even);
        }

        var sum = Vector.Sum(even + odd);
        for (var i = firstPacks.Length * Vector<double>.Count; i < first.Length; i++)
        {
            sum += first[i] * second[i];
        }

        return sum;
    }

    public static void Subtract(Span<double> target, double factor, ReadOnlySpan<double> source)
    {
        var targetPacks = MemoryMarshal.Cast<double, Vector<double>>(target);
        var sourcePacks = MemoryMarshal.Cast<double, Vector<double>>(source);
        var factors = new Vector<double>(-factor);
        for (var k = 0; k < targetPacks.Length; k++)
        {
            targetPacks[k] = Vector.FusedMultiplyAdd(factors, sourcePacks[k], targetPacks[k]);
        }

        for (var i = targetPacks.Length * Vector<double>.Count; i < target.Length; i++)
        {
            target[i] -= factor * source[i];
        }
    }
}
