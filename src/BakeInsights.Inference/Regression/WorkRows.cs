using System.Numerics;

namespace BakeInsights.Inference;

/// <summary>The rows a fit works on: the design's columns, then the response, and the rows' weights.</summary>
internal sealed class WorkRows
{
    private readonly DesignColumn[] _columns;
    private readonly Doubled[]? _roots;

    /// <summary>Takes the rows together.</summary>
    /// <param name="design">The columns.</param>
    /// <param name="response">The response.</param>
    /// <param name="weights">The weights, all positive; null where all rows count alike.</param>
    public WorkRows(Design design, DesignColumn response, double[]? weights)
    {
        _columns = [.. design.Columns, response];
        Weights = weights;
        _roots = weights is null ? null : Array.ConvertAll(weights, weight => Doubled.Sqrt(weight));
    }

    /// <summary>The number of rows.</summary>
    public int Count => Response.Values.Count;

    /// <summary>The number of columns, the response not counted.</summary>
    public int Predictors => _columns.Length - 1;

    /// <summary>The response.</summary>
    public DesignColumn Response => _columns[^1];

    /// <summary>The weights; null where all rows count alike.</summary>
    public double[]? Weights { get; }

    /// <summary>A column; the one after the last is the response.</summary>
    public DesignColumn Column(int j) => _columns[j];

    /// <summary>Copies a part of a column, times the root of each row's weight.</summary>
    public void Copy<T, TArithmetic>(int j, int start, Span<T> target)
        where T : struct, IMultiplyOperators<T, T, T>
        where TArithmetic : IArithmetic<T>
    {
        var high = _columns[j].Span.Slice(start, target.Length);
        var low = _columns[j].LowSpan is { IsEmpty: false } all ? all.Slice(start, target.Length) : [];
        for (var i = 0; i < target.Length; i++)
        {
            target[i] = TArithmetic.Of(high[i], low.IsEmpty ? 0 : low[i]);
        }

        for (var i = 0; i < target.Length && _roots is not null; i++)
        {
            target[i] *= TArithmetic.Of(_roots[start + i].High, _roots[start + i].Low);
        }
    }

    /// <summary>The triangular factor of the weighted columns with the response as the last.</summary>
    /// <remarks>
    /// Parts of a fixed size are factorized side by side and joined in their order, so that the answer doesn't depend
    /// on the number of processors.
    /// </remarks>
    public TriangleSums<T, TArithmetic> Factor<T, TArithmetic>()
        where T : struct, IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>,
            IDivisionOperators<T, T, T>
        where TArithmetic : IArithmetic<T>
    {
        var parts = new TriangleSums<T, TArithmetic>[Parts.CountFor(Count)];
        Parts.ForEach(Count, (part, from, to) =>
        {
            parts[part] = new TriangleSums<T, TArithmetic>(_columns.Length, to - from);
            parts[part].Add(this, from, to);
        });
        foreach (var part in parts.Skip(1))
        {
            parts[0].Join(part);
        }

        parts[0].Fold();
        return parts[0];
    }
}
