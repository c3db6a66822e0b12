namespace BakeInsights.Inference;

/// <summary>Doubled precision, one number at a time.</summary>
internal readonly struct DoubledArithmetic : IArithmetic<Doubled>
{
    public static Doubled Of(double high, double low) => Doubled.Sum(high, low);

    public static Doubled Widened(Doubled value) => value;

    public static Doubled Root(Doubled value) => Doubled.Sqrt(value);

    public static Doubled Inner(ReadOnlySpan<Doubled> first, ReadOnlySpan<Doubled> second)
    {
        Doubled sum = 0;
        for (var i = 0; i < first.Length; i++)
        {
            sum += first[i] * second[i];
        }

        return sum;
    }

    public static void Subtract(Span<Doubled> target, Doubled factor, ReadOnlySpan<Doubled> source)
    {
        for (var i = 0; i < target.Length; i++)
        {
            target[i] -= factor * source[i];
        }
    }
}
