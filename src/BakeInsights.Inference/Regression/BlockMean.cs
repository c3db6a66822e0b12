namespace BakeInsights.Inference;

/// <summary>The mean of a block's rows so far.</summary>
internal sealed class BlockMean(int size)
{
    private readonly double[] _mean = new double[size];
    private long _count;

    /// <summary>Takes a row in, and turns it into its scaled distance from the mean of the rows before.</summary>
    public void Centre(Span<double> row)
    {
        var scale = Math.Sqrt(_count / (_count + 1.0));
        _count++;
        for (var j = 0; j < row.Length; j++)
        {
            var distance = row[j] - _mean[j];
            _mean[j] += distance / _count;
            row[j] = scale * distance;
        }
    }

    /// <summary>Takes another part of the block in; gives the row that stands for the distance between the two.</summary>
    public double[]? Join(BlockMean other)
    {
        var total = _count + other._count;
        if (total == 0)
        {
            return null;
        }

        var scale = Math.Sqrt((double)_count * other._count / total);
        var between = new double[_mean.Length];
        for (var j = 0; j < between.Length; j++)
        {
            var distance = other._mean[j] - _mean[j];
            between[j] = scale * distance;
            _mean[j] += distance * other._count / total;
        }

        _count = total;
        return between;
    }
}
