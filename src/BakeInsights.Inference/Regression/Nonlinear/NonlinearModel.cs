namespace BakeInsights.Inference;

/// <summary>A response as a function of parameters and of the values of one row's predictors.</summary>
public sealed class NonlinearModel
{
    private readonly Func<IReadOnlyList<double>, IReadOnlyList<double>, double> _value;
    private readonly Func<IReadOnlyList<double>, IReadOnlyList<double>, IReadOnlyList<double>>? _slopes;

    /// <summary>Makes a model.</summary>
    /// <param name="parameters">The names of the parameters.</param>
    /// <param name="value">
    /// From parameters and predictors, each in order, to the response. A NaN or an infinity says that the parameters
    /// are not possible; the search then turns back.
    /// </param>
    /// <param name="slopes">
    /// From the same to the derivative by each parameter; null if it is to be had from differences of values.
    /// </param>
    /// <exception cref="ArgumentException">There is no parameter, a name is blank, or two are the same.</exception>
    public NonlinearModel(
        IEnumerable<string> parameters,
        Func<IReadOnlyList<double>, IReadOnlyList<double>, double> value,
        Func<IReadOnlyList<double>, IReadOnlyList<double>, IReadOnlyList<double>>? slopes = null)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentNullException.ThrowIfNull(value);
        Parameters = Array.AsReadOnly(parameters.ToArray());
        if (Parameters.Count == 0 || Parameters.Any(string.IsNullOrWhiteSpace))
        {
            throw new ArgumentException("A model needs at least one parameter, each with a name.", nameof(parameters));
        }

        if (Parameters.GroupBy(name => name).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two parameters are named {twice.Key}.", nameof(parameters));
        }

        (_value, _slopes) = (value, slopes);
    }

    /// <summary>The names of the parameters, in order.</summary>
    public IReadOnlyList<string> Parameters { get; }

    /// <summary>Whether the model says its own derivatives.</summary>
    public bool HasSlopes => _slopes is not null;

    /// <summary>The response at a row.</summary>
    public double Value(IReadOnlyList<double> parameters, IReadOnlyList<double> row) => _value(parameters, row);

    /// <summary>The derivatives by the parameters at a row.</summary>
    /// <exception cref="InvalidOperationException">The model has none, or not one for each parameter.</exception>
    internal IReadOnlyList<double> Slopes(IReadOnlyList<double> parameters, IReadOnlyList<double> row)
    {
        var slopes = (_slopes ?? throw new InvalidOperationException("The model has no slopes."))(parameters, row);
        return slopes.Count == Parameters.Count
            ? slopes
            : throw new InvalidOperationException(
                $"The model gives {slopes.Count} slopes for {Parameters.Count} parameters.");
    }
}
