namespace BakeInsights.Inference;

/// <summary>The coefficients of least squares refitted on resamples.</summary>
public sealed class BootstrapRefits
{
    private readonly double[] _coefficients;
    private readonly bool[] _made;
    private readonly double[] _jackknife;
    private readonly bool[] _jackknifeMade;
    private readonly int _size;
    private readonly int _few;

    internal BootstrapRefits(LeastSquaresFit fit, RefitTable table, Resamples resamples, bool errorsOnly)
    {
        Fit = fit;
        _few = errorsOnly ? BootstrapDistribution.FewErrors : BootstrapDistribution.FewUnits;
        _size = table.Size;
        _coefficients = new double[resamples.Count * _size];
        _made = new bool[resamples.Count];
        resamples.ForEach((from, to) =>
        {
            for (var b = from; b < to; b++)
            {
                var (stream, target) = (new SeededStream(resamples.Seed, b), _coefficients.AsMemory(b * _size, _size));
                if (errorsOnly)
                {
                    table.RefitErrors(stream, target.Span);
                }

                _made[b] = errorsOnly || table.Refit(stream, target.Span);
            }
        });
        _jackknife = new double[table.UnitCount * _size];
        _jackknifeMade = new bool[table.UnitCount];
        for (var u = 0; u < table.UnitCount; u++)
        {
            _jackknifeMade[u] = table.Without(u, _jackknife.AsSpan(u * _size, _size));
        }
    }

    /// <summary>The fit of the data as they are.</summary>
    public LeastSquaresFit Fit { get; }

    /// <summary>The number of resamples.</summary>
    public int Count => _made.Length;

    /// <summary>How many resamples have columns that depend on each other, and no coefficients.</summary>
    public int FailedCount => _made.Count(made => !made);

    /// <summary>The coefficients of one resample, counted from 0; null if it has none.</summary>
    public IReadOnlyList<double>? Coefficients(int resample)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(resample);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(resample, Count);
        return At(_coefficients, _made, resample);
    }

    /// <summary>The distribution of one coefficient.</summary>
    /// <param name="column">The column's name.</param>
    /// <exception cref="ArgumentException">No column has the name.</exception>
    public Attempt<BootstrapDistribution> Of(string column)
    {
        var place = Fit.Design.IndexOf(column);
        return Of(column, coefficients => coefficients[place]);
    }

    /// <summary>The distribution of any function of the coefficients.</summary>
    /// <param name="name">What to call it.</param>
    /// <param name="function">From the coefficients to the quantity; null where they give none.</param>
    public Attempt<BootstrapDistribution> Of(string name, Func<IReadOnlyList<double>, double?> function)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(function);
        double?[] All(double[] coefficients, bool[] made) =>
        [
            .. Enumerable.Range(0, made.Length)
                .Select(b => At(coefficients, made, b) is { } values ? function(values) : null),
        ];
        return BootstrapDistribution.Of(
            name,
            function([.. Fit.Terms.Select(term => term.Estimate)]),
            All(_coefficients, _made),
            All(_jackknife, _jackknifeMade),
            _few);
    }

    private double[]? At(double[] coefficients, bool[] made, int row) =>
        made[row] ? coefficients[(row * _size)..((row + 1) * _size)] : null;
}
