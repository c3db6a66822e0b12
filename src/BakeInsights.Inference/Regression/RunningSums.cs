namespace BakeInsights.Inference;

/// <summary>
/// Gathers rows one by one for a least-squares fit, at constant memory; sums of different rows can be joined.
/// </summary>
/// <remarks>
/// What is kept is the triangular factor of the rows, not their cross-products, so that no digits are lost by squaring.
/// Rows may come with the block they belong to. A block's own level is then left out of the fit by taking each row's
/// distance from the mean of the block's earlier rows, scaled by the root of m / (m + 1) for m of them: Chan, Golub and
/// LeVeque (1983), Algorithms for computing the sample variance, The American Statistician 37, 242-247.
/// It is not safe to add from several threads at once: gather apart, then join.
/// </remarks>
public sealed class RunningSums
{
    private readonly TriangleSums<double, PlainArithmetic> _sums;
    private readonly ColumnNotes _notes;
    private readonly Dictionary<string, BlockMean> _blocks = [];
    private readonly double[] _row;

    /// <summary>Begins without rows.</summary>
    /// <param name="columns">The names of the columns, a constant one among them if an intercept is wanted.</param>
    /// <exception cref="ArgumentException">There is no name, or two are the same.</exception>
    public RunningSums(IEnumerable<string> columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        Columns = Array.AsReadOnly(columns.ToArray());
        if (Columns.Count == 0 || Columns.Distinct().Count() < Columns.Count)
        {
            throw new ArgumentException("Columns need names, no two of them the same.", nameof(columns));
        }

        _sums = new(Columns.Count + 1);
        _notes = new([.. Columns, LeastSquares.ResponseName]);
        _row = new double[Columns.Count + 1];
    }

    /// <summary>The names of the columns.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>The number of rows so far.</summary>
    public long RowCount => _notes.Rows;

    /// <summary>The number of blocks so far; 0 if rows come without.</summary>
    public int BlockCount => _blocks.Count;

    /// <summary>Adds a row.</summary>
    /// <param name="row">A value for each column.</param>
    /// <param name="response">The response.</param>
    /// <param name="block">The block whose level is to be left out; null if there are no blocks.</param>
    /// <exception cref="ArgumentException">
    /// The number of values is not that of the columns, or only some rows have a block.
    /// </exception>
    public void Add(ReadOnlySpan<double> row, double response, string? block = null)
    {
        if (row.Length != Columns.Count)
        {
            throw new ArgumentException($"There are {row.Length} values for {Columns.Count} columns.", nameof(row));
        }

        if (RowCount > 0 && (block is null) != (BlockCount == 0))
        {
            throw new ArgumentException("Either all rows have a block or none has.", nameof(block));
        }

        row.CopyTo(_row);
        _row[^1] = response;

        // The name is kept even if the row can't be used, so that rows with and without a block aren't mixed.
        var mean = block is null ? null : BlockOf(block);
        if (_notes.Add(_row))
        {
            mean?.Centre(_row);
            _sums.Add(_row);
        }
    }

    /// <summary>The sums of the rows of both; neither is changed.</summary>
    /// <param name="other">Sums of other rows of the same columns.</param>
    /// <exception cref="ArgumentException">The columns differ, or only one of them has blocks.</exception>
    public RunningSums Join(RunningSums other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!Columns.SequenceEqual(other.Columns))
        {
            throw new ArgumentException("The sums are of different columns.", nameof(other));
        }

        if (RowCount > 0 && other.RowCount > 0 && (BlockCount == 0) != (other.BlockCount == 0))
        {
            throw new ArgumentException("Either both sums have blocks or none has.", nameof(other));
        }

        var joined = new RunningSums(Columns);
        foreach (var part in new[] { this, other })
        {
            joined._sums.Join(part._sums);
            joined._notes.Join(part._notes);
            foreach (var (block, mean) in part._blocks)
            {
                if (joined.BlockOf(block).Join(mean) is { } between)
                {
                    joined._sums.Add(between);
                }
            }
        }

        return joined;
    }

    /// <summary>The fit of all rows so far.</summary>
    /// <returns>The fit, or a problem of the kinds that <see cref="LeastSquares"/> has.</returns>
    public Attempt<RunningFit> Fit()
    {
        var sums = new TriangleSums<double, PlainArithmetic>(_sums.Size);
        sums.Join(_sums);
        sums.Fold();
        return RunningSolution.Of(sums, _notes, Columns, BlockCount);
    }

    private BlockMean BlockOf(string block)
    {
        if (!_blocks.TryGetValue(block, out var mean))
        {
            _blocks[block] = mean = new BlockMean(Columns.Count + 1);
        }

        return mean;
    }
}
