using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BakeInsights.Inference;

/// <summary>Double precision, four numbers at a time.</summary>
/// <remarks>Always four, whatever the processor takes at once, so that sums are the same on any machine.</remarks>
internal readonly struct PlainArithmetic : IArithmetic<double>
{
    public static double Of(double high, double low) => high + low;

    public static Doubled Widened(double value) => value;

    public static double Root(double value) => Math.Sqrt(value);

    public static double Inner(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        var firstPacks = MemoryMarshal.Cast<double, Vector256<double>>(first);
        var secondPacks = MemoryMarshal.Cast<double, Vector256<double>>(second);
        var (even, odd) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var k = 0;
        for (; k + 1 < firstPacks.Length; k += 2)
        {
            even = Vector256.FusedMultiplyAdd(firstPacks[k], secondPacks[k], even);
            odd = Vector256.FusedMultiplyAdd(firstPacks[k + 1], secondPacks[k + 1], odd);
        }

        if (k < firstPacks.Length)
        {
            even = Vector256.FusedMultiplyAdd(firstPacks[k], secondPacks[k], even);
        }

        var packs = even + odd;
        var sum = (packs[0] + packs[1]) + (packs[2] + packs[3]);
        for (var i = firstPacks.Length * Vector256<double>.Count; i < first.Length; i++)
        {
            sum += first[i] * second[i];
        }

        return sum;
    }

    public static void Subtract(Span<double> target, double factor, ReadOnlySpan<double> source)
    {
        var targetPacks = MemoryMarshal.Cast<double, Vector256<double>>(target);
        var sourcePacks = MemoryMarshal.Cast<double, Vector256<double>>(source);
        var factors = Vector256.Create(-factor);
        for (var k = 0; k < targetPacks.Length; k++)
        {
            targetPacks[k] = Vector256.FusedMultiplyAdd(factors, sourcePacks[k], targetPacks[k]);
        }

        for (var i = targetPacks.Length * Vector256<double>.Count; i < target.Length; i++)
        {
            target[i] -= factor * source[i];
        }
    }
}
