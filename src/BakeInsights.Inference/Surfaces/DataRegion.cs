namespace BakeInsights.Inference;

/// <summary>Where the rows of a data set lie in their factors.</summary>
internal sealed class DataRegion
{
    private readonly DesignColumn[] _factors;
    private readonly OrthonormalColumns _orthonormal;
    private readonly double[] _means;
    private readonly double _farthest;

    /// <summary>Looks at the rows.</summary>
    public DataRegion(DesignColumn[] factors)
    {
        _factors = factors;
        _means = [.. factors.Select(f => f.Values.Average())];
        _orthonormal = OrthonormalColumns.Of([.. factors.Select((f, j) =>
            new DesignColumn(f.Name, [.. f.Values.Select(v => v - _means[j])]))]);
        _farthest = Enumerable.Range(0, factors[0].Values.Count)
            .Max(i => Distance([.. factors.Select(f => f.Values[i])]));
    }

    /// <summary>The least and the largest value of a factor.</summary>
    public Interval Range(int factor) => new(_factors[factor].Values.Min(), _factors[factor].Values.Max());

    /// <summary>
    /// Whether a place is no farther from the middle than the farthest row, as the ellipsoid measures.
    /// </summary>
    public bool Holds(IReadOnlyList<double> place) => Distance(place) <= _farthest * (1 + 1e-9);

    private double Distance(IReadOnlyList<double> place)
    {
        var z = _orthonormal.Whitened([.. place.Select((v, j) => v - _means[j])]);
        return OrthonormalColumns.Dot(z, z);
    }
}
