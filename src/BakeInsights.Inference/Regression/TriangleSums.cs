using System.Numerics;

namespace BakeInsights.Inference;

/// <summary>
/// The triangular factor R of rows that come one after another: R'R is the cross-product matrix of all rows so far,
/// but it is never formed, so that its squared condition costs no digits. Two factors of different rows can be joined.
/// </summary>
/// <remarks>
/// Rows gather in a block, which Householder reflections fold into the triangle above it. Golub and Van Loan (2013),
/// Matrix Computations, 4th ed., sections 5.2 and 6.5; joining: Demmel, Grigori, Hoemmen and Langou (2012),
/// Communication-optimal parallel and sequential QR and LU factorizations, SIAM Journal on Scientific Computing 34,
/// A206-A239. Columns are not scaled: scaling them by any factor scales the columns of R alike.
/// </remarks>
/// <typeparam name="T">The numbers that are computed with.</typeparam>
/// <typeparam name="TArithmetic">Their arithmetic.</typeparam>
internal sealed class TriangleSums<T, TArithmetic>
    where T : struct, IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>,
        IDivisionOperators<T, T, T>
    where TArithmetic : IArithmetic<T>
{
    /// <summary>Rows a block; one of nine columns stays within a processor's nearest memory.</summary>
    private const int LargestBlock = 256;

    private readonly T[] _triangle;
    private readonly T[] _block;
    private readonly int _blockRows;
    private int _filled;

    /// <summary>Begins without rows.</summary>
    /// <param name="size">The number of columns, the response among them.</param>
    /// <param name="rows">How many rows are to come, if that is known.</param>
    public TriangleSums(int size, int rows = LargestBlock)
    {
        Size = size;
        _blockRows = Math.Min(LargestBlock, Math.Max(rows, 1));
        _triangle = new T[size * size];
        _block = new T[size * _blockRows];
    }

    /// <summary>The number of columns.</summary>
    public int Size { get; }

    /// <summary>An element of the triangle, once every row is folded in; 0 below the diagonal.</summary>
    public Doubled this[int row, int column] => TArithmetic.Widened(_triangle[(row * Size) + column]);

    /// <summary>Adds a row.</summary>
    public void Add(ReadOnlySpan<T> row)
    {
        for (var j = 0; j < Size; j++)
        {
            _block[(j * _blockRows) + _filled] = row[j];
        }

        _filled++;
        if (_filled == _blockRows)
        {
            Fold();
        }
    }

    /// <summary>Adds the rows of a design with its response from one row up to another.</summary>
    public void Add(WorkRows rows, int from, int to)
    {
        for (var start = from; start < to; start += _blockRows)
        {
            _filled = Math.Min(_blockRows, to - start);
            for (var j = 0; j < Size; j++)
            {
                rows.Copy<T, TArithmetic>(j, start, _block.AsSpan(j * _blockRows, _filled));
            }

            Fold();
        }
    }

    /// <summary>Adds all rows that another factor stands for, and leaves that one as it is.</summary>
    public void Join(TriangleSums<T, TArithmetic> other)
    {
        for (var i = 0; i < Size; i++)
        {
            Add(other._triangle.AsSpan(i * Size, Size));
        }

        for (var i = 0; i < other._filled; i++)
        {
            var row = new T[Size];
            for (var j = 0; j < Size; j++)
            {
                row[j] = other._block[(j * other._blockRows) + i];
            }

            Add(row);
        }
    }

    /// <summary>Folds the gathered rows into the triangle.</summary>
    public void Fold()
    {
        for (var j = 0; j < Size && _filled > 0; j++)
        {
            Reflect(j);
        }

        _filled = 0;
    }

    /// <summary>Clears column j of the block by a reflection, which changes row j of the triangle.</summary>
    private void Reflect(int j)
    {
        var column = _block.AsSpan(j * _blockRows, _filled);
        var square = TArithmetic.Inner(column, column);
        if (TArithmetic.Widened(square).High == 0)
        {
            return;
        }

        var diagonal = _triangle[(j * Size) + j];
        var length = TArithmetic.Root((diagonal * diagonal) + square);
        var reflected = TArithmetic.Widened(diagonal).High > 0 ? default(T) - length : length;
        var head = diagonal - reflected;
        var scale = TArithmetic.Of(2, 0) / ((head * head) + square);
        _triangle[(j * Size) + j] = reflected;
        for (var k = j + 1; k < Size; k++)
        {
            var other = _block.AsSpan(k * _blockRows, _filled);
            var above = _triangle[(j * Size) + k];
            var factor = ((head * above) + TArithmetic.Inner(column, other)) * scale;
            _triangle[(j * Size) + k] = above - (factor * head);
            TArithmetic.Subtract(other, factor, column);
        }
    }
}
