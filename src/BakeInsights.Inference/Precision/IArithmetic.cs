namespace BakeInsights.Inference;

/// <summary>What a factorization asks of a precision beyond the four operations.</summary>
/// <typeparam name="T">A number of that precision.</typeparam>
internal interface IArithmetic<T>
{
    /// <summary>The sum of two doubles, as near as the precision allows.</summary>
    static abstract T Of(double high, double low);

    /// <summary>The number in doubled precision.</summary>
    static abstract Doubled Widened(T value);

    /// <summary>The square root of a number that is not negative.</summary>
    static abstract T Root(T value);

    /// <summary>The inner product of two lists of equal length.</summary>
    static abstract T Inner(ReadOnlySpan<T> first, ReadOnlySpan<T> second);

    /// <summary>Takes a multiple of one list from another of equal length.</summary>
    static abstract void Subtract(Span<T> target, T factor, ReadOnlySpan<T> source);
}
